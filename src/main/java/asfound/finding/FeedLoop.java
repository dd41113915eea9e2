package asfound.finding;

import java.util.List;

/**
 * Devices were traced into a ring with no tie or transfer switch in it.
 */
public record FeedLoop(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "feed-loop",
            "Devices were traced into a ring with no tie or transfer switch in it.",
            "Each equipment of the ring has two ways to be live; opening the drawn one leaves the other.",
            "Isolate by every device of the ring; trace it again by opening each, and have an engineer look at it.",
            List.of("29 CFR 1910.333(b)(2)(ii) and 1910.147(d): isolate from every source"),
            new Guide.Example(
                    List.of("MDP/7 PANEL LP-1", "LP-1/2 PANEL LP-2", "LP-2/4 SPARE"),
                    List.of("LP-1/2 feeds LP-2", "LP-2/4 feeds LP-1")),
            new Guide.NearMiss(
                    "A chain of panels is no ring.",
                    new Guide.Example(
                            List.of("MDP/7 PANEL LP-1", "LP-1/2 PANEL LP-2", "LP-2/4 PANEL LP-3"),
                            List.of("MDP/7 feeds LP-1", "LP-1/2 feeds LP-2", "LP-2/4 feeds LP-3"))));

    @Override
    public Guide guide() {
        return GUIDE;
    }
}
