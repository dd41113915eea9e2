package asfound.finding;

import java.util.List;

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

    @Override
    public Guide guide() {
        return GUIDE;
    }

    @Override
    public boolean explainsFeeds() {
        return false;
    }
}
