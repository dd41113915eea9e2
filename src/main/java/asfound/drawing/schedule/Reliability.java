package asfound.drawing.schedule;

import asfound.model.Box;
import asfound.model.Place;
import java.util.List;
import java.util.function.Function;

/** How far the reading of one table can be relied on. */
final class Reliability {

    /** Said until the pages are put together: a page that goes on from another has that one's name. */
    static final String UNNAMED = "No designation was found; the directory goes by the name of its file or sheet.";

    private Reliability() {}

    /**
     * Everything that speaks against a reading.
     *
     * @param leftovers texts inside the table that nothing was read from
     * @param named the panel's designation was found
     * @param places of boxes on the sheet
     */
    static Doubts of(
            PanelReader.Circuits circuits,
            List<Leftover> leftovers,
            Table table,
            boolean named,
            Function<Box, Place> places) {
        Doubts doubts = new Doubts();
        Place whole = places.apply(circuits.box());
        EntryDoubts entries = new EntryDoubts(circuits.drafts(), places, doubts);
        entries.troubles();
        texts(circuits.strays(), leftovers, table, places, doubts);
        ways(circuits, table, whole, doubts);
        new ColumnDoubts(table, whole, doubts).all();
        entries.gaps();
        entries.phases(table);
        entries.ratings(whole);
        doubts.count(Math.min(0.3, 0.03 * circuits.cost()));
        if (!named) doubts.say(whole, 0.1, UNNAMED);
        entries.oddRatings();
        return doubts;
    }

    private static void texts(
            List<Leftover> strays, List<Leftover> leftovers, Table table, Function<Box, Place> places, Doubts doubts) {
        for (Leftover stray : strays)
            doubts.say(
                    places.apply(stray.box()),
                    0.04,
                    "Text among the rows, near position " + nearest(table, stray.box()) + ", belongs to none: '"
                            + stray.text() + "'.");
        for (Leftover rest : leftovers)
            doubts.say(
                    places.apply(rest.box()),
                    0.02,
                    "Not understood, beside position " + nearest(table, rest.box()) + ": '" + rest.text() + "'.");
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

    /** A way that prints one entry for three phases may be a device of three poles. */
    private static void ways(PanelReader.Circuits circuits, Table table, Place whole, Doubts doubts) {
        if (!AcrossWays.isAcross(table)) return;
        for (int way : AcrossWays.written(circuits.drafts())) {
            doubts.unread(3 * way - 2);
            doubts.say(
                    whole,
                    0.05,
                    "Way " + way + " has one entry for its three phases; it may be a device of three poles.");
        }
    }
}
