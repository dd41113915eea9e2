package asfound.finding;

import java.util.List;

/**
 * Equipment was found that no drawing shows. What feeds it, and its own circuits as far as they were traced,
 * belong to the same event.
 */
public record EquipmentNotDrawn(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "equipment-not-drawn",
            "Equipment was found that no drawing shows.",
            "Nobody can plan its isolation, and what it feeds is on no drawing either.",
            "Add the equipment, its supply and its directory to the drawings before anyone isolates by them.",
            List.of(
                    "NFPA 70E-2024 205.3: single-line diagrams legible and current",
                    "NFPA 70 408.4(B): a feeder-supplied board is marked with where its supply originates",
                    "NFPA 70E-2021 120.5: find all sources of supply from up-to-date drawings and tags"),
            new Guide.Example(
                    List.of("MDP/7 PANEL LP-1", "MDP/9 SPARE"),
                    List.of("MDP/9 feeds Panel LP-5 [kind panel]", "LP-5/1 feeds Recept rm 501")),
            new Guide.NearMiss(
                    "Only a label names it: equipment that was only read of was not found.",
                    new Guide.Example(
                            List.of("MDP/7 PANEL LP-1", "MDP/9 SPARE"),
                            List.of("MDP/9 feeds Panel LP-5 [kind panel label]"))));

    @Override
    public Guide guide() {
        return GUIDE;
    }
}
