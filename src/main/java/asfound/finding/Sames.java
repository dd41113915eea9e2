package asfound.finding;

import asfound.names.Descriptions;
import asfound.names.Sameness;
import asfound.network.Served;
import java.util.List;
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
     * their texts together count too.
     */
    Sameness compare(List<Served> drawn, List<Served> seen) {
        Sameness worst = Sameness.SAME;
        for (Served s : seen) {
            Sameness best = Sameness.DIFFERENT;
            for (Served d : drawn) best = better(best, compare(d, s));
            if (rank(best) > rank(worst)) worst = best;
        }
        if (worst == Sameness.SAME || (seen.size() == 1 && drawn.size() == 1)) return worst;
        return better(worst, compare(together(drawn), together(seen)));
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
