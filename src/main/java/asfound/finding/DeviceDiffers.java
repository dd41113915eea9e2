package asfound.finding;

import asfound.finding.Comparison.Answer;
import asfound.finding.Differences.Difference;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The rating, poles, phase or voltage seen on a device differs from the drawing. A conductor named on one-line or
 * survey that its protection does not protect is told here too.
 */
public record DeviceDiffers(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "device-differs",
            "The rating, poles, phase or voltage seen on a device differs from the drawing.",
            "Protection and fault studies rest on what is drawn; a device of other poles or phase is not the one that the drawing means.",
            "Look at the device again; then correct the drawing, or have an engineer look at the protection.",
            List.of(
                    "NFPA 70-2020 240.4(B), 240.4(D), 240.6(A) and Table 310.16 for conductors against their protection",
                    "NFPA 70E-2024 205.3: single-line diagrams legible and current"),
            new Guide.Example(List.of("LP-1/1 20A RECEPT RM 101"), List.of("LP-1/1 feeds Recept rm 101 [30A]")),
            new Guide.NearMiss(
                    "The rating seen is the one drawn.",
                    new Guide.Example(
                            List.of("LP-1/1 20A RECEPT RM 101"), List.of("LP-1/1 feeds Recept rm 101 [20A]"))));

    static final Rule RULE = new Rule(GUIDE, DeviceDiffers::find);

    @Override
    public Guide guide() {
        return GUIDE;
    }

    @Override
    public boolean explainsFeeds() {
        return false;
    }

    private static List<DeviceDiffers> find(Facts facts) {
        PhaseOrder order = new PhaseOrder(facts.comparisons(), facts.settings());
        List<DeviceDiffers> found = new ArrayList<>();
        for (Comparison c : facts.comparisons()) {
            if (c.answer() == Answer.CONFLICT || !Seen.anything(c)) continue;
            List<Difference> differences = Differences.of(facts, order, c);
            if (!differences.isEmpty()) found.add(of(facts, c, differences));
            else Protection.of(c).ifPresent(p -> found.add(conductor(c, p)));
        }
        return found;
    }

    private static DeviceDiffers of(Facts facts, Comparison c, List<Difference> differences) {
        String device = c.device().label();
        String drawn = differences.stream().map(Difference::drawnInWords).collect(Collectors.joining("; "));
        String seen = differences.stream().map(Difference::seen).collect(Collectors.joining("; "));
        String correction = "At " + device + " write " + seen + ", once someone has looked again.";
        Events event = Events.about(c.part())
                .severity(Severity.CAUTION)
                .sides(drawn, seen)
                .says(device + " is drawn as " + drawn + " and was seen as " + seen + ".", correction)
                .drawings(c.places());
        for (Difference d : differences)
            event.evidence(d.observations()).corrections(Redraw.property(facts, c, d, correction));
        return new DeviceDiffers(event.build());
    }

    private static DeviceDiffers conductor(Comparison c, Protection p) {
        return new DeviceDiffers(Events.about(c.part())
                .severity(Severity.CAUTION)
                .sides(p.drawn(), p.seen())
                .says(
                        c.device().label() + " protects " + p.wire() + " at " + p.ratingA()
                                + " A; the most usual for it is "
                                + p.mostA()
                                + " A (NFPA 70-2020 Table 310.16 at 75 C, 240.4(B), 240.4(D)). Taps, motors "
                                + "and conditions of use change this: it is a question to an engineer, not an answer.",
                        "Look at the conductor and the device; correct whichever the drawing has wrong.")
                .drawings(c.places())
                .evidence(p.observations())
                .build());
    }
}
