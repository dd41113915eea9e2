package asfound.finding;

import java.util.List;

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

    @Override
    public Guide guide() {
        return GUIDE;
    }

    @Override
    public boolean explainsFeeds() {
        return false;
    }
}
