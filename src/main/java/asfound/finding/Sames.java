package asfound.finding;

import asfound.names.Descriptions;
import asfound.names.Sameness;
import asfound.network.Served;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Whether two statements of what is at the end of a device mean one thing. */
final class Sames {

    private final Descriptions descriptions;
    private final Through through;

    Sames(Descriptions descriptions, Through through) {
        this.descriptions = descriptions;
        this.through = through;
    }

    /** By the equipment's one name where both have one, else by their texts. */
    Sameness compare(Served a, Served b) {
        if (a.equipment().isPresent() && b.equipment().isPresent()) {
            String one = a.equipment().get(), other = b.equipment().get();
            return one.equals(other) || through.joins(one, other) ? Sameness.SAME : Sameness.DIFFERENT;
        }
        return a.text().equals(b.text()) ? Sameness.SAME : descriptions.compare(a.text(), b.text());
    }

    boolean same(Served a, Served b) {
        return compare(a, b) == Sameness.SAME;
    }

    /**
     * All that was seen against all that is drawn. Several observations may each name a part of what one entry says, so
     * their texts together count too; but where one of them is all that is drawn, any other is something besides.
     */
    Sameness compare(List<Served> drawn, List<Served> seen) {
        Sameness best = Sameness.DIFFERENT, worst = Sameness.SAME;
        for (Served s : seen) {
            Sameness one = Sameness.DIFFERENT;
            for (Served d : drawn) one = better(one, compare(d, s));
            best = better(best, one);
            if (rank(one) > rank(worst)) worst = one;
        }
        if (worst == Sameness.SAME || (seen.size() == 1 && drawn.size() == 1)) return worst;
        Sameness together = compare(together(drawn), together(seen));
        boolean besides = best == Sameness.SAME
                && (worst == Sameness.DIFFERENT || seen.stream().anyMatch(s -> isNowhereIn(drawn, s)));
        return besides && together != Sameness.SAME ? Sameness.DIFFERENT : better(worst, together);
    }

    /** Equipment that no entry is, nor holds the name of: beside the load that is drawn, it is another thing. */
    private boolean isNowhereIn(List<Served> drawn, Served seen) {
        return seen.equipment()
                .map(Sames::plain)
                .filter(name -> drawn.stream()
                        .noneMatch(d -> same(d, seen) || plain(d.text()).contains(name)))
                .isPresent();
    }

    private static String plain(String text) {
        return text.toUpperCase(Locale.ROOT).replaceAll("[^\\p{L}\\d]", "");
    }

    /** A load with a number of its own: {@code Elevator 1}. */
    boolean isNumberedLoad(Served thing) {
        return descriptions.isNumberedLoad(thing.text());
    }

    /** Several things as one text: {@code Recept rm 204; EF-3}. */
    static Served together(List<Served> things) {
        if (things.size() == 1) return things.get(0);
        return new Served(
                things.stream().map(Served::text).collect(Collectors.joining("; ")), java.util.Optional.empty());
    }

    private static Sameness better(Sameness a, Sameness b) {
        return rank(a) <= rank(b) ? a : b;
    }

    private static int rank(Sameness s) {
        return switch (s) {
            case SAME -> 0;
            case UNCLEAR -> 1;
            case DIFFERENT -> 2;
        };
    }
}
