package asfound.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A run of three or more entries stands one or more rows away from where it was traced. Sides exchanged, numbering
 * taken down the sides instead of across, and a whole directory that hangs on the wrong panel are the same event: entries
 * that are right in themselves and stand at the wrong places.
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
        Facts left = hung(facts, false, found);
        List<ShiftedDirectory> shifted = shifted(left);
        found.addAll(shifted);
        hung(left.explainedBy(shifted), true, found);
        return found;
    }

    private static Facts hung(Facts facts, boolean copies, List<ShiftedDirectory> found) {
        Facts left = facts;
        for (HungCards cards : HungCards.of(facts, copies)) {
            found.add(of(facts, cards));
            left = left.explainedAt(cards.devices());
        }
        return left;
    }

    private static List<ShiftedDirectory> shifted(Facts facts) {
        return facts.index().panels().values().stream()
                .filter(panel -> panel.stream().filter(facts::isOpen).count() >= Shift.RUN)
                .map(panel -> FewestShifts.of(facts, panel))
                .flatMap(fewest -> fewest.shifts().stream().map(shift -> of(facts, shift, fewest.asGood())))
                .toList();
    }

    private static ShiftedDirectory of(Facts facts, HungCards cards) {
        String correction = "Write the " + (cards.cards().size() == 1 ? "directory" : "directories") + " of "
                + Words.list(cards.cards().stream().map(HungCard::panel).toList()) + " anew, as traced.";
        return of(facts, cards.devices(), cards.inWords(), correction);
    }

    private static ShiftedDirectory of(Facts facts, Shift way, Optional<String> asGood) {
        String panel = way.devices().get(0).panel();
        String positions =
                Words.list(way.devices().stream().map(c -> c.device().key()).toList());
        String message = "Entries of " + panel + " " + way.how() + ": " + Words.count(way.hits(), "entry")
                + " of positions " + positions + "."
                + asGood.map(other -> " It may as well be that they " + other + ": trace more of them to tell.")
                        .orElse("");
        return of(facts, way.devices(), message, "Rewrite positions " + positions + " of " + panel + " as traced.");
    }

    private static ShiftedDirectory of(Facts facts, List<Comparison> devices, String message, String correction) {
        return new ShiftedDirectory(Events.at(facts, devices)
                .severity(Severity.DANGER)
                .says(message, correction)
                .corrections(Redraw.corrections(facts, devices, correction))
                .build());
    }
}
