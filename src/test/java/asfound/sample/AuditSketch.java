package asfound.sample;

import asfound.audit.Audit;
import asfound.drawing.Drawings;
import asfound.finding.Accepted;
import asfound.finding.Event;
import asfound.finding.Finding;
import asfound.finding.Severity;
import asfound.isolation.DrawingVerdict;
import asfound.isolation.Verdict;
import asfound.model.Box;
import asfound.model.CircuitRef;
import asfound.model.Directory;
import asfound.model.EquipmentKind;
import asfound.model.Natural;
import asfound.model.Observation;
import asfound.model.OneLine;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.model.Stated;
import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.network.Equipment;
import asfound.network.Network;
import asfound.network.Served;
import asfound.network.Standing;
import asfound.recordset.RecordSet;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import asfound.trust.Coverage;
import asfound.trust.Trace;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Function;

/** An audit made by hand, for tests of what shows an audit: every part is put in as it is to be shown, nothing is computed. */
public final class AuditSketch {

    private static final String SURVEY = "survey/walk-2026.csv";

    private final String building;
    private final Map<String, EquipmentKind> kinds = new LinkedHashMap<>();
    private final Map<String, String> drawingOf = new LinkedHashMap<>();
    private final TreeSet<String> notDrawn = new TreeSet<>(), notFound = new TreeSet<>();
    private final List<Connection> connections = new ArrayList<>();
    private final List<DeviceRecord> devices = new ArrayList<>();
    private final List<Observation> survey = new ArrayList<>();
    private final List<Verdict> verdicts = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<Accepted> accepted = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private final List<Trace> plan = new ArrayList<>();
    private String statement = "The traced circuits were not chosen at random; they say nothing about the rest.";

    public AuditSketch(String building) {
        this.building = building;
    }

    public AuditSketch equipment(EquipmentKind kind, String... names) {
        for (String name : names) {
            kinds.put(name, kind);
            drawingOf.put(name, kind.isDistribution() ? "drawings/" + name + ".pdf" : "one-line/feeders.csv");
        }
        return this;
    }

    public AuditSketch drawnIn(String drawing, String... names) {
        for (String name : names) drawingOf.put(name, drawing);
        return this;
    }

    public AuditSketch notDrawn(String... names) {
        notDrawn.addAll(List.of(names));
        return this;
    }

    public AuditSketch notFound(String... names) {
        notFound.addAll(List.of(names));
        return this;
    }

    /** Devices as {@code MDP/7}. */
    public AuditSketch feeder(String from, String to, Standing standing, String... devices) {
        return connect(from, to, Connection.Flow.FEEDER, false, standing, devices);
    }

    public AuditSketch connect(
            String from, String to, Connection.Flow flow, boolean open, Standing standing, String... devices) {
        boolean drawn = standing != Standing.FOUND;
        boolean seen = standing != Standing.UNTRACED;
        List<Observation> evidence = new ArrayList<>();
        if (seen) evidence.add(observe(from, devices.length == 0 ? "" : key(devices[0]), to));
        connections.add(new Connection(
                from,
                java.util.Arrays.stream(devices).map(AuditSketch::device).toList(),
                to,
                flow,
                drawn,
                false,
                open,
                standing,
                drawn ? List.of(Place.page(drawingOf.getOrDefault(from, "one-line/feeders.csv"), 1)) : List.of(),
                evidence));
        return this;
    }

    /** A branch circuit: what the directory says, and what was found; either may be empty. */
    public AuditSketch circuit(String panel, int position, String says, String found) {
        Place at = Place.page(drawingOf.get(panel), 1, new Box(60, 100 + 12 * position, 240, 12));
        Directory.Use use = says.isEmpty() ? Directory.Use.SPACE : Directory.Use.LOAD;
        Directory.Circuit circuit = new Directory.Circuit(
                List.of(position), "", 1, Stated.of(20, "20", at), Stated.text(says, at), use, List.of(), at);
        DeviceRecord.Showing showing = new DeviceRecord.Showing(
                served(says), use, Optional.of(circuit), Optional.empty(), Optional.empty(), at);
        List<DeviceRecord.Sighting> sightings = found.isEmpty()
                ? List.of()
                : List.of(new DeviceRecord.Sighting(
                        observe(panel, Integer.toString(position), found), served(found), false));
        devices.add(new DeviceRecord(
                new Device(panel, Integer.toString(position)),
                List.of(showing),
                sightings,
                sightings.isEmpty() ? DeviceRecord.Tracing.NOT_SEEN : DeviceRecord.Tracing.TRACED));
        return this;
    }

