package asfound.finding;

import java.util.List;

/**
 * A device drawn with a load was found feeding nothing, or missing.
 */
public record NothingConnected(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "nothing-connected",
            "A device drawn with a load was found feeding nothing, or missing.",
            "What the drawing names is either gone or fed from somewhere else: opening this device proves nothing.",
            "Do not isolate by this entry; make it a spare or a space, and find what now feeds the thing it named.",
            List.of(
                    "NFPA 70-2020 408.4(A): every circuit described by a clear, evident, specific purpose",
                    "NFPA 70E-2021 120.5: find all sources of supply from up-to-date drawings and tags"),
            new Guide.Example(List.of("LP-1/1 RECEPT RM 101", "LP-1/3 RECEPT RM 102"), List.of("LP-1/3 nothing")),
            new Guide.NearMiss(
                    "A space without a device is as drawn.",
                    new Guide.Example(List.of("LP-1/1 RECEPT RM 101", "LP-1/3 SPACE"), List.of("LP-1/3 no device"))));

    @Override
    public Guide guide() {
        return GUIDE;
    }
}
