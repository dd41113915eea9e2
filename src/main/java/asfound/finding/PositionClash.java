package asfound.finding;

import asfound.finding.Finding.Part;
import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;

/**
 * One position is claimed twice, or a device takes positions that it cannot have. A multi-pole device over an
 * occupied position, a position past the panel's size, or poles that are not on consecutive positions of one side.
 */
public record PositionClash(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "position-clash",
            "One position is claimed twice, or a device takes positions that it cannot have.",
            "One entry names a breaker that is not there, so the wrong one may be opened.",
            "Look at the panel and write each device at the positions that it takes.",
            List.of(
                    "NFPA 70-2020 408.4(A): every circuit described by a clear, evident, specific purpose",
                    "Odd positions left, even right; a multi-pole device takes consecutive positions of one side (common practice)"),
            new Guide.Example(List.of("LP-1/7-9-11 AHU-1", "LP-1/9 RECEPT RM 101"), List.of()),
            new Guide.NearMiss(
                    "Position 8 is on the other side.",
                    new Guide.Example(List.of("LP-1/7-9-11 AHU-1", "LP-1/8 RECEPT RM 101"), List.of())));

    static final Rule RULE = new Rule(GUIDE, PositionClash::find);

    @Override
    public Guide guide() {
        return GUIDE;
    }

    @Override
    public boolean explainsFeeds() {
        return false;
    }

    private static List<PositionClash> find(Facts facts) {
        List<PositionClash> found = new ArrayList<>();
        for (Directory directory : facts.drawings().directories()) {
            String panel = facts.index().paper().nameOf(directory.panel());
            boolean down = Positions.runDown(directory, facts.settings());
            OptionalInt size = Positions.size(directory);
            Map<Integer, Circuit> takenBy = new HashMap<>();
            for (Circuit c : directory.circuits()) {
                List<Circuit> clashing = c.positions().stream()
                        .map(takenBy::get)
                        .filter(Objects::nonNull)
                        .distinct()
                        .toList();
                if (!clashing.isEmpty()) found.add(claimedTwice(panel, c, clashing));
                else if (!Positions.areConsecutive(c, down)) found.add(notConsecutive(panel, c));
                else if (reachesPast(c, size)) found.add(pastTheEnd(panel, c, size.getAsInt()));
                for (int p : c.positions()) takenBy.putIfAbsent(p, c);
            }
        }
        return found;
    }

    private static PositionClash claimedTwice(String panel, Circuit c, List<Circuit> clashing) {
        String others = Words.list(
                clashing.stream().map(o -> Positions.inWords(panel, o)).toList());
        Events event = Events.about(part(panel, clashing.get(0)))
                .part(part(panel, c))
                .severity(Severity.WARNING)
                .sides(Positions.inWords(panel, c) + " and " + others, "")
                .says(
                        Positions.inWords(panel, c) + " takes a position that " + others + " takes as well.",
                        "Look at the panel and write each device at the positions that it takes.")
                .drawings(List.of(c.place()));
        for (Circuit o : clashing) event.part(part(panel, o)).drawings(List.of(o.place()));
        return new PositionClash(event.build());
    }

    private static PositionClash notConsecutive(String panel, Circuit c) {
        return one(
                panel,
                c,
                Positions.inWords(panel, c) + " takes positions " + c.ref().inWords()
                        + ", which are not consecutive positions of one side.");
    }

    private static boolean reachesPast(Circuit c, OptionalInt size) {
        return size.isPresent() && c.positions().stream().anyMatch(p -> p > size.getAsInt());
    }

    private static PositionClash pastTheEnd(String panel, Circuit c, int size) {
        return one(
                panel,
                c,
                Positions.inWords(panel, c) + (c.position() > size ? " stands" : " reaches") + " past the panel's "
                        + size + " positions.");
    }

    private static PositionClash one(String panel, Circuit c, String message) {
        return new PositionClash(Events.about(part(panel, c))
                .severity(Severity.WARNING)
                .sides(Positions.inWords(panel, c), "")
                .says(message, "Look at the panel and write the device at the positions that it takes.")
                .drawings(List.of(c.place()))
                .build());
    }

    private static Part part(String panel, Circuit c) {
        return Part.of(panel, c.ref().key());
    }
}
