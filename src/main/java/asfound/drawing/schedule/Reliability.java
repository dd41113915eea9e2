package asfound.drawing.schedule;

import asfound.model.Box;
import asfound.model.Directory;
import asfound.model.Place;
import asfound.model.Problem;
import java.util.ArrayList;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** How far a reading can be relied on, and what in it a person must look at. */
final class Reliability {

    private static final String LOOK = "Look at the drawing at this place.";

    /** A column of demands or totals repeats what the loads say. */
    private static final Pattern SUM =
            Pattern.compile("\\b(?:demand|design|diversified|total|max|est)", Pattern.CASE_INSENSITIVE);

    private static final Set<Role> KEPT = Set.of(
            Role.DESCRIPTION, Role.RATING, Role.DEVICE, Role.POLES, Role.LOAD, Role.LOAD_A, Role.LOAD_B, Role.LOAD_C);

    /** Said until the pages are put together: a page that goes on from another has that one's name. */
    static final String UNNAMED = "No designation was found; the directory goes by the name of its file or sheet.";

    /** Said of a load alone, until the pages are put together. */
    static final String OF_DEVICE_BEFORE = "it may belong to the device before";

    private final List<Problem> problems = new ArrayList<>();
    private final Set<Integer> unread = new TreeSet<>();
    private double confidence = 1;

    private Reliability() {}

    static Reliability of(
            PanelReader.Circuits circuits,
            List<Leftover> leftovers,
            Table table,
            boolean named,
            Function<asfound.model.Box, Place> places) {
        Reliability r = new Reliability();
        Place whole = places.apply(circuits.box());
        for (Draft d : circuits.drafts()) r.draft(d, places.apply(d.box()));
        for (Leftover stray : circuits.strays())
            r.say(
                    places.apply(stray.box()),
                    0.04,
                    "Text among the rows, near position " + nearest(table, stray.box()) + ", belongs to none: '"
                            + stray.text() + "'.");
        for (Leftover rest : leftovers)
            r.say(
                    places.apply(rest.box()),
                    0.02,
                    "Not understood, beside position " + nearest(table, rest.box()) + ": '" + rest.text() + "'.");
        r.ways(circuits, table, whole);
        r.columns(table, whole);
        r.entries(circuits, places);
        r.phases(circuits, table, places);
        r.ratings(circuits, whole);
        r.confidence -= Math.min(0.3, 0.03 * circuits.cost());
        if (!named) r.say(whole, 0.1, UNNAMED);
        long odd = circuits.drafts().stream()
                .filter(d -> d.ratingA()
                        .value()
                        .filter(a -> !DeviceText.isStandard(a))
                        .isPresent())
                .count();
        r.confidence -= 0.4 * odd / Math.max(1, circuits.drafts().size());
        return r;
    }

    /** The number of the row that a text is nearest to, on the side where it stands. */
    private static int nearest(Table table, Box text) {
        Spine.Token best = null;
        double least = Double.MAX_VALUE;
        for (Side side : table.sides()) {
            double x = text.centreX();
            double off = Math.max(0, Math.max(side.left() - x, x - side.right()));
            for (Spine.Token t : side.spine().tokens()) {
                double far = Math.abs(t.y() - text.centreY()) + 100 * off;
                if (far < least) {
                    least = far;
                    best = t;
                }
            }
        }
        return best == null ? 0 : best.text().first();
    }

    List<Problem> problems() {
        return problems;
    }

    List<Integer> unread() {
        return List.copyOf(unread);
    }

    /** From 0 to 1, to a hundredth. */
    double confidence() {
        return Math.round(100 * Math.max(0.05, Math.min(1, confidence))) / 100.0;
    }

    private void say(Place place, double cost, String message) {
        problems.add(new Problem(place, message, LOOK));
        confidence -= cost;
    }

    private void draft(Draft d, Place place) {
        if (d.trouble().isEmpty()) return;
        unread.add(d.positions().get(0));
        say(place, 0.03, "Position " + d.positions().get(0) + " could not be read in full: " + d.trouble() + ".");
    }

    /** A way that prints one entry for three phases may be a device of three poles. */
    private void ways(PanelReader.Circuits circuits, Table table, Place whole) {
        if (AcrossWays.isAcross(table))
            for (int way : AcrossWays.written(circuits.drafts())) {
                unread.add(3 * way - 2);
                say(
                        whole,
                        0.05,
                        "Way " + way + " has one entry for its three phases; it may be a device of three poles.");
            }
    }

