package asfound.report.picture;

import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.Standing;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** The standings of connections in the words of the report. */
public final class Standings {

    /** In the order in which they are explained and in which they ask for attention. */
    private static final List<Standing> BY_ATTENTION = List.of(
            Standing.CONTRADICTED,
            Standing.FOUND,
            Standing.IN_CONFLICT,
            Standing.STALE,
            Standing.UNTRACED,
            Standing.CONFIRMED);

    static final Comparator<Standing> ATTENTION = Comparator.comparing(BY_ATTENTION::indexOf);

    private Standings() {}

    public static List<Standing> byAttention() {
        return BY_ATTENTION;
    }

    /** The short word that stands on a line; empty where drawing and survey agree. */
    public static String tag(Standing standing) {
        return switch (standing) {
            case CONFIRMED -> "";
            case FOUND -> "found";
            case UNTRACED -> "not traced";
            case CONTRADICTED -> "drawn only";
            case IN_CONFLICT -> "conflict";
            case STALE -> "out of date";
        };
    }

    /** What the standing means, for legend and details. */
    public static String meaning(Standing standing) {
        return switch (standing) {
            case CONFIRMED -> "drawn, and traced as drawn";
            case FOUND -> "traced in the building, and on no drawing";
            case UNTRACED -> "drawn, and not traced";
            case CONTRADICTED -> "drawn, and the survey speaks against it";
            case IN_CONFLICT -> "observations of it cannot all be true";
            case STALE -> "traced only before the latest modification";
        };
    }

    static String sentence(Connection c) {
        String by = c.devices().stream().map(Device::label).collect(Collectors.joining(", then "));
        return c.from() + (c.flow() == Connection.Flow.TIE ? " tied to " : " to ") + c.to()
                + (by.isEmpty() ? " without a device" : " by " + by) + ": " + meaning(c.standing())
                + (c.normallyOpen() ? "; drawn normally open" : "");
    }

    static String counts(List<Connection> connections) {
        return BY_ATTENTION.stream()
                .filter(s -> connections.stream().anyMatch(c -> c.standing() == s))
                .map(s -> connections.stream().filter(c -> c.standing() == s).count() + " "
                        + (s == Standing.CONFIRMED ? "as drawn" : tag(s)))
                .collect(Collectors.joining(", "));
    }
}
