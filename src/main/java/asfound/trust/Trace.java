package asfound.trust;

import asfound.model.Observation.Method;
import java.util.List;
import java.util.Optional;

/**
 * One trace worth making.
 *
 * @param rank its order, from 1, most useful first
 * @param location where to walk to; empty where no record says
 * @param panel the equipment that holds the device
 * @param circuit the device
 * @param expect what the drawing says is there, to look for
 * @param method what would settle it
 * @param why what it would decide, in the user's terms
 * @param settles equipment whose verdict it can settle
 * @param findings ids of findings that it can confirm or refute
 */
public record Trace(
        int rank,
        Optional<String> location,
        String panel,
        String circuit,
        String expect,
        Method method,
        String why,
        List<String> settles,
        List<String> findings) {

    public Trace {
        settles = List.copyOf(settles);
        findings = List.copyOf(findings);
    }
}