    /** A side without a description or a rating is half a directory; a column that nobody understands may hold anything. */
    private void columns(Table table, Place whole) {
        for (Side side : table.sides()) {
            if (!side.roles().containsKey(Role.DESCRIPTION)) say(whole, 0.35, "No column of descriptions was found.");
            boolean rated = isRated(side);
            if (!rated && table.sides().stream().anyMatch(Reliability::isRated)) {
                IntSummaryStatistics all =
                        side.spine().everyNumber().stream().mapToInt(n -> n).summaryStatistics();
                say(
                        whole,
                        0.15,
                        "No column of ratings was found beside positions " + all.getMin() + " to " + all.getMax()
                                + ".");
            } else if (!rated) confidence -= 0.15;
            if (!side.spine().headed()) confidence -= 0.1;
            side.column(Role.LOAD)
                    .filter(c -> !c.heading().isEmpty() && Headings.weight(c.heading(), Role.LOAD) == 0)
                    .ifPresent(c -> say(
                            whole, 0.05, "The column '" + c.heading() + "' was taken for loads by its figures alone."));
            for (Column c : side.columns()) {
                if (isSecond(side, c))
                    say(
                            whole,
                            0.3,
                            "A second column of the kind was not read: '" + c.heading() + "', with '" + firstText(c)
                                    + "'.");
                if (isUnread(side, c))
                    say(
                            whole,
                            0.1,
                            "The column '" + c.heading() + "' was not read: its entries are not of the kind, as '"
                                    + firstText(c) + "'.");
                if (!side.roles().containsValue(c) && !c.isBlank() && !isKnown(c))
                    say(
                            whole,
                            0.03,
                            "A column was not understood: "
                                    + (c.heading().isEmpty() ? "" : "'" + c.heading() + "', ")
                                    + "with '"
                                    + firstText(c)
                                    + "'.");
            }
        }
    }

    private static boolean isRated(Side side) {
        return side.roles().containsKey(Role.RATING) || side.roles().containsKey(Role.DEVICE);
    }

    private static String firstText(Column c) {
        return c.texts().stream().filter(t -> !Texts.saysNothing(t)).findFirst().orElse("");
    }

    /** Another column of the side was read as what this one holds as well: descriptions or loads would be lost. */
    private static boolean isSecond(Side side, Column c) {
        if (c.isBlank() || side.roles().containsValue(c)) return false;
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
        if (c.isBlank() || side.roles().containsValue(c)) return false;
        Map<Role, Double> heading = Headings.weigh(c.heading());
        boolean device =
                heading.keySet().stream().anyMatch(r -> r == Role.RATING || r == Role.DEVICE || r == Role.POLES);
        boolean known = heading.keySet().stream().anyMatch(side.roles()::containsKey)
                || device && side.roles().containsKey(Role.DEVICE)
                || device && side.roles().containsKey(Role.RATING);
        return !known && heading.entrySet().stream().anyMatch(e -> e.getValue() >= 0.8 && KEPT.contains(e.getKey()));
    }

    /** A column whose heading is a slip is not read; blank ratings must not pass for a schedule without any. */
    private void ratings(PanelReader.Circuits circuits, Place whole) {
        List<Draft> devices = circuits.drafts().stream()
                .filter(d -> d.use() != Directory.Use.SPACE)
                .toList();
        long blank = devices.stream().filter(d -> d.ratingA().isBlank()).count();
        if (devices.size() >= 3 && blank * 2 > devices.size())
            problems.add(new Problem(
                    whole,
                    "Most circuits were read without a rating.",
                    "Look at the drawing at this place. In a table with a column of ratings, name it under 'columns' in"
                            + " record.yaml."));
    }

    /** What an entry lacks that the others have, and loads that are no figures. */
    private void entries(PanelReader.Circuits circuits, Function<asfound.model.Box, Place> places) {
        long loads = circuits.drafts().stream().filter(Reliability::isLoad).count();
        long rated = circuits.drafts().stream()
                .filter(Reliability::isLoad)
                .filter(d -> !d.ratingA().isBlank())
                .count();
        boolean mostRated = loads >= 4 && rated * 10 >= loads * 7;
        for (Draft d : circuits.drafts()) {
            int position = d.positions().get(0);
            Place place = places.apply(d.box());
            boolean bare = d.description().isEmpty() && d.ratingA().isBlank();
            if (isLoad(d) && bare && rated > 0) {
                unread.add(position);
                say(
                        place,
                        0.03,
                        "Position " + position
                                + " has a load, and neither a description nor a rating: "
                                + OF_DEVICE_BEFORE
                                + ".");
            } else if (isLoad(d) && d.ratingA().isBlank() && mostRated)
                say(place, 0.01, "Position " + position + " has no rating, as most others have.");
            d.loads().stream()
                    .filter(l -> l.isUnreadable())
                    .findFirst()
                    .ifPresent(l -> say(
                            place,
                            0.01,
                            "Position " + position + " could not be read in full: load '" + l.raw() + "'."));
        }
    }

    private void phases(PanelReader.Circuits circuits, Table table, Function<asfound.model.Box, Place> places) {
        int columns = (int) Stream.of(Role.LOAD_A, Role.LOAD_B, Role.LOAD_C)
                .filter(role -> table.sides().stream().anyMatch(s -> s.roles().containsKey(role)))
                .count();
        for (Draft d : Rotation.breaking(circuits.drafts(), columns))
            say(
                    places.apply(d.box()),
                    0.01,
                    "Position " + d.positions().get(0)
                            + " has its load under other phases than its neighbours' order gives it.");
    }

    private static boolean isLoad(Draft d) {
        return d.use() == Directory.Use.LOAD;
    }

    /** Its heading says what it holds, and it holds that; or it has none and holds phases or sizes of wire. */
    private static boolean isKnown(Column c) {
        boolean headed = Headings.weigh(c.heading()).entrySet().stream()
                .anyMatch(e -> e.getValue() >= 0.6
                        && (!KEPT.contains(e.getKey()) || Contents.weight(e.getKey(), c.texts()) >= 0.25));
        return headed || c.heading().isEmpty() && (c.weight(Role.PHASE) >= 0.6 || c.weight(Role.WIRE) >= 0.6);
    }
}
