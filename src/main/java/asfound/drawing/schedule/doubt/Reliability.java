package asfound.drawing.schedule.doubt;

import asfound.drawing.schedule.device.Circuits;
import asfound.drawing.schedule.device.Draft;
import asfound.drawing.schedule.row.Leftover;
import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.table.AcrossWays;
import asfound.drawing.schedule.table.Side;
import asfound.drawing.schedule.table.Table;
import asfound.model.Box;
import asfound.model.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** How far the reading of one table can be relied on. */
public final class Reliability {

    /** Said until the pages are put together: a page that goes on from another has that one's name. */
    public static final String UNNAMED =
            "No designation was found; the directory goes by the name of its file or sheet.";

    private Reliability() {}

    /**
     * Everything that speaks against a reading.
     *
     * @param leftovers texts inside the table that nothing was read from
     * @param named the panel's designation was found
     * @param places of boxes on the sheet
     */
    public static Doubts of(
            Circuits circuits, List<Leftover> leftovers, Table table, boolean named, Function<Box, Place> places) {
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
        entries.units(whole);
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
    private static void ways(Circuits circuits, Table table, Place whole, Doubts doubts) {
        if (!AcrossWays.isAcross(table)) return;
        for (int way : saidOnce(circuits.drafts())) {
            doubts.unread(3 * way - 2);
            doubts.say(
                    whole,
                    0.05,
                    "Way " + way + " has one entry for its three phases; it may be a device of three poles.");
        }
    }

    /** Ways of which one phase alone says something: a device of three phases written once looks so as well. */
    private static List<Integer> saidOnce(List<Draft> drafts) {
        List<Integer> out = new ArrayList<>();
        int highest = drafts.stream().mapToInt(d -> d.positions().get(0)).max().orElse(0);
        for (int way = 1; (way - 1) * AcrossWays.PHASES < highest; way++) {
            int first = (way - 1) * AcrossWays.PHASES + 1;
            List<Draft> saying = drafts.stream()
                    .filter(d -> d.positions().get(0) >= first && d.positions().get(0) < first + AcrossWays.PHASES)
                    .filter(d -> !d.saysNothing())
                    .toList();
            if (saying.size() == 1 && saying.get(0).positions().size() == 1) out.add(way);
        }
        return out;
    }
}
