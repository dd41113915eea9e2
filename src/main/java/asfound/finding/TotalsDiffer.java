package asfound.finding;

import java.util.List;

/**
 * The schedule's own sums do not follow from its rows. Tolerance: half of the last printed digit of every figure
 * that goes into the sum, and of the sum itself; for amperes 2 % besides.
 */
public record TotalsDiffer(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "totals-differ",
            "The schedule's own sums do not follow from its rows.",
            "A row was changed without the totals, or the other way: the sheet is not the work of one revision.",
            "Add up again, and ask what changed when.",
            List.of(
                    "Amperes of a three-phase load are VA / (sqrt(3) x V) (handbook arithmetic)",
                    "NFPA 70E-2024 205.3: single-line diagrams legible and current"),
            new Guide.Example(
                    List.of(
                            "LP-1/1 20A RECEPT RM 101 1200 VA",
                            "LP-1/3 20A RECEPT RM 102 800 VA",
                            "LP-1 total 2600 VA"),
                    List.of()),
            new Guide.NearMiss(
                    "The total is the sum of its rows.",
                    new Guide.Example(
                            List.of(
                                    "LP-1/1 20A RECEPT RM 101 1200 VA",
                                    "LP-1/3 20A RECEPT RM 102 800 VA",
                                    "LP-1 total 2000 VA"),
                            List.of())));

    @Override
    public Guide guide() {
        return GUIDE;
    }

    @Override
    public boolean explainsFeeds() {
        return false;
    }
}
