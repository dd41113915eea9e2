package asfound.names;

import java.util.Collections;
import java.util.Set;

/** How what two descriptions say of one matter stands to one another. */
enum Overlap {
    /** Neither says anything. */
    NONE,
    ONE_SIDED,
    EQUAL,
    /** One says what the other does, and more. */
    OVERLAPPING,
    /** Each says what the other does not. */
    APART;

    static Overlap of(Set<String> a, Set<String> b) {
        if (a.isEmpty() && b.isEmpty()) return NONE;
        if (a.isEmpty() || b.isEmpty()) return ONE_SIDED;
        if (a.equals(b)) return EQUAL;
        return a.containsAll(b) || b.containsAll(a) ? OVERLAPPING : APART;
    }

    static boolean isApart(Set<String> a, Set<String> b) {
        return of(a, b) == APART;
    }

    static boolean shares(Set<String> a, Set<String> b) {
        return !Collections.disjoint(a, b);
    }

    static Overlap ofTags(Description a, Description b) {
        if (a.tags().isEmpty() && b.tags().isEmpty()) return NONE;
        if (a.tags().isEmpty()) return isNamed(b, a) ? EQUAL : ONE_SIDED;
        if (b.tags().isEmpty()) return isNamed(a, b) ? EQUAL : ONE_SIDED;
        long met = met(a, b), metOfB = met(b, a);
        if (met == 0 || met < a.tags().size() && metOfB < b.tags().size()) return APART;
        return met == a.tags().size() && metOfB == b.tags().size() ? EQUAL : OVERLAPPING;
    }

    /** How many tags of the first are in the second. */
    private static long met(Description a, Description b) {
        return a.tags().stream()
                .filter(t -> b.tags().stream().anyMatch(t::matches))
                .count();
    }

    /** {@code PANEL KP} beside {@code KP}, {@code RECEPT A101} beside {@code RM A-101}. */
    private static boolean isNamed(Description tagged, Description other) {
        return tagged.tags().stream()
                .allMatch(t -> !t.text().isEmpty()
                        && (other.words().contains(t.text())
                                || other.roomWords().contains(t.text())
                                || other.numbers().contains(t.text())));
    }
}
