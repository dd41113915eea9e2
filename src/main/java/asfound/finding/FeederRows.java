package asfound.finding;

import asfound.finding.Correction.Field;
import asfound.model.CircuitRef;
import asfound.model.OneLine;
import asfound.model.Place;
import asfound.network.DeviceRecord.Showing;
import asfound.network.Served;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The one-line's rows at one device, made to say what the device was traced to feed. */
final class FeederRows {

    private final Facts facts;
    private final Comparison c;
    private final String why;

    FeederRows(Facts facts, Comparison c, String why) {
        this.facts = facts;
        this.c = c;
        this.why = why;
    }

    void corrections(List<Correction> to) {
        Set<String> missing = new LinkedHashSet<>();
        for (Served s : c.seen()) s.equipment().ifPresent(missing::add);
        List<OneLine.Feeder> wrong = new ArrayList<>();
        for (Showing s : c.at().showings()) {
            if (s.feeder().isEmpty()) continue;
            String says = s.serves().flatMap(Served::equipment).orElse("");
            boolean right =
                    missing.removeIf(m -> m.equals(says) || facts.through().joins(says, m));
            if (!right) wrong.add(s.feeder().get());
        }
        missing.removeIf(m -> !belongsOnOneLine(m));
        for (OneLine.Feeder row : wrong) rewrite(row, missing, to);
        for (String m : missing) to.add(addition(m));
    }

    private void rewrite(OneLine.Feeder row, Set<String> missing, List<Correction> to) {
        String circuit = row.device().value().map(CircuitRef::inWords).orElse("");
        String reads = row.to().raw().strip();
        if (missing.isEmpty()) {
            String whole = row.from().raw().strip() + ", " + circuit + ", " + reads;
            to.add(new Correction(row.place(), c.panel(), circuit, Field.FEEDER_ROW, whole, "", why));
            return;
        }
        String next = missing.iterator().next();
        missing.remove(next);
        to.add(new Correction(row.place(), c.panel(), circuit, Field.FEEDER_TO, reads, next, why));
    }

    /** From, device and to, as a row of the feeders' table; a source that feeds back has no device of its own known. */
    private Correction addition(String equipment) {
        Place place = facts.index().paper().forNewRow();
        String device = c.device().key();
        String row = c.backfed() ? equipment + ", , " + c.panel() : c.panel() + ", " + device + ", " + equipment;
        return new Correction(place, c.panel(), device, Field.FEEDER_ROW, "", row, why);
    }

    /** A load at the end of a branch circuit stands in the directory alone, unless the one-line has it. */
    private boolean belongsOnOneLine(String equipment) {
        if (!facts.index().paper().hasOneLine()) return !facts.index().paper().canHoldEntry(c.device());
        return facts.index().paper().onOneLine(equipment)
                || facts.kindOf(equipment).isDistribution()
                || facts.kindOf(equipment).isSource()
                || !facts.index().devicesOf(equipment).isEmpty()
                || !facts.index().paper().canHoldEntry(c.device());
    }
}
