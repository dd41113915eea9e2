package asfound.drawing.schedule.table;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.column.ColumnFinder;
import asfound.drawing.schedule.column.ColumnWeights;
import asfound.drawing.schedule.column.Columns;
import asfound.drawing.schedule.column.Margin;
import asfound.drawing.schedule.phrase.Gutter;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.phrase.Span;
import asfound.drawing.schedule.spine.BandParts;
import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.spine.SpineFinder;
import asfound.drawing.schedule.text.Headings;
import asfound.drawing.schedule.text.Role;
import asfound.model.Box;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Finds the directories on a sheet: spines in bands of rows, their columns, and which sides make one panel. */
public final class TableFinder {

    private static final int PLAIN_ROWS = 5;

    private final Sheet sheet;
    private final Phrases phrases;
    private final ColumnWeights weights;
    private final List<Table> tables = new ArrayList<>();
    private final List<Spine> all = new ArrayList<>();
    private final List<Spine> unexplained = new ArrayList<>();

    public TableFinder(Sheet sheet, Phrases phrases) {
        this.sheet = sheet;
        this.phrases = phrases;
        weights = new ColumnWeights(phrases.meanings());
    }

    public List<Table> find() {
        boolean cells = sheet.hasCells();
        SpineFinder spines = new SpineFinder(sheet, phrases);
        all.addAll(spines.find());
        for (List<Spine> band : bands(all)) {
            // between cells a blank parts two tables; on a drawing the widest blank may lie within one
            if (cells) readParted(band);
            else for (BandParts.Part part : BandParts.of(band, spines.others())) read(part.spines(), part.limits());
        }
        tables.sort(Comparator.comparingDouble((Table t) -> Math.round(t.box().y() / 20))
                .thenComparingDouble(t -> t.box().x()));
        return tables;
    }

    /** Places with headed columns of positions that could not be explained as a directory. */
    public List<Box> unexplained() {
        return unexplained.stream()
                .filter(s -> tables.stream().noneMatch(t -> WaysOfRows.areOf(t, s)))
                .map(TableFinder::boxOf)
                .toList();
    }

    /** Spines whose rows lie side by side, each band from left to right. */
    static List<List<Spine>> bands(List<Spine> spines) {
        List<List<Spine>> bands = new ArrayList<>();
        for (Spine s : spines) {
            List<Spine> home = null;
            for (List<Spine> band : bands) if (band.stream().anyMatch(o -> sideBySide(o, s))) home = band;
            if (home == null) bands.add(home = new ArrayList<>());
            home.add(s);
        }
        for (List<Spine> band : bands)
            if (band.stream().anyMatch(s -> s.tokens().size() > 2))
                band.removeIf(s -> s.tokens().size() == 1 && !isHeadedLike(s, band));
        for (List<Spine> band : bands) band.sort(Comparator.comparingDouble(Spine::centreX));
        return bands;
    }

    /** Its heading stands in one line with that of a longer column: the side has a single device left on this page. */
    private static boolean isHeadedLike(Spine lone, List<Spine> band) {
        return band.stream()
                .filter(s -> s.tokens().size() > 1 && s.headed() && lone.headed())
                .anyMatch(s -> Math.abs(s.heading().orElseThrow().y()
                                - lone.heading().orElseThrow().y())
                        < 0.3 * lone.size());
    }

