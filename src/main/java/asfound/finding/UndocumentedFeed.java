package asfound.finding;

import asfound.finding.Comparison.Answer;
import java.util.List;

/**
 * A device drawn spare, as a space or not at all was traced to something.
 */
public record UndocumentedFeed(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "undocumented-feed",
            "A device drawn spare, as a space or not at all was traced to something.",
            "What it feeds stays live when its drawn supply is opened, and a device taken for a spare is not to be reused.",
            "Write what was traced into the directory; if the thing fed is drawn elsewhere, trace that device too.",
            List.of(
                    "NFPA 70-2020 408.4(A): every circuit described by a clear, evident, specific purpose",
                    "NFPA 70E-2021 120.5: find all sources of supply from up-to-date drawings and tags"),
            new Guide.Example(
                    List.of("LP-1/1 RECEPT RM 101", "LP-1/3 SPARE"), List.of("LP-1/3 feeds Exhaust fan EF-7")),
            new Guide.NearMiss(
                    "A spare that feeds nothing is as drawn.",
                    new Guide.Example(List.of("LP-1/1 RECEPT RM 101", "LP-1/3 SPARE"), List.of("LP-1/3 nothing"))));

    static final Rule RULE = new Rule(GUIDE, UndocumentedFeed::find);

    @Override
    public Guide guide() {
        return GUIDE;
    }

    private static List<UndocumentedFeed> find(Facts facts) {
        return facts.open().stream()
                .filter(c -> c.answer() == Answer.UNDRAWN)
                .map(c -> at(facts, c))
                .toList();
    }

    private static UndocumentedFeed at(Facts facts, Comparison c) {
        String device = c.device().label();
        String message = device + " is " + (c.at().showings().isEmpty() ? "not drawn" : "drawn as " + c.drawnInWords())
                + "; it was traced and " + c.seenInWords() + "." + Elsewhere.inWords(facts, c);
        String correction = "At " + device + " write what was traced: " + Redraw.textOf(facts, c) + ".";
        return new UndocumentedFeed(new Event(
                Severities.of(facts, c.seen()),
                c.part(),
                FarEnd.partsOf(facts, c),
                c.drawnInWords(),
                c.seenInWords(),
                c.places(),
                FarEnd.evidenceOf(facts, c),
                message,
                correction,
                Redraw.corrections(facts, List.of(c), correction)));
    }
}
