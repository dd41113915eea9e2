package asfound.drawing.schedule;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The rows that hang on a spine: one for each position that is printed, and those between two positions where the numbers
 * and the page both say that some stand there without a number. On a board with ways each phase of a way is a row.
 */
final class RowLattice {

    private static final Pattern PHASES = Pattern.compile(
            "(?:L[123]|[RYBAC])(?:\\s*[-,/&+ ]?\\s*(?:L[123]|[RYBAC]))*|TP&?N?", Pattern.CASE_INSENSITIVE);

    private final Sheet sheet;
    private final List<Phrase> phrases;
    private final Side side;
    private final Spine spine;
    private final double size;
    private final boolean coloured;

    private static final int MOST_POLES = 4;

    private RowLattice(Sheet sheet, List<Phrase> phrases, Side side) {
        this.sheet = sheet;
        this.phrases = phrases;
        this.side = side;
        spine = side.spine();
        size = spine.size();
        coloured = side.column(Role.PHASE)
                .filter(c -> c.texts().stream().anyMatch(t -> t.matches("(?i)[RY][-,/&+ RYB]*")))
                .isPresent();
    }

    /**
     * The rows of one side from top to bottom.
     *
     * @param all the sides of the table: what one shows of how positions are written holds for all
     * @param top where the table's first row begins
     */
    static List<Row> rows(Sheet sheet, List<Phrase> phrases, Side side, List<Side> all, double top) {
        RowLattice lattice = new RowLattice(sheet, phrases, side);
        List<Row> ways = lattice.ways();
        return ways.isEmpty() ? lattice.positions(all, top) : ways;
    }

    private List<Row> positions(List<Side> all, double top) {
        List<Row> out = printed();
        if (!isEach()) return out;
        boolean once = isOnce(out)
                || all.stream()
                        .filter(s -> s != side)
                        .map(s -> new RowLattice(sheet, phrases, s))
                        .anyMatch(l -> l.isEach() && l.isOnce(l.printed()));
        Spine.Token last = spine.tokens().get(spine.tokens().size() - 1);
        boolean owes =
                spine.tokens().stream().filter(t -> poles(t) > 1).toList().equals(List.of(last));
        if (once || owes) after(last, once, isEverySecond(all), out);
        if (once || all.stream().noneMatch(s -> s.spine().numbers().contains(1))) before(isEverySecond(all), top, out);
        return out;
    }

    private boolean isEach() {
        return spine.tokens().stream()
                .allMatch(t -> t.text().numbers().size() == 1 && !t.text().isWay());
    }

    /**
     * Positions stand only beside a device's first pole: some of the rows have no number, or the numbers leave out just
     * those that a device of several poles takes.
     */
    private boolean isOnce(List<Row> rows) {
        if (rows.stream().anyMatch(r -> r.token().isEmpty())) return true;
        List<Spine.Token> all = spine.tokens();
        boolean ones = false;
        for (int i = 1; i < all.size(); i++) ones |= up(i) == 1;
        for (int i = 1; i < all.size(); i++) {
            int step = steps(i).length == 1 ? 2 : 1;
            if (up(i) > step && up(i) == step * poles(all.get(i - 1)) && (step == 2 || ones)) return true;
        }
        return false;
    }

    /** Rows with a number, and those between them. */
    private List<Row> printed() {
        List<Row> out = new ArrayList<>();
        boolean each = isEach();
        for (int i = 0; i < spine.tokens().size(); i++) {
            Spine.Token t = spine.tokens().get(i);
            if (i > 0 && each) between(spine.tokens().get(i - 1), t, steps(i), out);
            out.add(new Row(Optional.of(t), t.text().order(), t.y()));
        }
        return out;
    }

    /** The numbers of a row and the next are two apart, here or, where here is a single row, beside it. */
    private boolean isEverySecond(List<Side> all) {
        if (spine.tokens().size() > 1)
            return spine.isOdd() || spine.isEven() || steps(spine.tokens().size() - 1).length == 1;
        return all.stream()
                .map(Side::spine)
                .anyMatch(s -> s != spine && s.tokens().size() > 1 && (s.isOdd() || s.isEven()));
    }

