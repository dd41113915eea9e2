package asfound.drawing.schedule.text;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Devices written with two ratings under a heading that names both: {@code 160/125} under {@code FRAME/TRIP (A)} is set to 125 A in
 * a frame of 160 A. What a device lets through is its trip.
 */
public final class FrameAndTrip {

    private static final Pattern TWO =
            Pattern.compile("(\\d{2,4})\\s*A?\\s*/\\s*(\\d{2,4})(\\s*A)?(.*)", Pattern.CASE_INSENSITIVE);

    /** The size that a device is built in, and its rated current {@code In}. */
    private static final Set<String> FRAMES = Set.of("frame", "af", "in");

    private static final Set<String> TRIPS = Set.of("trip", "at", "set", "setting", "ir");

    /** As {@code In/Ir}. */
    private static final int SHORTEST = 5;
    /** As {@code Frame rating (A) / Trip setting (A)}. */
    private static final int LONGEST = 40;

    private FrameAndTrip() {}

    /** It names both, and nothing else but their unit. */
    public static boolean isHeading(String heading) {
        return order(heading).isPresent();
    }

    /**
     * An entry as the trip alone, with what is written behind both; the entry itself where the heading does not name both, or
     * where its figures stand the other way round: no trip is above its frame.
     */
    public static String trip(String heading, String entry) {
        if (entry.indexOf('/') < 0) return entry;
        Optional<Boolean> frameFirst = order(heading);
        Matcher m = TWO.matcher(entry.strip());
        if (frameFirst.isEmpty() || !m.matches()) return entry;
        String frame = m.group(frameFirst.get() ? 1 : 2), trip = m.group(frameFirst.get() ? 2 : 1);
        return Integer.parseInt(trip) > Integer.parseInt(frame) ? entry : trip + m.group(4);
    }

    /** Whether the frame is named first; empty where not both are named. */
    private static Optional<Boolean> order(String heading) {
        if (heading.length() < SHORTEST || heading.length() > LONGEST) return Optional.empty();
        List<String> words = Arrays.stream(Headings.plain(heading).split(" "))
                .filter(w -> !w.equals("a") && !w.equals("amps") && !w.equals("rating"))
                .toList();
        if (words.size() != 2) return Optional.empty();
        String first = words.get(0), second = words.get(1);
        if (FRAMES.contains(first) && TRIPS.contains(second)) return Optional.of(true);
        return TRIPS.contains(first) && FRAMES.contains(second) ? Optional.of(false) : Optional.empty();
    }
}
