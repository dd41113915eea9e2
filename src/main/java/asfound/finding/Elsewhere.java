package asfound.finding;

import asfound.network.Served;
import java.util.List;
import java.util.stream.Collectors;

/** Where else the things of a difference are drawn or were found: what the reader asks next. */
final class Elsewhere {

    private Elsewhere() {}

    /** Sentences with a space before each; empty where nothing is known. */
    static String inWords(Facts facts, Comparison c) {
        StringBuilder words = new StringBuilder();
        for (Served s : c.seen()) {
            String drawnAt = labels(c, facts.index().drawnTo(s));
            if (!drawnAt.isEmpty() && !c.backfed())
                words.append(" ")
                        .append(s.inWords())
                        .append(" is drawn at ")
                        .append(drawnAt)
                        .append(".");
        }
        for (Served d : c.drawn()) {
            String foundAt = labels(c, facts.index().tracedTo(d));
            if (!foundAt.isEmpty())
                words.append(" ")
                        .append(d.inWords())
                        .append(" was found at ")
                        .append(foundAt)
                        .append(".");
        }
        return words.toString();
    }

    private static String labels(Comparison not, List<Comparison> at) {
        List<String> labels = at.stream()
                .filter(c -> c != not)
                .map(c -> c.device().label())
                .distinct()
                .collect(Collectors.toList());
        if (labels.size() > 4) return Words.list(labels.subList(0, 4)) + " and " + (labels.size() - 4) + " more";
        return Words.list(labels);
    }
}
