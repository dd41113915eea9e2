package asfound.sample;

import asfound.model.CircuitRef;
import asfound.model.Directory.Use;
import asfound.model.EquipmentKind;
import asfound.model.Observation;
import asfound.model.Observation.Method;
import asfound.model.Observation.Relation;
import asfound.model.Place;
import asfound.model.Stated;
import asfound.model.Voltage;
import asfound.network.Device;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

/** Surveys a building as it is in truth: each device with a given chance, by several people, with labels among the traces. */
final class SurveyWriter {

    static final LocalDate MODIFIED = LocalDate.of(2024, 1, 15);
    private static final List<Method> TRACES = List.of(Method.OPENED, Method.TONE, Method.VISUAL);

    private final Campus campus;
    private final Random random;
    private final double coverage;
    final List<Observation> rows = new ArrayList<>();
    final Set<Device> traced = new HashSet<>();

    SurveyWriter(Campus campus, Random random, double coverage) {
        this.campus = campus;
        this.random = random;
        this.coverage = coverage;
        for (Board b : campus.boards) {
            if (!b.there) continue;
            for (Slot s : b.slots) if (random.nextDouble() < coverage) trace(s);
            incoming(b);
        }
    }

    /** The column of a device's phase by convention: A, B, C from the top. */
    static int phaseIndex(Slot s) {
        return (s.positions.get(0) - 1) / 2 % 3;
    }

    private void trace(Slot s) {
        traced.add(s.device());
        Method method = TRACES.get(random.nextInt(TRACES.size()));
        if (s.backfedBy != null) row(s, Relation.FED_BY, s.backfedBy.name, s.backfedBy.kind, method);
        else if (s.to != null) row(s, Relation.FEEDS, Writings.of(s.to, random), s.to.kind, method);
        else if (s.load != null) row(s, Relation.FEEDS, s.load.written(random), kind(), method);
        else if (s.noDevice || s.use == Use.SPACE) row(s, Relation.NO_DEVICE, "", EquipmentKind.UNKNOWN, method);
        else row(s, Relation.NOTHING, "", EquipmentKind.UNKNOWN, method);
        if (s.extraRows.contains("nothing")) row(s, Relation.NOTHING, "", EquipmentKind.UNKNOWN, Method.OPENED);
        if (random.nextInt(40) == 0 && s.load != null)
            row(s, Relation.FEEDS, s.load.written(random), kind(), Method.TONE);
        if (random.nextInt(30) == 0) row(s, Relation.FEEDS, campus.newLoad().drafted(), kind(), Method.LABEL);
    }

    private EquipmentKind kind() {
        return random.nextInt(4) == 0 ? EquipmentKind.LOAD : EquipmentKind.UNKNOWN;
    }

    /** What feeds a board, seen from its own main or at a transformer without a device. */
    private void incoming(Board b) {
        if (random.nextDouble() > coverage / 2 || !b.drawn) return;
        if (b.behind != null) row(b.behind, null, Relation.FEEDS, Writings.of(b, random), b.kind, Method.VISUAL, null);
        else if (b.parent != null && !b.parent.taken && b.hasSchedule() && !b.stale)
            row(b, "M", Relation.FED_BY, Writings.of(b.parent.in, random), b.parent.in.kind, Method.VISUAL, null);
    }

    private void row(Slot s, Relation relation, String found, EquipmentKind kind, Method method) {
        String circuit = s.poles() > 1 && random.nextBoolean() ? s.circuit() : s.key();
        row(s.in, circuit, relation, found, kind, method, s);
    }

    private void row(
            Board in, String circuit, Relation relation, String found, EquipmentKind kind, Method method, Slot s) {
        Place.InRow at = new Place.InRow("survey/survey.csv", "", rows.size() + 2);
        LocalDate day = in.stale ? MODIFIED.minusDays(200) : MODIFIED.plusDays(random.nextInt(90));
        boolean device = s != null && relation != Relation.NO_DEVICE && s.use != Use.SPACE && method != Method.LABEL;
        boolean looked = device && random.nextBoolean();
        rows.add(new Observation(
                Stated.text(Writings.of(in, random), at),
                Stated.text(circuit == null ? "" : circuit, at).read(CircuitRef::parse),
                relation,
                Stated.text(found, at),
                kind,
                method,
                looked ? Stated.of(s.poles(), "", at) : Stated.blank(at),
                device && s.trueRating != null
                        ? stated(s.trueRating, at)
                        : looked && s.in.drawn ? stated(s.rating, at) : Stated.blank(at),
                device && s.trueVoltage != null
                        ? Stated.text(s.trueVoltage, at).read(Voltage::parse)
                        : Stated.blank(at),
                Stated.text(
                        device && s.truePhase != null
                                ? s.truePhase
                                : looked && s.poles() == 1 ? String.valueOf((char) ('A' + phaseIndex(s))) : "",
                        at),
                Stated.blank(at),
                Stated.blank(at),
                List.of("A. Duarte", "R. Oyelaran", "M. Lindqvist").get(random.nextInt(3)),
                Stated.of(day, day.toString(), at),
                "",
                "",
                at));
    }

    private static Stated<Integer> stated(int value, Place at) {
        return Stated.of(value, Integer.toString(value), at);
    }
}