    /**
     * Rows above the first number belong to the device at the foot of the page or half before: marks and loads alone, or
     * that device printed once more.
     */
    private void before(boolean second, double top, List<Row> out) {
        Spine.Token first = spine.tokens().get(0);
        int step = second ? 2 : 1;
        double pitch = out.size() > 1 ? spacing(out) : spine.pitch();
        double limit = spine.heading()
                .map(h -> h.bottom() + 0.2 * size)
                .orElse(Math.min(top, first.y() - (MOST_POLES + 0.6) * pitch));
        if (limit > first.y()) limit = top;
        int number = first.text().order();
        double at = first.y();
        List<Double> levels = levels(limit, first.y());
        for (int i = levels.size() - 1;
                i >= 0 && out.size() < MOST_POLES + spine.tokens().size() * 4;
                i--) {
            double y = levels.get(i), gap = at - y;
            number -= step;
            boolean row = gap > 0.6 * pitch && gap < 1.6 * Math.max(pitch, spine.pitch());
            if (!row || number < 1 || isNothing(y) || !carriesOn(y) && !isDevice(y)) return;
            if (y < top && !spine.headed() && on(y).stream().noneMatch(p -> Texts.isMark(p.text()))) return;
            out.add(0, new Row(Optional.empty(), number, y));
            at = y;
        }
    }

    /** The least distance between neighbouring rows that is usual. */
    private static double spacing(List<Row> rows) {
        double[] steps = new double[rows.size() - 1];
        for (int r = 1; r < rows.size(); r++)
            steps[r - 1] = rows.get(r).y() - rows.get(r - 1).y();
        java.util.Arrays.sort(steps);
        return steps[steps.length / 4];
    }

    private List<Phrase> on(double y) {
        double left = side.left(), right = side.right();
        return phrases.stream()
                .filter(p -> Math.abs(p.centreY() - y) < 0.3 * size)
                .filter(p -> p.centreX() > left && p.centreX() < right)
                .toList();
    }

    private boolean isNothing(double y) {
        return on(y).isEmpty();
    }

    /** A device of several poles is printed on this level. */
    private boolean isDevice(double y) {
        return on(y).stream()
                .filter(p -> in(Role.POLES, p) || in(Role.DEVICE, p))
                .map(p -> in(Role.POLES, p)
                        ? DeviceText.polesOnly(p.text())
                        : DeviceText.parse(p.text()).flatMap(DeviceText::poles))
                .flatMap(Optional::stream)
                .anyMatch(n -> n > 1);
    }

    /** How far apart in number neighbouring rows can be: two where all around are odd, or all even. */
    private int[] steps(int i) {
        List<Spine.Token> all = spine.tokens();
        int from = i - 1, to = i, rest = all.get(i).text().order() % 2;
        while (from > 0 && rises(from) && all.get(from - 1).text().order() % 2 == rest) from--;
        while (to + 1 < all.size() && rises(to + 1) && all.get(to + 1).text().order() % 2 == rest) to++;
        boolean alike = all.get(i - 1).text().order() % 2 == rest && to - from + 1 >= Math.min(6, all.size());
        return alike ? new int[] {2} : new int[] {1, 2};
    }

    private boolean rises(int i) {
        return up(i) > 0;
    }

    private int up(int i) {
        return spine.tokens().get(i).text().order()
                - spine.tokens().get(i - 1).text().order();
    }

    /**
     * Where positions stand only beside a device's first pole, further poles follow the last position: of the last device,
     * or of those before it, as long as lines go on that hold nothing but marks and loads, or print the device once more.
     */
    private void after(Spine.Token last, boolean once, boolean second, List<Row> out) {
        int step = second ? 2 : 1;
        double pitch = out.size() > 1 ? (last.y() - out.get(0).y()) / (out.size() - 1) : spine.pitch();
        int owed = last.text().order(), sure = owed;
        for (Spine.Token t : spine.tokens()) {
            owed = Math.max(owed, t.text().order() + 2 * (poles(t) - 1));
            sure = Math.max(sure, t.text().order() + step * (poles(t) - 1));
        }
        int rows = (owed - last.text().order()) / step;
        if (rows == 0) return;
        double at = last.y(), reach = 1.6 * Math.max(pitch, spine.pitch());
        int number = last.text().order(), found = 0;
        for (double y : levels(last.y(), last.y() + (2.5 * rows + 1) * pitch)) {
            if (found == rows || y - at > reach || !carriesOn(y) && !repeatsOwing(y, number + step)) break;
            // a blank row may be the other half's alone
            if (isNothing(y) && (!once || number + step > sure)) break;
            out.add(new Row(Optional.empty(), number += step, y));
            at = y;
            found++;
        }
        for (int k = found + 1; once && k < poles(last); k++)
            out.add(new Row(Optional.empty(), number += step, at += Math.min(pitch, spine.pitch())));
    }