    private Optional<Served> served(String text) {
        return text.isEmpty()
                ? Optional.empty()
                : Optional.of(new Served(text, Optional.of(text).filter(kinds::containsKey)));
    }

    private Observation observe(String panel, String circuit, String found) {
        Place.InRow row = new Place.InRow(SURVEY, "", survey.size() + 2);
        Observation o = new Observation(
                Stated.text(panel, row),
                CircuitRef.parse(circuit).map(c -> Stated.of(c, circuit, row)).orElse(Stated.blank(row)),
                Observation.Relation.FEEDS,
                Stated.text(found, row),
                kinds.getOrDefault(found, EquipmentKind.UNKNOWN),
                Observation.Method.OPENED,
                Stated.blank(row),
                Stated.blank(row),
                Stated.blank(row),
                Stated.blank(row),
                Stated.blank(row),
                Stated.blank(row),
                "M. Okafor",
                Stated.of(LocalDate.of(2026, 3, 4), "2026-03-04", row),
                "",
                "",
                row);
        survey.add(o);
        return o;
    }

    public AuditSketch verdict(
            String equipment, Verdict.Standing standing, String drawn, String found, String liveFrom, String reason) {
        List<Device> points = points(drawn);
        verdicts.add(new Verdict(
                equipment,
                standing,
                points,
                found == null ? Optional.empty() : Optional.of(points(found)),
                false,
                liveFrom.isEmpty() ? List.of() : List.of(liveFrom),
                standing == Verdict.Standing.FAILS && found != null
                        ? points(found).stream().map(Device::label).toList()
                        : List.of(),
                reason,
                List.of(),
                List.of(Place.page(drawingOf.get(equipment), 1), Place.row(SURVEY, 2))));
        return this;
    }

    private static List<Device> points(String labels) {
        return labels.isEmpty()
                ? List.of()
                : java.util.Arrays.stream(labels.split(",\\s*"))
                        .map(AuditSketch::device)
                        .toList();
    }

    public AuditSketch finding(
            Function<Event, Finding> kind,
            Severity severity,
            String device,
            String drawn,
            String found,
            String message) {
        findings.add(made(kind, severity, device, drawn, found, message));
        return this;
    }

    public AuditSketch accepted(
            Function<Event, Finding> kind, Severity severity, String device, String message, String reason) {
        accepted.add(new Accepted(
                made(kind, severity, device, "", "", message), reason, "R. Lindqvist", LocalDate.of(2026, 4, 2)));
        return this;
    }

    private Finding made(
            Function<Event, Finding> kind,
            Severity severity,
            String device,
            String drawn,
            String found,
            String message) {
        String in = device.contains("/") ? device(device).in() : device;
        Optional<String> circuit =
                Optional.of(device).filter(d -> d.contains("/")).map(AuditSketch::key);
        Place place = Place.page(drawingOf.getOrDefault(in, "one-line/feeders.csv"), 1, new Box(60, 120, 240, 12));
        return kind.apply(new Event(
                severity,
                new Finding.Part(in, circuit),
                kinds.containsKey(found) ? List.of(Finding.Part.of(found)) : List.of(),
                drawn,
                found,
                List.of(place),
                survey.stream()
                        .filter(o -> o.panel().or("").equals(in)
                                && circuit.equals(o.circuit().value().map(CircuitRef::key)))
                        .toList(),
                message,
                "Change the entry to read " + found + ".",
                List.of()));
    }

    public AuditSketch problem(Place place, String message, String remedy) {
        problems.add(new Problem(place, message, remedy));
        return this;
    }

    public AuditSketch trace(String panel, String circuit, String expect, String why) {
        plan.add(new Trace(
                plan.size() + 1,
                Optional.of("Level 1, east"),
                panel,
                circuit,
                expect,
                Observation.Method.OPENED,
                why,
                List.of(panel),
                List.of()));
        return this;
    }

