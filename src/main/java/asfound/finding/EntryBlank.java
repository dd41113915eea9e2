package asfound.finding;

import java.util.List;

/**
 * An occupied position has no description.
 */
public record EntryBlank(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "entry-blank",
            "An occupied position has no description.",
            "Nobody can tell what this breaker feeds.",
            "Write what was traced; where nothing was traced, trace it.",
            List.of("NFPA 70-2020 408.4(A): every circuit described by a clear, evident, specific purpose"),
            new Guide.Example(List.of("LP-1/1 RECEPT RM 101", "LP-1/3 20A"), List.of()),
            new Guide.NearMiss(
                    "A spare is described.",
                    new Guide.Example(List.of("LP-1/1 RECEPT RM 101", "LP-1/3 20A SPARE"), List.of())));

    @Override
    public Guide guide() {
        return GUIDE;
    }

    @Override
    public boolean explainsFeeds() {
        return false;
    }
}
