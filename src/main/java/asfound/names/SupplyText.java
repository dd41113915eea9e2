package asfound.names;

import asfound.model.CircuitRef;
import java.util.List;
import java.util.Optional;

/**
 * A 'fed from' text as a drawing gives it, read with the names that are known: {@code MDP CKT 7}, {@code MDP-7},
 * {@code T-1 VIA MDP-5}.
 *
 * @param raw the text as it stands
 * @param steps from the nearest supply to the farthest named; empty for a blank text. A transformer named together with a
 *     device of other equipment is the nearer one, in whichever order the two are written
 */
public record SupplyText(String raw, List<Step> steps) {

    /**
     * One equipment on the way of supply.
     *
     * @param text what names the equipment, tidied
     * @param name its one name; empty where the text names nothing known, or could mean two things
     * @param device the device in it, where one is given
     */
    public record Step(String text, Optional<String> name, Optional<CircuitRef> device) {}

    public SupplyText {
        steps = List.copyOf(steps);
    }

    /**
     * Reads a text. A number after a name is its device only where the name is known with the number apart from it and not
     * with the number in it: {@code LP-27} is never device 7 of {@code LP-2}.
     */
    public static SupplyText of(String raw, NameBook names) {
        return new SupplyReader(names).read(raw);
    }

    /** The nearest supply; empty for a blank text. */
    public Optional<Step> nearest() {
        return steps.stream().findFirst();
    }
}
