package asfound.finding;

import asfound.finding.Comparison.Answer;
import java.util.List;
import java.util.Locale;

/**
 * A device drawn with a load was found feeding nothing, or missing.
 */
public record NothingConnected(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "nothing-connected",
            "A device drawn with a load was found feeding nothing, or missing.",
            "What the drawing names is either gone or fed from somewhere else: opening this device proves nothing.",
            "Do not isolate by this entry; make it a spare or a space, and find what now feeds the thing it named.",
            List.of(
                    "NFPA 70-2020 408.4(A): every circuit described by a clear, evident, specific purpose",
                    "NFPA 70E-2021 120.5: find all sources of supply from up-to-date drawings and tags"),
            new Guide.Example(List.of("LP-1/1 RECEPT RM 101", "LP-1/3 RECEPT RM 102"), List.of("LP-1/3 nothing")),
            new Guide.NearMiss(
                    "A space without a device is as drawn.",
                    new Guide.Example(List.of("LP-1/1 RECEPT RM 101", "LP-1/3 SPACE"), List.of("LP-1/3 no device"))));

    static final Rule RULE = new Rule(GUIDE, NothingConnected::find);

    @Override
    public Guide guide() {
        return GUIDE;
    }

    private static List<NothingConnected> find(Facts facts) {
        return facts.open().stream()
                .filter(c -> c.answer() == Answer.NOTHING)
                .map(c -> at(facts, c))
                .toList();
    }

    private static NothingConnected at(Facts facts, Comparison c) {
        String device = c.device().label();
        String message = device + " is drawn to feed " + c.drawnInWords() + "; it was traced: " + c.seenInWords() + "."
                + Elsewhere.inWords(facts, c);
        String correction = "Make " + device + " a " + Redraw.textOf(facts, c).toLowerCase(Locale.ROOT)
                + ", and find what feeds " + c.drawnInWords() + ".";
        return new NothingConnected(new Event(
                Severities.of(facts, c.drawn()),
                c.part(),
                List.of(),
                c.drawnInWords(),
                c.seenInWords(),
                c.places(),
                c.evidence(),
                message,
                correction,
                Redraw.corrections(facts, List.of(c), correction)));
    }
}
