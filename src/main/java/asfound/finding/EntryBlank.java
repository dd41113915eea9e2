package asfound.finding;

import asfound.finding.Comparison.Answer;
import asfound.model.Directory;
import asfound.network.DeviceRecord.Showing;
import java.util.ArrayList;
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

    static final Rule RULE = new Rule(GUIDE, EntryBlank::find);

    @Override
    public Guide guide() {
        return GUIDE;
    }

    @Override
    public boolean explainsFeeds() {
        return false;
    }

    private static List<EntryBlank> find(Facts facts) {
        List<EntryBlank> found = new ArrayList<>();
        for (Comparison c : facts.comparisons())
            for (Showing showing : c.at().showings()) if (isBlank(showing)) found.add(of(facts, c, showing));
        return found;
    }

    private static boolean isBlank(Showing showing) {
        return showing.use() == Directory.Use.LOAD
                && showing.circuit().filter(e -> e.description().isBlank()).isPresent();
    }

    private static EntryBlank of(Facts facts, Comparison c, Showing showing) {
        String device = c.device().label();
        boolean traced = !c.seen().isEmpty() || c.answer() == Answer.NOTHING;
        String correction = traced
                ? "At " + device + " write what was traced: " + Redraw.textOf(facts, c) + "."
                : "Trace " + device + " and write what it feeds.";
        return new EntryBlank(Events.about(c.part())
                .severity(Severity.NOTICE)
                .sides("no description", traced ? c.seenInWords() : "not traced")
                .says(
                        device + " is in use and its description is blank."
                                + (traced ? " It was traced and " + c.seenInWords() + "." : ""),
                        correction)
                .drawings(List.of(showing.place()))
                .evidence(c.evidence())
                .corrections(traced ? Redraw.entry(facts, c, showing, correction) : List.of())
                .build());
    }
}
