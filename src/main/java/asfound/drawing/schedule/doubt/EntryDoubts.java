package asfound.drawing.schedule.doubt;

import asfound.drawing.schedule.device.Draft;
import asfound.drawing.schedule.device.Rotation;
import asfound.drawing.schedule.table.Table;
import asfound.drawing.schedule.text.DeviceText;
import asfound.drawing.schedule.text.Role;
import asfound.model.Box;
import asfound.model.Directory.Use;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.model.Stated;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** What speaks against the entries of a table: what could not be read, and what one lacks that the others have. */
public final class EntryDoubts {

    /** Said of a load alone, until the pages are put together. */
    public static final String OF_DEVICE_BEFORE = "it may belong to the device before";

    /** Volts to neutral of the largest system that panels are usual in (480Y/277). */
    private static final double PHASE_VOLTS = 277;

    private static final int FEWEST_LOADS = 3;
    private static final double MOST_SHARE = 5;
    private static final double LEAST_SHARE = 1 / 500.0;

    private final List<Draft> drafts;
    private final Function<Box, Place> places;
    private final Doubts doubts;

    EntryDoubts(List<Draft> drafts, Function<Box, Place> places, Doubts doubts) {
        this.drafts = drafts;
        this.places = places;
        this.doubts = doubts;
    }

    private void say(Draft d, double cost, String what) {
        doubts.say(places.apply(d.box()), cost, "Position " + d.positions().get(0) + " " + what + ".");
    }

    void troubles() {
        for (Draft d : drafts) {
            if (d.trouble().isEmpty()) continue;
            // of rows without a device each is told, for on another page they may be one's
            List<Integer> told = isBare(d) ? d.positions() : d.positions().subList(0, 1);
            for (int position : told) {
                doubts.unread(position);
                doubts.say(
                        places.apply(d.box()),
                        0.03,
                        "Position " + position + " could not be read in full: " + d.trouble() + ".");
            }
        }
    }

    private static boolean isBare(Draft d) {
        return d.description().isEmpty() && d.ratingA().isBlank();
    }

    /** What an entry lacks that the others have, and loads that are no figures. */
    void gaps() {
        List<Draft> loads = drafts.stream().filter(EntryDoubts::isLoad).toList();
        long rated = loads.stream().filter(d -> !d.ratingA().isBlank()).count();
        boolean mostRated = loads.size() >= 4 && rated * 10 >= loads.size() * 7;
        for (Draft d : drafts) {
            if (isLoad(d) && isBare(d) && rated > 0) {
                doubts.unread(d.positions().get(0));
                say(d, 0.03, "has a load, and neither a description nor a rating: " + OF_DEVICE_BEFORE);
            } else if (isLoad(d) && d.ratingA().isBlank() && mostRated)
                say(d, 0.01, "has no rating, as most others have");
            d.loads().stream()
                    .filter(Stated::isUnreadable)
                    .findFirst()
                    .ifPresent(l -> say(d, 0.01, "could not be read in full: load '" + l.raw() + "'"));
        }
    }

    private static boolean isLoad(Draft d) {
        return d.use() == Use.LOAD;
    }

    void phases(Table table) {
        int columns = (int) Stream.of(Role.LOAD_A, Role.LOAD_B, Role.LOAD_C)
                .filter(role -> table.sides().stream().anyMatch(s -> s.roles().containsKey(role)))
                .count();
        for (Draft d : Rotation.breaking(drafts, columns))
            say(d, 0.01, "has its load under other phases than its neighbours' order gives it");
    }

    /** A column whose heading is a slip is not read; blank ratings must not pass for a schedule without any. */
    void ratings(Place whole) {
        List<Draft> devices = drafts.stream().filter(d -> d.use() != Use.SPACE).toList();
        long blank = devices.stream().filter(d -> d.ratingA().isBlank()).count();
        if (devices.size() >= 3 && blank * 2 > devices.size())
            doubts.say(new Problem(
                    whole,
                    "Most circuits were read without a rating.",
                    "Look at the drawing at this place. In a table with a column of ratings, name it under 'columns' in"
                            + " record.yaml."));
    }

    /** Loads in another unit than was taken are far above or below what their devices carry. */
    void units(Place whole) {
        double[] shares = drafts.stream()
                .filter(EntryDoubts::isLoad)
                .filter(d -> d.ratingA().or(0) > 0)
                .mapToDouble(d -> load(d) / (d.poles() * d.ratingA().or(0) * PHASE_VOLTS))
                .filter(share -> share > 0)
                .sorted()
                .toArray();
        if (shares.length < FEWEST_LOADS) return;
        double middle = shares[shares.length / 2];
        if (middle > MOST_SHARE)
            doubts.say(whole, 0.25, "The loads are more than their devices carry; they may be in VA, not kVA.");
        if (middle < LEAST_SHARE) doubts.say(whole, 0.25, "The loads are next to nothing; they may be in kVA, not VA.");
    }

    private static double load(Draft d) {
        return d.loads().stream().mapToDouble(l -> l.or(0.0)).sum();
    }

    /** Ratings that no device is made for may be figures of another kind. */
    void oddRatings() {
        long odd = drafts.stream()
                .filter(d -> d.ratingA()
                        .value()
                        .filter(a -> !DeviceText.isStandard(a))
                        .isPresent())
                .count();
        doubts.count(0.4 * odd / Math.max(1, drafts.size()));
    }
}
