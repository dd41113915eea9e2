package asfound.finding;

import asfound.model.Observation;
import asfound.network.DeviceRecord.Sighting;
import java.util.ArrayList;
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

    static final Rule RULE = new Rule(GUIDE, StaleObservation::find);

    @Override
    public Guide guide() {
        return GUIDE;
    }

    @Override
    public boolean explainsFeeds() {
        return false;
    }

    private static List<StaleObservation> find(Facts facts) {
        List<StaleObservation> found = new ArrayList<>();
        facts.index().panels().forEach((panel, devices) -> {
            List<Comparison> stale = devices.stream()
                    .filter(c -> c.at().sightings().stream().anyMatch(Sighting::stale))
                    .toList();
            if (!stale.isEmpty()) found.add(of(panel, stale));
        });
        return found;
    }

    private static StaleObservation of(String panel, List<Comparison> stale) {
        List<Observation> old = stale.stream()
                .flatMap(c -> c.at().sightings().stream())
                .filter(Sighting::stale)
                .map(Sighting::observation)
                .toList();
        long toTrace = stale.stream()
                .filter(c -> c.at().sightings().stream().noneMatch(Sighting::traces))
                .count();
        String keys = Words.list(stale.stream().map(c -> c.device().key()).toList());
        String again = toTrace == 0
                ? " All of them have been traced since."
                : " " + (toTrace == 1 ? "One has" : toTrace + " have") + " not been traced since.";
        Events event = Events.about(stale.get(0).part())
                .severity(toTrace == 0 ? Severity.NOTICE : Severity.WARNING)
                .sides(panel + " modified since", Words.count(old.size(), "older observation") + " of " + keys)
                .says(
                        Words.count(old.size(), "observation") + " of " + panel + " (" + keys
                                + (old.size() == 1 ? ") is" : ") are")
                                + " older than its latest modification and " + (old.size() == 1 ? "says" : "say")
                                + " nothing of it now." + again,
                        "Trace " + keys + " of " + panel + " again before the drawing is changed or believed.");
        for (Comparison c : stale) event.part(c.part()).drawings(c.places());
        return new StaleObservation(event.evidence(old).build());
    }
}
