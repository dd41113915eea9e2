package asfound.names;

import asfound.recordset.Settings;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Compares circuit descriptions as an electrician would. Rooms, tags and quantities weigh most, wording least.
 *
 * <p>{@link Sameness#SAME} and {@link Sameness#DIFFERENT} need a reason each; what has neither is
 * {@link Sameness#UNCLEAR}, goes to a person and raises no alarm.
 */
public final class Descriptions {

    private static final int REMEMBERED = 500_000;

    private final Vocabulary vocabulary;
    private final Map<String, Description> parsed = new ConcurrentHashMap<>();

    private Descriptions(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    public static Descriptions of(Settings settings) {
        return new Descriptions(Vocabulary.with(settings.abbreviations()));
    }

    public Sameness compare(String a, String b) {
        Description x = parse(a), y = parse(b);
        Optional<Sameness> plain = plainly(x, y);
        if (plain.isPresent()) return plain.get();
        return switch (tags(x, y)) {
            case EQUAL -> tagged(x, y);
            case OVERLAPPING -> Sameness.UNCLEAR;
            case APART -> Sameness.DIFFERENT;
            case ONE_SIDED -> oneTagged(x.tags().isEmpty() ? y : x, x.tags().isEmpty() ? x : y);
            case NONE -> untagged(x, y);
        };
    }

    /** A load of a known kind under its own number, such as {@code ELEVATOR 1} or {@code ELEV. 1}: one thing. */
    public boolean isNumberedLoad(String text) {
        Description d = parse(text);
        return d.tags().size() == 1 && !d.tags().iterator().next().meanings().isEmpty();
    }

    Description parse(String raw) {
        Description known = parsed.get(raw);
        if (known != null) return known;
        Description description = DescriptionParser.parse(Initials.joined(raw), vocabulary);
        if (parsed.size() < REMEMBERED) parsed.put(raw, description);
        return description;
    }

    /** Blank, vacant and word-for-word equal descriptions. */
    private static Optional<Sameness> plainly(Description a, Description b) {
        if (a.saysNothing() || b.saysNothing()) return Optional.of(Sameness.UNCLEAR);
        if (a.key().equals(b.key())) return Optional.of(Sameness.SAME);
        if (a.vacancy().isEmpty() && b.vacancy().isEmpty()) return Optional.empty();
        return Optional.of(a.vacancy().equals(b.vacancy()) ? Sameness.SAME : Sameness.DIFFERENT);
    }

    private enum Overlap {
        NONE,
        ONE_SIDED,
        EQUAL,
        OVERLAPPING,
        APART
    }

    /** How two lists stand to one another; apart where each has what the other lacks. */
    private static Overlap overlap(Set<String> a, Set<String> b) {
        if (a.isEmpty() && b.isEmpty()) return Overlap.NONE;
        if (a.isEmpty() || b.isEmpty()) return Overlap.ONE_SIDED;
        if (a.equals(b)) return Overlap.EQUAL;
        return a.containsAll(b) || b.containsAll(a) ? Overlap.OVERLAPPING : Overlap.APART;
    }

    private static boolean shares(Set<String> a, Set<String> b) {
        for (String s : a) if (b.contains(s)) return true;
        return false;
    }

    private static Overlap tags(Description a, Description b) {
        if (a.tags().isEmpty() && b.tags().isEmpty()) return Overlap.NONE;
        if (a.tags().isEmpty() || b.tags().isEmpty()) return namedInWords(a, b) ? Overlap.EQUAL : Overlap.ONE_SIDED;
        long met = a.tags().stream()
                .filter(t -> b.tags().stream().anyMatch(t::matches))
                .count();
        if (met == 0) return Overlap.APART;
        long metOfB = b.tags().stream()
                .filter(t -> a.tags().stream().anyMatch(t::matches))
                .count();
        if (met < a.tags().size() && metOfB < b.tags().size()) return Overlap.APART;
        return met == a.tags().size() && metOfB == b.tags().size() ? Overlap.EQUAL : Overlap.OVERLAPPING;
    }

    /** {@code PANEL KP} beside {@code KP}, {@code RECEPT A101} beside {@code RM A-101}. */
    private static boolean namedInWords(Description a, Description b) {
        Description tagged = a.tags().isEmpty() ? b : a, other = a.tags().isEmpty() ? a : b;
        return tagged.tags().stream()
                .allMatch(t -> !t.text().isEmpty()
                        && (other.words().contains(t.text())
                                || other.roomWords().contains(t.text())
                                || other.numbers().contains(t.text())));
    }

    /** The same tags: different only where one is a part with a circuit of its own, such as the control of a pump. */
    private Sameness tagged(Description a, Description b) {
        if (!parts(a).equals(parts(b))) return Sameness.DIFFERENT;
        if (overlap(a.numbers(), b.numbers()) == Overlap.APART
                || overlap(a.floors(), b.floors()) == Overlap.APART
                || overlap(a.directions(), b.directions()) == Overlap.APART
                || !futures(a).equals(futures(b))) return Sameness.UNCLEAR;
        if (a.loads().isEmpty() || b.loads().isEmpty()) return Sameness.SAME;
        // BOILER 1 and BOILER 1 PUMP: a number of the thing itself, and something beside it
        boolean byNumber = a.tags().stream().anyMatch(t -> t.text().isEmpty())
                || b.tags().stream().anyMatch(t -> t.text().isEmpty());
        if (byNumber && besideTags(a).isEmpty() != besideTags(b).isEmpty()) return Sameness.UNCLEAR;
        if (related(a.loads(), b.loads())) return Sameness.SAME;
        // AC-9 may be an air compressor's tag and an air conditioner's: then these are two
        boolean eachFits = besideTags(a).isEmpty() && besideTags(b).isEmpty();
        return eachFits ? Sameness.DIFFERENT : Sameness.UNCLEAR;
    }

    private Set<String> parts(Description d) {
        Set<String> parts = new HashSet<>();
        for (String l : d.loads()) if (vocabulary.kindOf(l) == Vocabulary.Kind.PART && !meantByTag(d, l)) parts.add(l);
        return parts;
    }

    private static Set<String> futures(Description d) {
        return d.details().contains("FUTURE") ? Set.of("FUTURE") : Set.of();
    }

    private boolean meantByTag(Description d, String load) {
        return d.tags().stream()
                .flatMap(t -> t.meanings().stream())
                .map(m -> m.substring(0, m.lastIndexOf('#')))
                .anyMatch(m -> vocabulary.isWithin(m, load) || vocabulary.isWithin(load, m));
    }

    private Set<String> besideTags(Description d) {
        Set<String> rest = new HashSet<>();
        for (String l : d.loads()) if (!meantByTag(d, l)) rest.add(l);
        return rest;
    }

    /** Some load of one is, includes or is included by a load of the other. */
    private boolean related(Set<String> a, Set<String> b) {
        for (String x : a) {
            if (vocabulary.kindOf(x) == Vocabulary.Kind.WIDE) return true;
            for (String y : b)
                if (vocabulary.kindOf(y) == Vocabulary.Kind.WIDE
                        || vocabulary.isWithin(x, y)
                        || vocabulary.isWithin(y, x)) return true;
        }
        return false;
    }

    /** Only one has a tag: never the same, and different where it cannot be what the other says. */
    private Sameness oneTagged(Description tagged, Description other) {
        if (overlap(tagged.numbers(), other.numbers()) == Overlap.APART
                || placesApart(tagged.places(), other.places())
                || roomAndArea(tagged, other)) return Sameness.DIFFERENT;
        Set<String> meant = new HashSet<>(tagged.loads());
        boolean known = true;
        for (Description.Tag t : tagged.tags()) {
            t.meanings().forEach(m -> meant.add(m.substring(0, m.lastIndexOf('#'))));
            known &= !t.meanings().isEmpty()
                    || Family.ofMark(t.letters()).isPresent()
                    || !tagged.loads().isEmpty();
        }
        if (other.loads().isEmpty())
            return shares(tagged.words(), other.words())
                            || !known
                            || other.words().isEmpty()
                    ? Sameness.UNCLEAR
                    : Sameness.DIFFERENT;
        if (related(meant, other.loads())) return Sameness.UNCLEAR;
        boolean ofRooms = other.loads().contains("LIGHTING") || other.loads().contains("RECEPTACLE");
        return known || ofRooms ? Sameness.DIFFERENT : Sameness.UNCLEAR;
    }

    private Sameness untagged(Description a, Description b) {
        if (overlap(a.numbers(), b.numbers()) == Overlap.APART
                || overlap(a.quantities(), b.quantities()) == Overlap.APART
                || overlap(a.floors(), b.floors()) == Overlap.APART
                || overlap(a.directions(), b.directions()) == Overlap.APART
                || roomAndArea(a, b)
                || differInUse(a, b)) return Sameness.DIFFERENT;
        boolean sameRoom = a.numbers().equals(b.numbers()) && a.hasRoomNumber();
        boolean elsewhere = placesApart(a.places(), b.places()) || overlap(a.details(), b.details()) == Overlap.APART;
        if (!sameRoom && elsewhere) return Sameness.DIFFERENT;
        boolean same = uses(a).equals(uses(b))
                && a.numbers().equals(b.numbers())
                && a.quantities().equals(b.quantities())
                && a.directions().equals(b.directions())
                && a.details().equals(b.details())
                && (sameRoom || (a.places().equals(b.places()) && a.floors().equals(b.floors())))
                && sameWords(a, b, sameRoom && !a.loads().isEmpty());
        return same ? Sameness.SAME : Sameness.UNCLEAR;
    }

    /** A room with a number, and a corridor, stair or roof. */
    private boolean roomAndArea(Description a, Description b) {
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

    private boolean placesApart(Set<String> a, Set<String> b) {
        if (a.isEmpty() || b.isEmpty()) return false;
        for (String x : a) for (String y : b) if (vocabulary.isWithin(x, y) || vocabulary.isWithin(y, x)) return false;
        return true;
    }

    /** What is served cannot be one thing. */
    private boolean differInUse(Description a, Description b) {
        Set<String> la = a.loads(), lb = b.loads();
        if (!la.isEmpty() && !lb.isEmpty()) {
            if (la.contains("CONTROL") != lb.contains("CONTROL")) return true;
            return !related(la, lb) && !shares(a.words(), b.words());
        }
        Set<String> wa = allWords(a), wb = allWords(b);
        boolean sayBoth = !(la.isEmpty() && a.words().isEmpty())
                && !(lb.isEmpty() && b.words().isEmpty());
        boolean oneRoom = shares(a.numbers(), b.numbers()) || shares(a.places(), b.places());
        return sayBoth && !oneRoom && !akin(wa, wb);
    }

    private static Set<String> allWords(Description d) {
        Set<String> all = new HashSet<>(d.words());
        all.addAll(d.roomWords());
        for (String l : d.loads()) all.addAll(Set.of(l.split(" ")));
        return all;
    }

    /** Some word of one is a word of the other, its beginning, or one slip away from it. */
    private static boolean akin(Set<String> a, Set<String> b) {
        for (String x : a)
            for (String y : b)
                if (x.equals(y)
                        || begins(x, y)
                        || begins(y, x)
                        || (x.length() >= 5 && y.length() >= 5 && Vocabulary.isOneSlip(x, y))) return true;
        return false;
    }

    private static boolean begins(String brief, String full) {
        return brief.length() >= 3 && full.startsWith(brief);
    }

    /** What is served, without the receptacle of a thing that plugs in and the exit signs on a lighting circuit. */
    private Set<String> uses(Description d) {
        Set<String> uses = new HashSet<>(d.loads());
        if (uses.contains("RECEPTACLE") && uses.stream().anyMatch(l -> vocabulary.kindOf(l) == Vocabulary.Kind.CORD))
            uses.remove("RECEPTACLE");
        if (uses.contains("LIGHTING")) uses.remove("EXIT SIGN");
        uses.removeIf(wide -> d.loads().stream().anyMatch(l -> !l.equals(wide) && vocabulary.isWithin(l, wide)));
        return uses;
    }

    /** The name of a room counts only where its number is not the same. */
    private static boolean sameWords(Description a, Description b, boolean sameRoom) {
        Set<String> wa = new HashSet<>(a.words()), wb = new HashSet<>(b.words());
        if (!sameRoom) {
            wa.addAll(a.roomWords());
            wb.addAll(b.roomWords());
        }
        if (wa.size() != wb.size()) return false;
        return wa.stream().allMatch(w -> wb.contains(w) || akin(Set.of(w), wb))
                && wb.stream().allMatch(w -> wa.contains(w) || akin(Set.of(w), wa));
    }
}
