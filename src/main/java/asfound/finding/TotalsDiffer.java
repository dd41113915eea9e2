package asfound.finding;

import asfound.finding.Correction.Field;
import asfound.finding.Sums.Sum;
import asfound.model.Directory;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

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

    static final Rule RULE = new Rule(GUIDE, TotalsDiffer::find);

    @Override
    public Guide guide() {
        return GUIDE;
    }

    @Override
    public boolean explainsFeeds() {
        return false;
    }

    private static List<TotalsDiffer> find(Facts facts) {
        List<TotalsDiffer> found = new ArrayList<>();
        for (Directory directory : facts.drawings().directories()) {
            List<Sum> sums = Sums.of(directory);
            if (!sums.isEmpty()) found.add(of(facts.index().paper().nameOf(directory.panel()), directory, sums));
        }
        return found;
    }

    private static TotalsDiffer of(String panel, Directory directory, List<Sum> sums) {
        String stated = sums.stream()
                .map(s -> s.which() + " " + s.stated().raw().strip())
                .collect(Collectors.joining(", "));
        String should = sums.stream().map(s -> s.which() + " " + s.should()).collect(Collectors.joining(", "));
        String correction = "Let the sums of " + panel + " read: " + should + ".";
        Events event = Events.about(Finding.Part.of(panel))
                .severity(Severity.NOTICE)
                .sides(stated, "rows give " + should)
                .says("The schedule of " + panel + " states " + stated + "; its rows give " + should + ".", correction)
                .drawings(List.of(directory.place()));
        for (Sum s : sums) {
            var place = s.stated().place().orElse(directory.place());
            event.drawings(List.of(place))
                    .corrections(List.of(new Correction(
                            place,
                            panel,
                            s.which(),
                            Field.TOTAL,
                            s.stated().raw().strip(),
                            s.should(),
                            correction)));
        }
        return new TotalsDiffer(event.build());
    }
}