    public AuditSketch statement(String statement) {
        this.statement = statement;
        return this;
    }

    private static Device device(String label) {
        int cut = label.lastIndexOf('/');
        return new Device(label.substring(0, cut), label.substring(cut + 1));
    }

    private static String key(String label) {
        return label.substring(label.lastIndexOf('/') + 1);
    }

    public Audit build() {
        List<Equipment> equipment = kinds.entrySet().stream()
                .map(e -> new Equipment(
                        e.getKey(),
                        e.getValue(),
                        !notDrawn.contains(e.getKey()),
                        !notFound.contains(e.getKey()),
                        List.of("Panel " + e.getKey().replace("-", "")),
                        notDrawn.contains(e.getKey()) ? List.of() : List.of(Place.page(drawingOf.get(e.getKey()), 1)),
                        List.of(),
                        false,
                        false))
                .sorted(Comparator.comparing(Equipment::name, Natural.ORDER))
                .toList();
        findings.sort(Finding.WORST_FIRST);
        verdicts.sort(Comparator.comparing(Verdict::equipment, Natural.ORDER));
        Map<String, List<Verdict>> byDrawing = new java.util.TreeMap<>();
        for (Verdict v : verdicts)
            if (!notDrawn.contains(v.equipment()))
                byDrawing
                        .computeIfAbsent(drawingOf.get(v.equipment()), k -> new ArrayList<>())
                        .add(v);
        List<DrawingVerdict> drawings = byDrawing.entrySet().stream()
                .map(e -> new DrawingVerdict(
                        e.getKey(),
                        e.getValue().stream()
                                .map(Verdict::standing)
                                .min(Comparator.naturalOrder())
                                .orElseThrow(),
                        e.getValue().stream().map(Verdict::equipment).toList(),
                        e.getValue().stream()
                                .filter(v -> v.standing() != Verdict.Standing.AGREES)
                                .map(Verdict::reason)
                                .toList()))
                .toList();
        return new Audit(
                new RecordSet(building, Path.of("records"), Settings.none(), List.of(), List.of()),
                inputs(byDrawing.keySet()),
                new Drawings(List.of(), new OneLine(List.of(), List.of())),
                survey,
                new Network(equipment, connections, devices, List.of()),
                verdicts,
                drawings,
                findings,
                accepted,
                List.of(),
                coverage(),
                plan);
    }

    private List<Audit.Input> inputs(java.util.Set<String> drawings) {
        TreeSet<String> files = new TreeSet<>(drawings);
        problems.forEach(p -> files.add(p.place().file()));
        files.add(SURVEY);
        return files.stream()
                .map(f -> new Audit.Input(
                        new Source(
                                f,
                                Path.of(f),
                                f.endsWith(".pdf") ? Source.Kind.PDF : Source.Kind.SURVEY,
                                1000,
                                "%064x".formatted(Math.abs((long) f.hashCode()))),
                        f.endsWith(".pdf") ? 1 : 0,
                        f.endsWith(".csv") ? survey.size() : 0,
                        problems.stream()
                                .filter(p -> p.place().file().equals(f))
                                .toList()))
                .toList();
    }

    private Coverage coverage() {
        Map<String, int[]> byPanel = new java.util.TreeMap<>(Natural.ORDER);
        for (DeviceRecord d : devices) {
            int[] n = byPanel.computeIfAbsent(d.device().in(), k -> new int[2]);
            n[0]++;
            if (d.tracing() == DeviceRecord.Tracing.TRACED) n[1]++;
        }
        List<Coverage.Share> panels = byPanel.entrySet().stream()
                .map(e -> new Coverage.Share(e.getKey(), e.getValue()[0], e.getValue()[1], 0, OptionalDouble.empty()))
                .toList();
        int drawn = panels.stream().mapToInt(Coverage.Share::drawn).sum();
        int traced = panels.stream().mapToInt(Coverage.Share::traced).sum();
        return new Coverage(
                new Coverage.Share("", drawn, traced, 0, OptionalDouble.empty()),
                panels,
                Map.of("opened", traced),
                Map.of("2026", traced),
                statement);
    }
}
