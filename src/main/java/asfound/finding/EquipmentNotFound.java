package asfound.finding;

import java.util.List;

/**
 * Drawn equipment was not met by any observation, though its drawn supply was traced. The drawn devices were found
 * feeding nothing, or missing.
 */
public record EquipmentNotFound(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "equipment-not-found",
            "Drawn equipment was not met by any observation, though its drawn supply was traced.",
            "Either it is gone, or it is fed from where no drawing shows.",
            "Look for it on site; if it is gone take it off the drawings, else trace its supply before any isolation.",
            List.of(
                    "NFPA 70E-2024 205.3: single-line diagrams legible and current",
                    "NFPA 70E-2021 120.5: find all sources of supply from up-to-date drawings and tags"),
            new Guide.Example(
                    List.of("MDP is switchboard", "LP-1 is panel", "MDP/7 -> LP-1"), List.of("MDP/7 nothing")),
            new Guide.NearMiss(
                    "Its drawn supply was not traced.",
                    new Guide.Example(
                            List.of("MDP is switchboard", "LP-1 is panel", "MDP/7 -> LP-1"),
                            List.of("MDP/9 nothing"))));

    @Override
    public Guide guide() {
        return GUIDE;
    }
}
