package asfound.drawing.schedule.row;

import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.phrase.ConductorColours;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.phrase.PositionText;
import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.table.Side;
import asfound.drawing.schedule.text.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The rows of a board with ways, whose phases stand below each other in a column of their own: one for each phase. */
final class WayRows {

    private static final Pattern PHASES = Pattern.compile(
            "(?:L[123]|[RYBAC])(?:\\s*[-,/&+ ]?\\s*(?:L[123]|[RYBAC]))*|TP&?N?", Pattern.CASE_INSENSITIVE);
    private static final Pattern COLOURS = Pattern.compile("[RY][-,/&+ RYB]*", Pattern.CASE_INSENSITIVE);
    private static final Pattern LETTERS = Pattern.compile("[ABC][-,/&+ ABC]*");
    private static final Pattern PHASE = Pattern.compile("L[123]|[RYBAC]");

    private final Phrases phrases;
    private final Spine spine;
    private final Column column;
    private final boolean coloured;
    private final Map<String, Integer> colours;

    private WayRows(Phrases phrases, Spine spine, Column column) {
        this.phrases = phrases;
        this.spine = spine;
        this.column = column;
        colours = ConductorColours.phases(column.texts());
        coloured = column.texts().stream().anyMatch(t -> COLOURS.matcher(t).matches());
    }

    /** None where the sheet has no ways. */
    static List<Row> of(Phrases phrases, Side side) {
        Optional<Column> column = side.column(Role.PHASE);
        if (column.isEmpty() || !side.spine().isSingle()) return List.of();
        return new WayRows(phrases, side.spine(), column.get()).rows();
    }

    private List<Row> rows() {
        List<List<Phrase>> groups = groups();
        int rows = groups.stream().mapToInt(List::size).sum(),
                ways = spine.tokens().size();
        if (groups.size() != ways || rows < 2 * ways && !areWhole(groups) || arePositions(groups)) return List.of();
        List<Row> out = new ArrayList<>();
        for (int g = 0; g < groups.size(); g++) {
            int way = spine.tokens().get(g).text().first();
            for (Phrase p : groups.get(g)) {
                PositionText text = new PositionText(List.of(way), phases(p.text()), way + p.text());
                out.add(new Row(Optional.of(new Spine.Token(text, p)), text.order(), p.centreY()));
            }
        }
        return out;
    }

    /** The entries of the phase column, a new group wherever the phases begin again. */
    private List<List<Phrase>> groups() {
        double reach = 1.2 * spine.pitch();
        List<List<Phrase>> out = new ArrayList<>();
        int last = 9;
        for (Phrase p : phrases.between(spine.firstY() - reach, spine.lastY() + reach)) {
            if (!column.holds(p.centreX())
                    || p.centreY() < spine.firstY() - reach
                    || p.centreY() > spine.lastY() + reach) continue;
            if (!colours.containsKey(upper(p.text()))
                    && !PHASES.matcher(p.text()).matches()) continue;
            List<Integer> phases = phases(p.text());
            if (phases.get(0) <= last) out.add(new ArrayList<>());
            last = phases.get(phases.size() - 1);
            out.get(out.size() - 1).add(p);
        }
        return out;
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

    /** The numbers count every row, or every row of both sides: positions that stand only beside a device's first pole. */
    private boolean arePositions(List<List<Phrase>> groups) {
        boolean all = groups.size() > 1;
        for (int g = 1; g < groups.size(); g++) {
            int up = spine.up(g), rows = groups.get(g - 1).size();
            all &= rows > 1 && (up == rows || up == 2 * rows);
        }
        return all;
    }

    private static String upper(String text) {
        return text.strip().toUpperCase(Locale.ROOT);
    }

    /** B is the second phase beside A and C, and the third beside R and Y. */
    private List<Integer> phases(String text) {
        String t = upper(text);
        if (colours.containsKey(t)) return List.of(colours.get(t));
        if (t.startsWith("TP")) return List.of(1, 2, 3);
        boolean abc = !coloured && LETTERS.matcher(t).matches();
        List<Integer> out = new ArrayList<>();
        Matcher m = PHASE.matcher(t);
        while (m.find()) {
            String one = m.group();
            int phase =
                    one.startsWith("L") ? one.charAt(1) - '0' : abc ? "ABC".indexOf(one) + 1 : PositionText.phase(one);
            out.add(phase);
        }
        return out.isEmpty() ? List.of(1) : out;
    }
}
