package asfound.finding;

import asfound.finding.Comparison.Answer;
import asfound.network.Served;
import java.util.List;
import java.util.stream.Stream;

/**
 * A device was traced to something other than its drawing says. A device seen not to feed what is drawn, without
 * anything else found there, is told the same way.
 */
public record FeedsOther(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "feeds-other",
            "A device was traced to something other than its drawing says.",
            "Whoever opens this device to work on what the drawing names leaves it live, and takes the supply of something else.",
            "Do not isolate by this entry; correct the entry to what was traced, and trace what the drawing named to its real device.",
            List.of(
                    "NFPA 70E-2021 120.5: find all sources of supply from up-to-date drawings and tags",
                    "NFPA 70-2020 408.4(A): every circuit described by a clear, evident, specific purpose"),
            new Guide.Example(List.of("MDP/7 PANEL LP-1", "MDP/9 PANEL LP-2"), List.of("MDP/7 feeds LP-2")),
            new Guide.NearMiss(
                    "Only a label was read: a label proves nothing.",
                    new Guide.Example(
                            List.of("MDP/7 PANEL LP-1", "MDP/9 PANEL LP-2"), List.of("MDP/7 feeds LP-2 [label]"))));

    static final Rule RULE = new Rule(GUIDE, FeedsOther::find);

    @Override
    public Guide guide() {
        return GUIDE;
    }

    private static List<FeedsOther> find(Facts facts) {
        return facts.open().stream()
                .filter(c -> c.answer() == Answer.OTHER || c.answer() == Answer.NOT_FED)
                .map(c -> at(facts, c))
                .toList();
    }

    private static FeedsOther at(Facts facts, Comparison c) {
        String device = c.device().label();
        List<Served> bothEnds =
                Stream.concat(c.drawn().stream(), c.seen().stream()).toList();
        String message = device + " is drawn to " + (c.backfed() ? "be part of " : "feed ") + c.drawnInWords()
                + "; it was traced and " + c.seenInWords() + "." + Elsewhere.inWords(facts, c);
        String correction = c.answer() == Answer.NOT_FED
                ? "Trace what " + device + " feeds; until then its entry is wrong."
                : "At " + device + " write what was traced: " + Redraw.textOf(facts, c) + ".";
        return new FeedsOther(new Event(
                Severities.of(facts, bothEnds),
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