    /** A device that has a pole at this number is printed on this level once more. */
    private boolean repeatsOwing(double y, int number) {
        return isDevice(y)
                && spine.tokens().stream()
                        .filter(t -> t.text().order() + 2 * (poles(t) - 1) >= number)
                        .anyMatch(t -> repeats(y, t.y()));
    }

    /** What stands on this level stands so on another too; loads and phases may differ. */
    private boolean repeats(double y, double above) {
        List<Phrase> head = on(above);
        return on(y).stream()
                .allMatch(p -> isLoadOrPhase(p)
                        || head.stream()
                                .anyMatch(o -> Math.abs(o.left() - p.left()) < 0.5 * size
                                        && Texts.upper(o.text()).equals(Texts.upper(p.text()))));
    }

    /** The poles that are printed beside a position. */
    private int poles(Spine.Token t) {
        return phrases.stream()
                .filter(p -> Math.abs(p.centreY() - t.y()) < 0.4 * size)
                .filter(p -> in(Role.POLES, p) || in(Role.DEVICE, p))
                .map(p -> in(Role.POLES, p)
                        ? DeviceText.polesOnly(p.text())
                        : DeviceText.parse(p.text()).flatMap(DeviceText::poles))
                .flatMap(Optional::stream)
                .findFirst()
                .orElse(1);
    }

    /** On this level stand nothing but marks, loads and phases. */
    private boolean carriesOn(double y) {
        return on(y).stream().allMatch(p -> Texts.saysNothing(p.text()) || isLoadOrPhase(p));
    }

    private boolean isLoadOrPhase(Phrase p) {
        return in(Role.PHASE, p)
                || side.roles().entrySet().stream()
                        .anyMatch(e -> e.getKey().isLoad()
                                && e.getValue().holds(p.centreX())
                                && LoadText.parse(p.text(), false).isPresent());
    }

    private boolean in(Role role, Phrase p) {
        return side.column(role).filter(c -> c.holds(p.centreX())).isPresent();
    }

    private void between(Spine.Token a, Spine.Token b, int[] steps, List<Row> out) {
        int up = b.text().order() - a.text().order();
        List<Double> levels = null;
        for (int step : steps) {
            int missing = up % step == 0 ? up / step - 1 : 0;
            if (missing < 1 || missing > 12) continue;
            if (levels == null) levels = levels(a.y(), b.y());
            double gap = (b.y() - a.y()) / spine.pitch();
            boolean even = levels.isEmpty() && Math.abs(gap - (missing + 1)) < 0.3;
            if (levels.size() != missing && !even) continue;
            for (int k = 1; k <= missing; k++)
                out.add(new Row(
                        Optional.empty(),
                        a.text().order() + k * step,
                        even ? a.y() + k * (b.y() - a.y()) / (missing + 1) : levels.get(k - 1)));
            return;
        }
    }

    /** Where rows stand between two positions: in ruled cells, or on the level of what the narrow columns hold. */
    private List<Double> levels(double from, double to) {
        List<Rule> rules = new ArrayList<>();
        for (Rule r : sheet.across().between(from, to))
            if (r.passes(spine.centreX())
                    && (rules.isEmpty() || r.at() - rules.get(rules.size() - 1).at() > 0.7 * size)) rules.add(r);
        List<Double> out = new ArrayList<>();
        if (!rules.isEmpty()) {
            for (int i = 1; i < rules.size(); i++)
                out.add((rules.get(i - 1).at() + rules.get(i).at()) / 2);
            if (!out.isEmpty()) return out;
        }
        for (Phrase p : phrases) {
            if (p.centreY() < from + 0.5 * size || p.centreY() > to - 0.5 * size || !isNarrow(p)) continue;
            if (out.isEmpty() || p.centreY() - out.get(out.size() - 1) > 0.5 * size) out.add(p.centreY());
        }
        return out;
    }

