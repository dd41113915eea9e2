package asfound.finding;

import java.util.List;

/**
 * An observation is older than a modification of the same equipment. The observations of one equipment are one
 * event.
 */
public record StaleObservation(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "stale-observation",
            "An observation is older than a modification of the same equipment.",
            "What was traced then says nothing of how it is connected now, so the device counts as not traced.",
            "Trace these devices again.",
            List.of(
                    "NFPA 70E-2024 205.3: single-line diagrams legible and current",
                    "29 CFR 1910.147(c)(6) and (c)(7): periodic inspection; a change can invalidate a procedure"),
            new Guide.Example(
                    List.of("LP-1/1 RECEPT RM 101"),
                    List.of("LP-1/1 feeds Recept rm 101 [2020-01-10]", "LP-1 modified 2021-05-01")),
            new Guide.NearMiss(
                    "The observation is younger than the modification.",
                    new Guide.Example(
                            List.of("LP-1/1 RECEPT RM 101"),
                            List.of("LP-1/1 feeds Recept rm 101 [2022-01-10]", "LP-1 modified 2021-05-01"))));

    @Override
    public Guide guide() {
        return GUIDE;
    }

    @Override
    public boolean explainsFeeds() {
        return false;
    }
}
