package asfound.finding;

import java.util.List;

/**
 * A source of supply was found that no drawing shows. It may be a source that no drawing names, or a drawn one
 * joined where no drawing shows it.
 */
public record UndocumentedSource(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "undocumented-source",
            "A source of supply was found that no drawing shows.",
            "With every drawn device open, this source can still hold the equipment live.",
            "Do not isolate by the drawings of this equipment; add the source and its device to the one-line and the schedule, and put up the directory of sources.",
            List.of(
                    "NFPA 70 230.2(E), 700.7, 702.7, 705.10: a directory or plaque of all sources at one site",
                    "29 CFR 1910.333(b)(2)(ii) and 1910.147(d): isolate from every source",
                    "NIOSH state FACE investigation 04WA080: a supply that the as-built drawings did not show"),
            new Guide.Example(
                    List.of("MDP/7 PANEL LP-1", "LP-1/42 SPARE"), List.of("LP-1/42 fed by INV-1 [kind inverter]")),
            new Guide.NearMiss(
                    "The source is drawn where it was found.",
                    new Guide.Example(
                            List.of("MDP/7 PANEL LP-1", "LP-1/42 INV-1", "INV-1 is inverter", "INV-1 -> LP-1"),
                            List.of("LP-1/42 fed by INV-1 [kind inverter]"))));

    @Override
    public Guide guide() {
        return GUIDE;
    }
}
