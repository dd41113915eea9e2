package asfound.finding;

import asfound.finding.Comparison.Answer;
import asfound.network.Connection;
import asfound.network.Equipment;
import asfound.network.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A device drawn spare, as a space or not at all was traced to something. So is a way from one board to another on which
 * no device was seen, where no drawing shows that the one feeds the other.
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
        return Stream.concat(
                        facts.open().stream()
                                .filter(c -> c.answer() == Answer.UNDRAWN)
                                .map(c -> at(facts, c)),
                        facts.network().connections().stream()
                                .filter(way -> isUndrawn(facts, way))
                                .map(way -> without(facts, way)))
                .toList();
    }

    /** What no drawing shows at either end, and sources, are told as such. */
    private static boolean isUndrawn(Facts facts, Connection way) {
        return way.standing() == Standing.FOUND
                && way.devices().isEmpty()
                && Stream.of(way.from(), way.to())
                        .allMatch(e -> !facts.kindOf(e).isPureSource()
                                && facts.index()
                                        .equipment(e)
                                        .filter(Equipment::drawn)
                                        .isPresent());
    }

    private static UndocumentedFeed without(Facts facts, Connection way) {
        String from = way.from(), to = way.to();
        String correction =
                "Find the device in " + from + " that feeds " + to + ", and draw " + to + " as fed from there.";
        List<Correction> corrections = new ArrayList<>();
        if (facts.index().paper().hasOneLine())
            corrections.add(new Correction(
                    facts.index().paper().forNewRow(),
                    from,
                    "",
                    Correction.Field.FEEDER_ROW,
                    "",
                    from + ", , " + to,
                    correction));
        return new UndocumentedFeed(Events.about(Finding.Part.of(from))
                .part(Finding.Part.of(to))
                .severity(Severities.fails(facts, to) ? Severity.DANGER : Severity.WARNING)
                .sides("not drawn", from + " feeds " + to)
                .says(
                        from + " was traced to feed " + to + ", which no drawing shows; at which device, was not seen.",
                        correction)
                .evidence(way.evidence())
                .corrections(corrections)
                .build());
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
