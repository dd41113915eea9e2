package asfound.names;

import java.util.HashSet;
import java.util.Set;

/** Words that the vocabulary does not know: whether two descriptions mean the same by them. */
final class Wording {

    /** A shorter beginning says nothing of the word. */
    private static final int BEGINNING = 3;
    /** In a shorter word one letter makes another. */
    private static final int LONG = 5;

    private Wording() {}

    /** The name of a room counts only where its number is not the same. */
    static boolean isSame(Description a, Description b, boolean sameRoom) {
        Set<String> wa = new HashSet<>(a.words()), wb = new HashSet<>(b.words());
        if (!sameRoom) {
            wa.addAll(a.roomWords());
            wb.addAll(b.roomWords());
        }
        return wa.size() == wb.size()
                && wa.stream().allMatch(w -> isAkin(w, wb))
                && wb.stream().allMatch(w -> isAkin(w, wa));
    }

    /** Some word of one, those of its loads among them, may be meant by a word of the other. */
    static boolean areAkin(Description a, Description b) {
        Set<String> wb = all(b);
        return all(a).stream().anyMatch(w -> isAkin(w, wb));
    }

    private static Set<String> all(Description d) {
        Set<String> all = new HashSet<>(d.words());
        all.addAll(d.roomWords());
        for (String l : d.loads()) all.addAll(Set.of(l.split(" ")));
        return all;
    }

    /** The word is one of these, the beginning of one, begins with one, or is one slip away. */
    private static boolean isAkin(String word, Set<String> others) {
        for (String other : others)
            if (word.equals(other)
                    || begins(word, other)
                    || begins(other, word)
                    || word.length() >= LONG && other.length() >= LONG && Vocabulary.isOneSlip(word, other))
                return true;
        return false;
    }

    private static boolean begins(String brief, String full) {
        return brief.length() >= BEGINNING && full.startsWith(brief);
    }
}
