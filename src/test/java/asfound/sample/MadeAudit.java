package asfound.sample;

import asfound.audit.Audit;
import asfound.drawing.Drawings;
import asfound.finding.Accepted;
import asfound.finding.Finding;
import asfound.isolation.DrawingVerdict;
import asfound.isolation.Verdict;
import asfound.model.CircuitRef;
import asfound.model.Directory;
import asfound.model.EquipmentKind;
import asfound.model.Observation;
import asfound.model.OneLine;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.model.Stated;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.network.Equipment;
import asfound.network.Network;
import asfound.network.Served;
import asfound.recordset.RecordSet;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import asfound.trust.Coverage;
import asfound.trust.Trace;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** An audit put together part by part, for tests of outputs: nothing in it is concluded from anything else. */
public final class MadeAudit {

    public static final String SURVEY = "survey/march.csv";

    public final List<Audit.Input> inputs = new ArrayList<>();
    public final List<Directory> directories = new ArrayList<>();
    public final List<Equipment> equipment = new ArrayList<>();
    public final List<DeviceRecord> devices = new ArrayList<>();
    public final List<Problem> problems = new ArrayList<>();
    public final List<Finding> findings = new ArrayList<>();
    public final List<Accepted> accepted = new ArrayList<>();
    public final List<Verdict> verdicts = new ArrayList<>();
    public final List<DrawingVerdict> drawings = new ArrayList<>();
    public final List<Trace> plan = new ArrayList<>();
    private final String building;
    private OneLine oneLine = new OneLine(List.of(), List.of());
    private Coverage coverage = coverage(0, 0);

    public MadeAudit(String building) {
        this.building = building;
    }

    public MadeAudit input(String file, Source.Kind kind, int size, Problem... found) {
        boolean paged = kind == Source.Kind.PDF;
        String hash = String.format("%064x", 7 * file.hashCode() & 0xffffffffL);
        inputs.add(new Audit.Input(
                new Source(file, Path.of(file), kind, 1_000L * size, hash),
                paged ? size : 0,
                paged ? 0 : size,
                List.of(found)));
        return this;
    }

    /** An input of the same name with other content. */
    public MadeAudit revised(String file) {
        inputs.replaceAll(i -> !i.source().file().equals(file)
                ? i
                : new Audit.Input(
                        new Source(file, i.source().path(), i.source().kind(), 1, "f".repeat(64)),
                        i.pages(),
                        i.rows(),
                        i.problems()));
        return this;
    }

    public MadeAudit equipment(String name, EquipmentKind kind, boolean drawn, boolean found, String... alsoWritten) {
        List<Place> at = drawn ? List.of(Place.page("drawings/" + name + ".pdf", 1)) : List.of();
        equipment.add(new Equipment(name, kind, drawn, found, List.of(alsoWritten), at, List.of(), false, false));
        return this;
    }

    public MadeAudit device(String in, String key, DeviceRecord.Tracing tracing, String drawn, Observation... seen) {
        Place at = Place.page("drawings/" + in + ".pdf", 1);
        devices.add(new DeviceRecord(
                new Device(in, key),
                List.of(new DeviceRecord.Showing(
                        Optional.of(new Served(drawn, Optional.empty())),
                        Directory.Use.LOAD,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        at)),
                Arrays.stream(seen)
                        .map(o -> new DeviceRecord.Sighting(
                                o, o.found().value().map(t -> new Served(t, Optional.empty())), false))
                        .toList(),
                tracing));
        return this;
    }

    public static Observation saw(int row, String panel, String circuit, String found, Observation.Method method) {
        Place.InRow place = new Place.InRow(SURVEY, "", row);
        return new Observation(
                Stated.text(panel, place),
                CircuitRef.parse(circuit).map(c -> Stated.of(c, circuit, place)).orElse(Stated.blank(place)),
                Observation.Relation.FEEDS,
                Stated.text(found, place),
                EquipmentKind.UNKNOWN,
                method,
                Stated.blank(place),
                Stated.blank(place),
                Stated.blank(place),
                Stated.blank(place),
                Stated.blank(place),
                Stated.blank(place),
                "I. Moreau",
                Stated.of(LocalDate.of(2026, 3, 4), "2026-03-04", place),
                "",
                "",
                place);
    }

    public static Verdict verdict(String equipment, Verdict.Standing standing, String drawn, String found, String why) {
        return new Verdict(
                equipment,
                standing,
                devices(drawn),
                found == null ? Optional.empty() : Optional.of(devices(found)),
                false,
                standing == Verdict.Standing.FAILS ? List.of("UTIL") : List.of(),
                standing == Verdict.Standing.FAILS ? List.of("UTIL", "MDP/9") : List.of(),
                why,
                List.of(),
                List.of());
    }

    private static List<Device> devices(String labels) {
        return Arrays.stream(labels.split(" "))
                .filter(l -> !l.isEmpty())
                .map(l -> new Device(l.substring(0, l.indexOf('/')), l.substring(l.indexOf('/') + 1)))
                .toList();
    }

    /** With these drawings in place of its own. */
    public MadeAudit with(Drawings drawings) {
        directories.clear();
        directories.addAll(drawings.directories());
        oneLine = drawings.oneLine();
        return this;
    }

    public MadeAudit covered(int drawn, int traced) {
        coverage = coverage(drawn, traced);
        return this;
    }

    private static Coverage coverage(int drawn, int traced) {
        Coverage.Share building = new Coverage.Share("", drawn, traced, 0, OptionalDouble.empty());
        return new Coverage(
                building,
                List.of(new Coverage.Share("LP-2A", drawn, traced, 0, OptionalDouble.of(0.25))),
                Map.of("opened", traced),
                Map.of("2026", traced),
                "The circuits were chosen, so the traced ones say nothing about the rest.");
    }

    public Audit build() {
        return new Audit(
                new RecordSet(building, Path.of("records"), Settings.none(), List.of(), problems),
                inputs,
                new Drawings(directories, oneLine),
                List.of(),
                new Network(equipment, List.of(), devices, List.of()),
                verdicts,
                drawings,
                findings,
                accepted,
                List.of(),
                coverage,
                plan);
    }
}