    /** It stands in a column whose entries never run over a second line. */
    private boolean isNarrow(Phrase p) {
        return side.roles().entrySet().stream()
                .anyMatch(e -> e.getKey() != Role.DESCRIPTION
                        && e.getKey() != Role.OTHER
                        && e.getValue().holds(p.centreX()));
    }

    /** One row for each phase of each way; none where the sheet has no ways. */
    private List<Row> ways() {
        Optional<Column> column = side.column(Role.PHASE);
        if (column.isEmpty()
                || spine.tokens().stream()
                        .anyMatch(t -> t.text().isWay() || t.text().numbers().size() > 1)) return List.of();
        List<List<Phrase>> groups = groups(column.get());
        int rows = groups.stream().mapToInt(List::size).sum();
        if (groups.size() != spine.tokens().size()) return List.of();
        if (rows < 2 * spine.tokens().size() && !areWhole(groups)) return List.of();
        if (arePositions(groups)) return List.of();
        List<Row> out = new ArrayList<>();
        for (int g = 0; g < groups.size(); g++) {
            int way = spine.tokens().get(g).text().first();
            for (Phrase p : groups.get(g)) {
                List<Integer> phases = phases(p.text());
                PositionText text = new PositionText(List.of(way), phases, way + p.text());
                out.add(new Row(Optional.of(new Spine.Token(text, p)), text.order(), p.centreY()));
            }
        }
        return out;
    }

    /** The numbers count every row, or every row of both sides: positions that stand only beside a device's first pole. */
    private boolean arePositions(List<List<Phrase>> groups) {
        List<Integer> numbers = spine.numbers();
        boolean all = numbers.size() > 1;
        for (int g = 1; g < numbers.size(); g++) {
            int up = numbers.get(g) - numbers.get(g - 1),
                    rows = groups.get(g - 1).size();
            all &= rows > 1 && (up == rows || up == 2 * rows);
        }
        return all;
    }

    /** Every way has each of its three phases once, in rows of their own or together; some have rows of their own. */
    private boolean areWhole(List<List<Phrase>> groups) {
        return groups.size() > 1
                && groups.stream().anyMatch(g -> g.size() > 1)
                && groups.stream()
                        .allMatch(g -> g.stream()
                                .flatMap(p -> phases(p.text()).stream())
                                .toList()
                                .equals(List.of(1, 2, 3)));
    }

    /** The entries of the phase column, a new group wherever the phases begin again. */
    private List<List<Phrase>> groups(Column column) {
        double reach = 1.2 * spine.pitch();
        List<List<Phrase>> out = new ArrayList<>();
        int last = 9;
        for (Phrase p : phrases) {
            if (!column.holds(p.centreX())
                    || p.centreY() < spine.firstY() - reach
                    || p.centreY() > spine.lastY() + reach) continue;
            if (!PHASES.matcher(p.text()).matches()) continue;
            List<Integer> phases = phases(p.text());
            if (phases.get(0) <= last) out.add(new ArrayList<>());
            last = phases.get(phases.size() - 1);
            out.get(out.size() - 1).add(p);
        }
        return out;
    }

    /** B is the second phase beside A and C, and the third beside R and Y. */
    private List<Integer> phases(String text) {
        String t = text.toUpperCase(Locale.ROOT);
        if (t.startsWith("TP")) return List.of(1, 2, 3);
        boolean abc = !coloured && t.matches("[ABC][-,/&+ ABC]*");
        List<Integer> out = new ArrayList<>();
        java.util.regex.Matcher m = Pattern.compile("L[123]|[RYBAC]").matcher(t);
        while (m.find()) {
            String one = m.group();
            int phase =
                    one.startsWith("L") ? one.charAt(1) - '0' : abc ? "ABC".indexOf(one) + 1 : PositionText.phase(one);
            out.add(phase);
        }
        return out.isEmpty() ? List.of(1) : out;
    }
}
