package asfound.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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

    static final Rule RULE = new Rule(GUIDE, ShiftedDirectory::find);

    @Override
    public Guide guide() {
        return GUIDE;
    }

    private static List<ShiftedDirectory> find(Facts facts) {
        List<ShiftedDirectory> found = new ArrayList<>();
        for (List<Comparison> panel : facts.index().panels().values()) {
            Facts left = facts;
            if (panel.stream().filter(facts::isOpen).count() < Displacement.RUN) continue;
            Optional<Displacement.Way> way = new Displacement(left, panel).largest();
            while (way.isPresent()) {
                ShiftedDirectory shifted = of(facts, way.get());
                found.add(shifted);
                left = left.explainedBy(List.of(shifted));
                way = new Displacement(left, panel).largest();
            }
        }
        return found;
    }

    private static ShiftedDirectory of(Facts facts, Displacement.Way way) {
        String panel = way.devices().get(0).panel();
        String positions =
                Words.list(way.devices().stream().map(c -> c.device().key()).toList());
        String message = "Entries of " + panel + " " + way.how() + ": " + Words.count(way.hits(), "entry")
                + " of positions " + positions + ".";
        String correction = "Rewrite positions " + positions + " of " + panel + " as traced.";
        return new ShiftedDirectory(Events.at(facts, way.devices())
                .severity(Severity.DANGER)
                .says(message, correction)
                .corrections(Redraw.corrections(facts, way.devices(), correction))
                .build());
    }
}
