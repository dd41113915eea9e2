package asfound.finding;

import asfound.isolation.Verdict;
import asfound.network.Served;
import java.util.Collection;

/** How bad a difference of feeds is, by what the evidence leaves live. */
final class Severities {

    private Severities() {}

    /**
     * Danger where isolating any of the things by the drawing leaves it live on the evidence: the verdict on an equipment
     * fails with supply still reaching it, or a load is drawn at another device than the one that was traced to feed it.
     */
    static Severity of(Facts facts, Collection<Served> things) {
        return things.stream().anyMatch(t -> staysLive(facts, t)) ? Severity.DANGER : Severity.WARNING;
    }

    static boolean staysLive(Facts facts, Served thing) {
        if (thing.equipment().isPresent()) {
            var verdict = facts.index().verdict(thing.equipment().get());
            if (verdict.isPresent()) return staysLive(verdict.get());
        }
        return facts.index().tracedTo(thing).stream().anyMatch(c -> c.answer().differs())
                && !facts.index().drawnTo(thing).isEmpty();
    }

    static boolean staysLive(Verdict verdict) {
        return verdict.standing() == Verdict.Standing.FAILS
                && !verdict.liveFrom().isEmpty();
    }

    static boolean fails(Facts facts, String equipment) {
        return facts.index().verdict(equipment).filter(Severities::staysLive).isPresent();
    }
}
