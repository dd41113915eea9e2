package asfound.finding;

import java.util.ArrayList;
import java.util.List;

/**
 * Two drawings name different supplies, ratings, poles or voltages for one thing. Schedule against one-line, a
 * header against the entry that feeds it, or two drawings of one panel.
 *
 * @param ofSupply on what feeds what, rather than on a value
 */
public record DrawingsDisagree(Event event, boolean ofSupply) implements Finding {

    static final Guide GUIDE = new Guide(
            "drawings-disagree",
            "Two drawings name different supplies, ratings, poles or voltages for one thing.",
            "One of them is wrong, and the one at hand may be that one.",
            "Isolate by neither until the supply is traced; then correct the drawing that is wrong.",
            List.of(
                    "NFPA 70E-2024 205.3: single-line diagrams legible and current",
                    "NFPA 70 408.4(B): a feeder-supplied board is marked with where its supply originates",
                    "NFPA 70E-2021 120.5: find all sources of supply from up-to-date drawings and tags"),
            new Guide.Example(
                    List.of("LP-1 panel fed from MDP-7", "MDP/7 -> LP-1 100A", "MDP/7 125A PANEL LP-1"), List.of()),
            new Guide.NearMiss(
                    "They name one rating.",
                    new Guide.Example(
                            List.of("LP-1 panel fed from MDP-7", "MDP/7 -> LP-1 100A", "MDP/7 100A PANEL LP-1"),
                            List.of())));

    static final Rule RULE = new Rule(GUIDE, DrawingsDisagree::find);

    @Override
    public Guide guide() {
        return GUIDE;
    }

    @Override
    public boolean explainsFeeds() {
        return ofSupply;
    }

    private static List<DrawingsDisagree> find(Facts facts) {
        List<DrawingsDisagree> found = new ArrayList<>();
        for (Event e : new SupplyDisputes(facts).events()) found.add(new DrawingsDisagree(e, true));
        for (Event e : new ValueDisputes(facts).events()) found.add(new DrawingsDisagree(e, false));
        for (Event e : new TransformerSides(facts).events()) found.add(new DrawingsDisagree(e, false));
        return found;
    }
}
