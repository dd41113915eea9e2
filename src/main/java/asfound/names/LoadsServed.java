package asfound.names;

import java.util.HashSet;
import java.util.Set;

/** What descriptions say is served, by their loads and tags. */
final class LoadsServed {

    private final Vocabulary vocabulary;

    LoadsServed(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /** Parts with a circuit of their own, such as the control of a pump. */
    Set<String> parts(Description d) {
        Set<String> parts = new HashSet<>();
        for (String l : d.loads())
            if (vocabulary.kindOf(l) == Vocabulary.Kind.PART && !isMeantByTag(d, l)) parts.add(l);
        return parts;
    }

    /** Loads that the tags do not mean. */
    Set<String> besideTags(Description d) {
        Set<String> rest = new HashSet<>(d.loads());
        rest.removeIf(load -> isMeantByTag(d, load));
        return rest;
    }

    private boolean isMeantByTag(Description d, String load) {
        return d.tags().stream()
                .flatMap(Description.Tag::things)
                .anyMatch(m -> vocabulary.isWithin(m, load) || vocabulary.isWithin(load, m));
    }

    /** What is served, without the receptacle of a thing that plugs in and the exit signs on a lighting circuit. */
    Set<String> uses(Description d) {
        Set<String> uses = new HashSet<>(d.loads());
        if (uses.contains("RECEPTACLE") && uses.stream().anyMatch(l -> vocabulary.kindOf(l) == Vocabulary.Kind.CORD))
            uses.remove("RECEPTACLE");
        if (uses.contains("LIGHTING")) uses.remove("EXIT SIGN");
        uses.removeIf(wide -> d.loads().stream().anyMatch(l -> !l.equals(wide) && vocabulary.isWithin(l, wide)));
        return uses;
    }

    /** Some load of one is, includes or is included by a load of the other. */
    boolean areRelated(Set<String> a, Set<String> b) {
        for (String x : a) {
            if (isWide(x)) return true;
            for (String y : b) if (isWide(y) || vocabulary.isWithin(x, y) || vocabulary.isWithin(y, x)) return true;
        }
        return false;
    }

    private boolean isWide(String load) {
        return vocabulary.kindOf(load) == Vocabulary.Kind.WIDE;
    }

    /** What is served cannot be one thing. */
    boolean differ(Description a, Description b) {
        Set<String> la = a.loads(), lb = b.loads();
        if (!la.isEmpty() && !lb.isEmpty()) {
            if (la.contains("CONTROL") != lb.contains("CONTROL")) return true;
            return !areRelated(la, lb) && !Overlap.shares(a.words(), b.words());
        }
        boolean sayBoth = !(la.isEmpty() && a.words().isEmpty())
                && !(lb.isEmpty() && b.words().isEmpty());
        boolean oneRoom = Overlap.shares(a.numbers(), b.numbers()) || Overlap.shares(a.places(), b.places());
        return sayBoth && !oneRoom && !Wording.areAkin(a, b);
    }
}