    /** Parts a band where another table begins beside it, and reads each part up to where its neighbours begin. */
    private void readParted(List<Spine> band) {
        List<List<Spine>> parts = new ArrayList<>();
        for (Spine s : band) {
            List<Spine> before = parts.isEmpty() ? List.of() : parts.get(parts.size() - 1);
            if (before.isEmpty() || !isAnothers(before, s)) {
                if (before.isEmpty()) parts.add(before = new ArrayList<>());
                before.add(s);
            } else parts.add(new ArrayList<>(List.of(s)));
        }
        double left = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < parts.size(); i++) {
            boolean last = i == parts.size() - 1;
            double right = last ? Double.POSITIVE_INFINITY : between(parts.get(i), parts.get(i + 1));
            read(parts.get(i), new Span(left, right));
            left = right;
        }
    }

    /** Its positions begin anew, below a heading on another level, or within rules of their own. */
    private boolean isAnothers(List<Spine> before, Spine next) {
        if (next.everyNumber().stream().noneMatch(n -> n == 1)) return false;
        Optional<Box> last = before.get(before.size() - 1).heading(), own = next.heading();
        boolean level = last.isEmpty()
                || own.isEmpty()
                || Math.abs(last.get().centreY() - own.get().centreY()) < next.size();
        return !level || isRuledApart(before, next);
    }

    private boolean isRuledApart(List<Spine> before, Spine next) {
        Optional<Span> own = Margin.ruled(sheet, next);
        return own.isPresent()
                && before.stream()
                        .map(s -> Margin.ruled(sheet, s))
                        .allMatch(
                                r -> r.filter(b -> b.right() < own.get().left()).isPresent());
    }

    /** Where the one table ends and the next begins: at a blank column of cells between their positions. */
    private double between(List<Spine> left, List<Spine> right) {
        Box a = left.stream().map(TableFinder::boxOf).reduce(Box::union).orElseThrow();
        Box b = right.stream().map(TableFinder::boxOf).reduce(Box::union).orElseThrow();
        return Gutter.ofCells(sheet, phrases, a, b);
    }

    private static boolean sideBySide(Spine a, Spine b) {
        double overlap = Math.min(a.lastY(), b.lastY()) - Math.max(a.firstY(), b.firstY());
        double shorter = Math.min(a.lastY() - a.firstY(), b.lastY() - b.firstY());
        boolean apart = a.right() < b.left() || b.right() < a.left();
        return apart && (overlap > 0.5 * shorter && overlap > 0 || Math.abs(a.firstY() - b.firstY()) < a.size());
    }

    private void read(List<Spine> band, Span limits) {
        List<Spine> spines = new ArrayList<>(band);
        while (!spines.isEmpty()) {
            Columns columns = ColumnFinder.find(sheet, phrases, weights, spines, limits);
            List<Side> sides = Sides.of(spines, columns);
            List<Spine> poor = new ArrayList<>();
            for (Side side : sides) if (!isSide(side)) poor.add(side.spine());
            if (poor.isEmpty() || arePlainHalves(sides)) {
                join(sides, columns, limits);
                return;
            }
            Optional<List<Side>> plain = PlainSides.of(spines, columns, phrases);
            if (plain.isPresent()) {
                join(plain.get(), columns, limits);
                return;
            }
            Optional<List<TypedLists.Found>> typed = new TypedLists(sheet, phrases, weights, all).of(spines, limits);
            if (typed.isPresent()) {
                typed.get().forEach(found -> add(found.sides(), found.columns()));
                return;
            }
            // what is no side may have stood in the way of one: the rest is tried without the worst
            Spine worst = sides.stream()
                    .filter(s -> poor.contains(s.spine()))
                    .min(Comparator.comparing((Side s) -> s.spine().headed()).thenComparingDouble(Side::quality))
                    .orElseThrow()
                    .spine();
            if (isNoChance(worst)) unexplained.add(worst);
            spines.remove(worst);
        }
    }

    /** Headed as positions, or counted on with several to one row, {@code 2, 4}: no other list is written so. */
    private static boolean isNoChance(Spine s) {
        if (s.headed()) return s.tokens().size() > 2;
        return s.tokens().size() >= PLAIN_ROWS
                && s.tokens().stream()
                        .anyMatch(
                                t -> t.text().numbers().size() > 1 && !t.text().isWay());
    }

    private static Box boxOf(Spine s) {
        return s.tokens().stream().map(t -> t.phrase().box()).reduce(Box::union).orElseThrow();
    }

    /** In a list of several panels figures alone are no ratings: a list of rooms has its own. */
    private boolean isRated(Side side) {
        boolean listed = side.roles().containsKey(Role.PANEL);
        Column rating = side.roles().get(Role.RATING);
        boolean headed = rating != null && (!listed || phrases.meanings().weight(rating.heading(), Role.RATING) > 0);
        return headed || side.roles().containsKey(Role.DEVICE);
    }

    private boolean isHeadedDescription(Side side) {
        Column c = side.roles().get(Role.DESCRIPTION);
        return c != null && phrases.meanings().weight(c.heading(), Role.DESCRIPTION) > 0;
    }

    private boolean isSide(Side side) {
        boolean described = side.roles().containsKey(Role.DESCRIPTION);
        boolean rated = isRated(side);
        if (!described && !rated) return false;
        if (side.spine().isNamed() && !(rated && isHeadedDescription(side))) return false;
        // places and figures under headings of another kind: a calculation, a list of rooms
        if (!rated && side.columns().size() > 2) {
            double says =
                    phrases.meanings().weight(side.roles().get(Role.DESCRIPTION).heading(), Role.DESCRIPTION);
            if (says > 0 && says < 0.5) return false;
        }
        return side.spine().headed() ? side.quality() > 0.8 : described && rated && side.quality() > 1.8;
    }

    /**
     * A plain directory as it hangs in a panel's door: numbers and what they feed, with neither headings nor ratings. Odd
     * and even numbers that complete each other are no chance.
     */
    private static boolean arePlainHalves(List<Side> sides) {
        if (sides.size() != 2) return false;
        Spine odd = sides.get(0).spine(), even = sides.get(1).spine();
        return odd.isOdd()
                && even.isEven()
                && odd.numbers().get(0) == 1
                && even.numbers().get(0) == 2
                && Math.min(odd.tokens().size(), even.tokens().size()) >= PLAIN_ROWS
                && Math.abs(odd.tokens().size() - even.tokens().size()) <= 1
                && odd.regular() > 0.9
                && even.regular() > 0.9
                && sides.stream().allMatch(s -> s.roles().containsKey(Role.DESCRIPTION))
                && sides.stream().flatMap(s -> s.columns().stream()).noneMatch(TableFinder::isOfOtherList);
    }

    /** Its heading is none that a directory has: {@code OUTLET}, {@code PORT}. */
    private static boolean isOfOtherList(Column c) {
        return !c.isBlank()
                && !c.heading().isEmpty()
                && c.heading().chars().allMatch(Character::isLetter)
                && Headings.weigh(c.heading()).isEmpty();
    }

    /** Puts neighbouring sides together where they continue each other's numbers. */
    private void join(List<Side> sides, Columns columns, Span limits) {
        int i = 0, first = tables.size();
        while (i < sides.size()) {
            List<Side> panel = new ArrayList<>(List.of(sides.get(i)));
            while (i + panel.size() < sides.size() && belongs(panel, sides.get(i + panel.size())))
                panel.add(sides.get(i + panel.size()));
            int end = i + panel.size();
            double left = i == 0 ? limits.left() : sides.get(i - 1).right();
            double right = end == sides.size() ? limits.right() : sides.get(end).left();
            if (panel.size() == sides.size()) add(panel, columns);
            else closer(panel, columns, new Span(left, right), tables.subList(first, tables.size()));
            i = end;
        }
    }

    /**
     * Looks once more at one of several panels side by side: by all its own rows, and not by those of the shortest.
     *
     * @param before the panels to its left
     */
    private void closer(List<Side> panel, Columns band, Span limits, List<Table> before) {
        List<Spine> spines = panel.stream().map(Side::spine).toList();
        Columns own = ColumnFinder.find(sheet, phrases, weights, spines, limits);
        List<Side> sides = Sides.of(spines, own);
        OptionalDouble edge = LoadsOfNeighbour.edge(before, sides);
        if (edge.isPresent()) {
            own = ColumnFinder.find(sheet, phrases, weights, spines, new Span(edge.getAsDouble(), limits.right()));
            sides = Sides.of(spines, own);
        }
        if (sides.stream().allMatch(this::isSide)) add(sides, own);
        else add(panel, band);
    }

    private void add(List<Side> panel, Columns columns) {
        Optional<List<Side>> across = panel.size() == 1 ? AcrossWays.of(panel.get(0), phrases) : Optional.empty();
        List<Side> shared =
                across.isPresent() ? across.get() : panel.size() == 2 ? shared(panel.get(0), panel.get(1)) : panel;
        List<Side> summed = shared.stream().map(LoadsByKind::summed).toList();
        tables.add(table(across.isPresent() ? summed : OpenHalves.leftOut(summed), columns));
    }

    private List<Side> shared(Side left, Side right) {
        Optional<List<Side>> inTurn = LoadsInTurn.shared(left, right);
        if (inTurn.isPresent()) return inTurn.get();
        List<Side> split = SharedLoads.split(left, right);
        split = LoadsByKind.parted(split.get(0), split.get(1));
        return LoadsInHalves.split(split.get(0), split.get(1), phrases).orElse(split);
    }

    private static boolean belongs(List<Side> panel, Side next) {
        Side last = panel.get(panel.size() - 1);
        Spine a = last.spine(), b = next.spine();
        if (Math.abs(a.firstY() - b.firstY()) > 1.2 * Math.max(a.pitch(), b.pitch())) return false;
        Set<Integer> seen = new HashSet<>();
        panel.forEach(s -> seen.addAll(s.spine().everyNumber()));
        long again = b.everyNumber().stream().filter(seen::contains).count();
        if (again * 5 > b.tokens().size()) return false;
        int lowest = b.numbers().stream().min(Integer::compare).orElse(1);
        if (a.isOdd() && b.isEven() && (panel.size() == 1 || isSecondSide(panel, b))) return true;
        if (a.isEven() && b.isEven() && b.numbers().get(0) == Collections.max(a.everyNumber()) + 2) return true;
        boolean exchanged = a.isEven() && b.isOdd() && panel.size() == 1;
        if (exchanged && lowest == 1 && seen.contains(2) && !seen.contains(1)) return true;
        // the second side of a further section beside the first: 43, 45 and on, then 44, 46 and on
        if (a.isOdd() && b.isEven() && lowest == lowest(a) + 1) return true;
        if (lowest == 1) return false;
        int highest = seen.stream().max(Integer::compare).orElse(0);
        if (lowest == highest + 1 || lowest > highest && lowest - highest < 4) return true;
        // the second half of a sheet whose columns go on from another page; a device may end them without a number
        return lowest > highest
                && (a.step() == 1 && b.step() == 1
                        || isList(a) && isList(b) && last.sequence().equals(next.sequence()))
                && Math.abs(a.lastY() - b.lastY()) < 3.5 * Math.max(a.pitch(), b.pitch());
    }

    /** All odd positions stand in columns side by side, and the even ones begin beside them. */
    private static boolean isSecondSide(List<Side> panel, Spine even) {
        return even.numbers().get(0) == 2
                && panel.stream().allMatch(s -> s.spine().isOdd())
                && panel.get(0).spine().numbers().get(0) == 1;
    }

    private static int lowest(Spine s) {
        return s.numbers().stream().min(Integer::compare).orElse(1);
    }

    /** Its numbers are neither odd ones nor even ones alone. */
    static boolean isList(Spine s) {
        return !s.isOdd() && !s.isEven();
    }

    /** Around the texts alone: a column may reach far into the blank beside a table, where another's header begins. */
    private double[] edges(List<Side> panel, Columns columns, double top, double bottom) {
        double left = panel.stream().mapToDouble(Side::left).min().orElse(0);
        double right = panel.stream().mapToDouble(Side::right).max().orElse(0);
        if (columns.ruled()) return new double[] {left, right};
        double first = right, last = left;
        for (Phrase p : phrases.between(top, bottom)) {
            if (p.centreY() < top || p.centreY() > bottom || p.centreX() < left || p.centreX() > right) continue;
            first = Math.min(first, p.left());
            last = Math.max(last, p.right());
        }
        return first < last
                ? new double[] {Math.max(left, first - 1), Math.min(right, last + 1)}
                : new double[] {left, right};
    }

    private Table table(List<Side> panel, Columns columns) {
        double first = panel.stream().mapToDouble(s -> s.spine().firstY()).min().orElse(0);
        double last = panel.stream().mapToDouble(s -> s.spine().lastY()).max().orElse(0);
        double pitch = panel.get(0).spine().pitch();
        double top = Math.min(columns.top(), first - 0.5 * panel.get(0).spine().size());
        double head = Math.min(top, columns.headTop()), foot = last + 0.5 * pitch;
        double[] edges = edges(panel, columns, head, foot);
        return new Table(panel, top, new Box(edges[0], head, edges[1] - edges[0], foot - head));
    }
}
