package asfound.drawing.schedule.doubt;

import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.column.Contents;
import asfound.drawing.schedule.table.LoadsByKind;
import asfound.drawing.schedule.table.Side;
import asfound.drawing.schedule.table.Table;
import asfound.drawing.schedule.text.Headings;
import asfound.drawing.schedule.text.Labels;
import asfound.drawing.schedule.text.LoadClasses;
import asfound.drawing.schedule.text.Look;
import asfound.drawing.schedule.text.Looks;
import asfound.drawing.schedule.text.Role;
import asfound.drawing.schedule.text.Texts;
import asfound.model.Place;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What speaks against the columns of a table: a side without a description or a rating is half a directory; a column that
 * nobody understands may hold anything.
 */
final class ColumnDoubts {

    /** A column of demands or totals repeats what the loads say. */
    private static final Pattern SUM =
            Pattern.compile("\\b(?:demand|dem\\b|dmd\\b|design|diversified|total|max|est)", Pattern.CASE_INSENSITIVE);

    private static final Set<Role> KEPT = Set.of(
            Role.DESCRIPTION, Role.RATING, Role.DEVICE, Role.POLES, Role.LOAD, Role.LOAD_A, Role.LOAD_B, Role.LOAD_C);

    private final Table table;
    private final Place whole;
    private final Doubts doubts;

    ColumnDoubts(Table table, Place whole, Doubts doubts) {
        this.table = table;
        this.whole = whole;
        this.doubts = doubts;
    }

    void all() {
        boolean anyRated = table.sides().stream().anyMatch(ColumnDoubts::isRated);
        for (Side side : table.sides()) {
            roles(side, anyRated);
            List<Column> summed = LoadsByKind.parts(side);
            for (Column c : side.columns()) if (!summed.contains(c)) column(side, c);
        }
    }

    private void roles(Side side, boolean anyRated) {
        if (!side.roles().containsKey(Role.DESCRIPTION))
            doubts.say(whole, 0.35, "No column of descriptions was found.");
        if (!isRated(side) && anyRated) {
            IntSummaryStatistics all =
                    side.spine().everyNumber().stream().mapToInt(n -> n).summaryStatistics();
            doubts.say(
                    whole,
                    0.15,
                    "No column of ratings was found beside positions " + all.getMin() + " to " + all.getMax() + ".");
        } else if (!isRated(side)) doubts.count(0.15);
        if (!side.spine().headed()) doubts.count(0.1);
        side.column(Role.LOAD)
                // figures alone speak no more than 1 for a role
                .filter(c -> c.weight(Role.LOAD) <= 1)
                .filter(c -> !c.heading().isEmpty() && Headings.weight(c.heading(), Role.LOAD) == 0)
                .ifPresent(c -> doubts.say(
                        whole, 0.05, "The column '" + c.heading() + "' was taken for loads by its figures alone."));
    }

    private static boolean isRated(Side side) {
        return side.roles().containsKey(Role.RATING) || side.roles().containsKey(Role.DEVICE);
    }

    /** A column that no role was given to. */
    private void column(Side side, Column c) {
        if (c.isBlank() || side.roles().containsValue(c)) return;
        String text = firstText(c);
        if (isSecond(side, c))
            doubts.say(
                    whole,
                    0.3,
                    "A second column of the kind was not read: '" + c.heading() + "', with '" + text + "'.");
        if (isUnread(side, c))
            doubts.say(
                    whole,
                    0.1,
                    "The column '" + c.heading() + "' was not read: its entries are not of the kind, as '" + text
                            + "'.");
        if (!isKnown(c) && !isOfKinds(side, c) && !isOfPanel(side, c))
            doubts.say(
                    whole,
                    0.03,
                    "A column was not understood: " + (c.heading().isEmpty() ? "" : "'" + c.heading() + "', ")
                            + "with '" + text + "'.");
    }

    private static String firstText(Column c) {
        return c.texts().stream().filter(t -> !Texts.saysNothing(t)).findFirst().orElse("");
    }

    /** Another column of the side was read as what this one holds as well: descriptions or loads would be lost. */
    private static boolean isSecond(Side side, Column c) {
        return Headings.weigh(c.heading()).entrySet().stream()
                .anyMatch(e -> e.getValue() >= 0.8
                        && (e.getKey() == Role.DESCRIPTION
                                || e.getKey().isPhaseLoad()
                                || e.getKey() == Role.LOAD
                                        && !SUM.matcher(c.heading()).find())
                        && side.roles().containsKey(e.getKey())
                        && c.weight(e.getKey()) >= 1.2);
    }

    /** Its heading clearly says what it holds, and nothing on this side was read as that. */
    private static boolean isUnread(Side side, Column c) {
        Map<Role, Double> heading = Headings.weigh(c.heading());
        boolean device =
                heading.keySet().stream().anyMatch(r -> r == Role.RATING || r == Role.DEVICE || r == Role.POLES);
        boolean known = heading.keySet().stream().anyMatch(side.roles()::containsKey) || device && isRated(side);
        return !known && heading.entrySet().stream().anyMatch(e -> e.getValue() >= 0.8 && KEPT.contains(e.getKey()));
    }

    /**
     * What the devices are beside a column of their ratings, {@code MCB} under {@code Device}, or what the loads are, in words or
     * types, or the names of relays: neither a rating nor poles nor a load can be lost with it.
     */
    private static boolean isOfKinds(Side side, Column c) {
        if (!isRated(side) || c.heading().isEmpty()) return false;
        List<Look> said = new Looks().of(c.texts());
        boolean devices = Headings.weigh(c.heading()).entrySet().stream()
                .anyMatch(e -> (e.getKey() == Role.DEVICE || e.getKey() == Role.RATING) && e.getValue() >= 0.6);
        if (devices) return said.stream().allMatch(Look::kind);
        // K1 is a relay, though it could be a curve and a rating
        if (CountedThings.isOne(c.heading()))
            return said.stream().allMatch(l -> Character.isLetter(l.text().charAt(0)));
        return LoadClasses.isOne(c.heading())
                && said.stream()
                        .allMatch(l ->
                                l.letters() > 0 && !l.figure() && l.device().isEmpty());
    }

    /** A list of several panels says what feeds each, in a column of its own. */
    private static boolean isOfPanel(Side side, Column c) {
        return side.roles().containsKey(Role.PANEL)
                && Labels.ofPanel(c.heading()).isPresent();
    }

    /** Its heading says what it holds, and it holds that; or it has none and holds phases or sizes of wire. */
    private static boolean isKnown(Column c) {
        boolean headed = Headings.weigh(c.heading()).entrySet().stream()
                .anyMatch(e -> e.getValue() >= 0.6
                        && (!KEPT.contains(e.getKey()) || Contents.weight(e.getKey(), c.texts()) >= 0.25));
        return headed || c.heading().isEmpty() && (c.weight(Role.PHASE) >= 0.6 || c.weight(Role.WIRE) >= 0.6);
    }
}
