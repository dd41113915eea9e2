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
    private final LoadsServed served;
    private final Whereabouts where;
    private final Map<String, Description> parsed = new ConcurrentHashMap<>();

    private Descriptions(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
        served = new LoadsServed(vocabulary);
        where = new Whereabouts(vocabulary);
    }

    public static Descriptions of(Settings settings) {
        return new Descriptions(Vocabulary.with(settings.abbreviations()));
    }

    public Sameness compare(String a, String b) {
        Description x = parse(a), y = parse(b);
        Optional<Sameness> plain = plainly(x, y);
        if (plain.isPresent()) return plain.get();
        return switch (Overlap.ofTags(x, y)) {
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

    /** The same tags: different only where one is a part with a circuit of its own, such as the control of a pump. */
    private Sameness tagged(Description a, Description b) {
        if (!served.parts(a).equals(served.parts(b))) return Sameness.DIFFERENT;
        if (Overlap.isApart(a.numbers(), b.numbers())
                || Overlap.isApart(a.floors(), b.floors())
                || Overlap.isApart(a.directions(), b.directions())
                || isFuture(a) != isFuture(b)) return Sameness.UNCLEAR;
        if (a.loads().isEmpty() || b.loads().isEmpty()) return Sameness.SAME;
        // BOILER 1 and BOILER 1 PUMP: a number of the thing itself, and something beside it
        boolean byNumber = a.tags().stream().anyMatch(t -> t.text().isEmpty())
                || b.tags().stream().anyMatch(t -> t.text().isEmpty());
        if (byNumber && served.besideTags(a).isEmpty() != served.besideTags(b).isEmpty()) return Sameness.UNCLEAR;
        if (served.areRelated(a.loads(), b.loads())) return Sameness.SAME;
        // AC-9 may be an air compressor's tag and an air conditioner's: then these are two
        boolean eachFits =
                served.besideTags(a).isEmpty() && served.besideTags(b).isEmpty();
        return eachFits ? Sameness.DIFFERENT : Sameness.UNCLEAR;
    }

    private static boolean isFuture(Description d) {
        return d.details().contains("FUTURE");
    }

    /** Only one has a tag: never the same, and different where it cannot be what the other says. */
    private Sameness oneTagged(Description tagged, Description other) {
        if (Overlap.isApart(tagged.numbers(), other.numbers())
                || where.areApart(tagged, other)
                || where.areRoomAndArea(tagged, other)) return Sameness.DIFFERENT;
        Set<String> meant = new HashSet<>(tagged.loads());
        boolean known = true;
        for (Description.Tag t : tagged.tags()) {
            t.things().forEach(meant::add);
            known &= !t.meanings().isEmpty()
                    || Family.ofMark(t.letters()).isPresent()
                    || !tagged.loads().isEmpty();
        }
        if (other.loads().isEmpty())
            return Overlap.shares(tagged.words(), other.words())
                            || !known
                            || other.words().isEmpty()
                    ? Sameness.UNCLEAR
                    : Sameness.DIFFERENT;
        if (served.areRelated(meant, other.loads())) return Sameness.UNCLEAR;
        boolean ofRooms = other.loads().contains("LIGHTING") || other.loads().contains("RECEPTACLE");
        return known || ofRooms ? Sameness.DIFFERENT : Sameness.UNCLEAR;
    }

    private Sameness untagged(Description a, Description b) {
        if (Overlap.isApart(a.numbers(), b.numbers())
                || Overlap.isApart(a.quantities(), b.quantities())
                || Overlap.isApart(a.floors(), b.floors())
                || Overlap.isApart(a.directions(), b.directions())
                || where.areRoomAndArea(a, b)
                || served.differ(a, b)) return Sameness.DIFFERENT;
        boolean sameRoom = a.numbers().equals(b.numbers()) && a.hasRoomNumber();
        boolean elsewhere = where.areApart(a, b) || Overlap.isApart(a.details(), b.details());
        if (!sameRoom && elsewhere) return Sameness.DIFFERENT;
        boolean same = served.uses(a).equals(served.uses(b))
                && a.numbers().equals(b.numbers())
                && a.quantities().equals(b.quantities())
                && a.directions().equals(b.directions())
                && a.details().equals(b.details())
                && (sameRoom || (a.places().equals(b.places()) && a.floors().equals(b.floors())))
                && Wording.isSame(a, b, sameRoom && !a.loads().isEmpty());
        return same ? Sameness.SAME : Sameness.UNCLEAR;
    }
}
