package asfound.finding;

import java.util.List;

/**
 * A run of three or more entries stands one or more rows away from where it was traced. Sides exchanged, and
 * numbering taken down the sides instead of across, are the same event: entries that are right in themselves and
 * stand at the wrong positions.
 */
public record ShiftedDirectory(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "shifted-directory",
            "A run of three or more entries stands one or more rows away from where it was traced.",
            "Every entry of the run names the wrong breaker, so whoever follows the card opens a neighbour of the right one.",
            "Do not isolate by this directory; rewrite the rows as listed.",
            List.of(
                    "NFPA 70-2020 408.4(A): every circuit described by a clear, evident, specific purpose",
                    "NFPA 70E-2021 120.5: find all sources of supply from up-to-date drawings and tags"),
            new Guide.Example(
                    List.of(
                            "LP-1/1 RECEPT RM 101",
                            "LP-1/3 RECEPT RM 102",
                            "LP-1/5 RECEPT RM 103",
                            "LP-1/7 RECEPT RM 104",
                            "LP-1/9 SPARE"),
                    List.of(
                            "LP-1/1 nothing",
                            "LP-1/3 feeds Recept rm 101",
                            "LP-1/5 feeds Recept rm 102",
                            "LP-1/7 feeds Recept rm 103",
                            "LP-1/9 feeds Recept rm 104")),
            new Guide.NearMiss(
                    "The entries stand where they were traced.",
                    new Guide.Example(
                            List.of(
                                    "LP-1/1 RECEPT RM 101",
                                    "LP-1/3 RECEPT RM 102",
                                    "LP-1/5 RECEPT RM 103",
                                    "LP-1/7 RECEPT RM 104",
                                    "LP-1/9 SPARE"),
                            List.of(
                                    "LP-1/1 feeds Recept rm 101",
                                    "LP-1/3 feeds Recept rm 102",
                                    "LP-1/5 feeds Recept rm 103"))));

    @Override
    public Guide guide() {
        return GUIDE;
    }
}
