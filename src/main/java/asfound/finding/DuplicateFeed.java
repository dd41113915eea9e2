package asfound.finding;

import java.util.List;

/**
 * One thing was traced to two or more devices, with no tie or transfer switch to explain it. Parallel poles of one
 * device are one device.
 */
public record DuplicateFeed(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "duplicate-feed",
            "One thing was traced to two or more devices, with no tie or transfer switch to explain it.",
            "Opening the drawn device alone leaves the equipment live through the other.",
            "Isolate by all of the devices named, until one is taken off; draw both, and have an engineer look at how two supplies came to be joined.",
            List.of(
                    "29 CFR 1910.333(b)(2)(ii) and 1910.147(d): isolate from every source",
                    "NFPA 70E-2021 120.5: find all sources of supply from up-to-date drawings and tags"),
            new Guide.Example(
                    List.of("MDP/7 PANEL LP-1", "MDP/9 SPARE"), List.of("MDP/7 feeds LP-1", "MDP/9 feeds LP-1")),
            new Guide.NearMiss(
                    "Two poles of one device are one feed.",
                    new Guide.Example(
                            List.of("MDP/7-9-11 PANEL LP-1"), List.of("MDP/7 feeds LP-1", "MDP/9 feeds LP-1"))));

    @Override
    public Guide guide() {
        return GUIDE;
    }
}
