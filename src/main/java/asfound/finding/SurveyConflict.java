package asfound.finding;

import asfound.finding.Comparison.Answer;
import asfound.model.Observation;
import asfound.network.DeviceRecord.Sighting;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Observations of one device cannot all be true.
 */
public record SurveyConflict(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "survey-conflict",
            "Observations of one device cannot all be true.",
            "Nothing may be concluded from them, so the device counts as not traced.",
            "Trace the device again by opening it and testing at the far end.",
            List.of(
                    "NFPA 70E-2021 120.5: find all sources of supply from up-to-date drawings and tags",
                    "29 CFR 1910.333(b)(2)(iv): a test shows that exposed parts are dead"),
            new Guide.Example(List.of("LP-1/1 RECEPT RM 101"), List.of("LP-1/1 feeds Recept rm 101", "LP-1/1 nothing")),
            new Guide.NearMiss(
                    "The same observation made twice is no conflict.",
                    new Guide.Example(
                            List.of("LP-1/1 RECEPT RM 101"),
                            List.of("LP-1/1 feeds Recept rm 101", "LP-1/1 feeds Recept rm 101"))));

    static final Rule RULE = new Rule(GUIDE, SurveyConflict::find);

    @Override
    public Guide guide() {
        return GUIDE;
    }

    @Override
    public boolean explainsFeeds() {
        return false;
    }

    private static List<SurveyConflict> find(Facts facts) {
        List<SurveyConflict> found = new ArrayList<>();
        for (Comparison c : facts.comparisons()) {
            if (c.answer() == Answer.CONFLICT) found.add(of(facts, c, "what it feeds", tracing(c)));
            else if (c.at().sightings().size() > 1)
                Seen.ofAll(c)
                        .filter(seen -> seen.values().size() > 1)
                        .findFirst()
                        .ifPresent(seen ->
                                found.add(of(facts, c, "its " + seen.what().word(), seen.observations())));
        }
        return found;
    }

    private static List<Observation> tracing(Comparison c) {
        return c.at().sightings().stream()
                .filter(Sighting::traces)
                .map(Sighting::observation)
                .toList();
    }

    private static SurveyConflict of(Facts facts, Comparison c, String about, List<Observation> observations) {
        String device = c.device().label();
        String each = observations.stream()
                .map(o -> o.place().inWords() + ": " + Seen.inWords(o))
                .collect(Collectors.joining("; "));
        return new SurveyConflict(Events.about(c.part())
                .severity(Severity.WARNING)
                .sides(c.drawnInWords(), each)
                .says(
                        "Observations of " + device + " cannot all be true about " + about + ": " + each
                                + ". Nothing is concluded from them.",
                        "Leave the drawing until " + device + " has been traced again.")
                .drawings(c.places())
                .evidence(observations)
                .build());
    }
}
