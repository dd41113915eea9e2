package asfound.names;

import java.util.Set;

/** Where the loads of two descriptions are: whether that can be one place. */
final class Whereabouts {

    private final Vocabulary vocabulary;

    Whereabouts(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /** Both name places, and none of one is within a place of the other. */
    boolean areApart(Description a, Description b) {
        Set<String> pa = a.places(), pb = b.places();
        if (pa.isEmpty() || pb.isEmpty()) return false;
        for (String x : pa)
            for (String y : pb) if (vocabulary.isWithin(x, y) || vocabulary.isWithin(y, x)) return false;
        return true;
    }

    /** A room with a number, and a corridor, stair or roof. */
    boolean areRoomAndArea(Description a, Description b) {
        return isRoom(a) && isArea(b) || isRoom(b) && isArea(a);
    }

    private boolean isRoom(Description d) {
        return d.hasRoomNumber() && !hasArea(d);
    }

    private boolean isArea(Description d) {
        return d.numbers().isEmpty() && hasArea(d);
    }

    private boolean hasArea(Description d) {
        return d.places().stream().anyMatch(p -> vocabulary.kindOf(p) == Vocabulary.Kind.AREA);
    }
}
