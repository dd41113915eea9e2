package asfound.report.page;

import asfound.audit.Audit;
import asfound.audit.Reliance;
import asfound.audit.ToBeTold;
import asfound.finding.Accepted;
import asfound.finding.Finding;
import asfound.isolation.NamedElsewhere;
import asfound.isolation.Verdict;
import asfound.model.Natural;
import asfound.model.Place;
import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.network.Equipment;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The audit's parts by the equipment, device or drawing that they are about, and where on the page each stands. */
public final class Index {

    private final Map<String, String> anchors = new LinkedHashMap<>();
    private final Map<String, String> drawings = new TreeMap<>(Natural.ORDER);
    private final Map<String, Verdict> verdicts = new HashMap<>();
    private final Map<String, List<Finding>> findings = new HashMap<>();
    private final Map<String, List<Finding>> byDevice = new HashMap<>();
    private final Map<String, List<Connection>> arriving = new HashMap<>();
    private final Map<String, List<Connection>> leaving = new HashMap<>();
    private final Map<String, List<DeviceRecord>> devices = new HashMap<>();
    private final Map<String, Set<String>> ends = new HashMap<>();
    private final Map<Finding, String> findingAnchors = new IdentityHashMap<>();
    private final MarkedDrawings marked;
    private final Reliance reliance;
    private final NamedElsewhere elsewhere;
    private final Map<String, Integer> dangersAt = new HashMap<>();
    private final Map<String, Integer> dangersOn = new HashMap<>();

    Index(Audit audit) {
        marked = new MarkedDrawings(audit);
        reliance = Reliance.of(audit);
        elsewhere = new NamedElsewhere(audit.network());
        for (Finding f : audit.dangers()) {
            dangersAt.merge(f.equipment(), 1, Integer::sum);
            f.drawings().stream().map(Place::file).distinct().forEach(file -> dangersOn.merge(file, 1, Integer::sum));
        }
        Set<String> taken = new HashSet<>();
        for (Equipment e : audit.network().equipment()) anchors.put(e.name(), anchor("eq-", e.name(), taken));
        for (Finding f : audit.findings()) findingAnchors.put(f, anchor("", f.id(), taken));
        for (Accepted a : audit.accepted())
            findingAnchors.put(a.finding(), anchor("", a.finding().id(), taken));
        TreeSet<String> files = new TreeSet<>(Natural.ORDER);
        audit.drawingVerdicts().forEach(d -> files.add(d.file()));
        audit.findings().forEach(f -> f.drawings().forEach(p -> files.add(p.file())));
        for (String file : files) drawings.put(file, "dr-" + (drawings.size() + 1));
        audit.verdicts().forEach(v -> verdicts.put(v.equipment(), v));
        for (Connection c : audit.network().connections()) {
            add(arriving, c.to(), c);
            add(leaving, c.from(), c);
            for (Device d : c.devices())
                ends.computeIfAbsent(d.label(), k -> new TreeSet<>(Natural.ORDER))
                        .addAll(List.of(c.from(), c.to()));
        }
        for (Finding f : audit.findings()) {
            bearsOn(f).forEach(name -> add(findings, name, f));
            parts(f).stream().filter(p -> p.circuit().isPresent()).forEach(p -> add(byDevice, p.inWords(), f));
        }
        audit.network().devices().forEach(d -> add(devices, d.device().in(), d));
    }

    private static <T> void add(Map<String, List<T>> map, String key, T value) {
        map.computeIfAbsent(key, k -> new ArrayList<>()).add(value);
    }

    private static String anchor(String prefix, String name, Set<String> taken) {
        String plain = prefix + name.replaceAll("[^A-Za-z0-9]+", "-");
        String unique = plain;
        for (int n = 2; !taken.add(unique); n++) unique = plain + "." + n;
        return unique;
    }

    /** The device or equipment that a finding is about, and the further parts of its event. */
    public static List<Finding.Part> parts(Finding f) {
        return f.event().parts();
    }

    /**
     * Equipment that a finding bears on without naming it as a part: what is drawn or found at the other end of its
     * devices. Whoever looks up a panel must see that its feeder is crossed.
     */
    public List<String> concerned(Finding f) {
        Set<String> named = parts(f).stream().map(Finding.Part::equipment).collect(Collectors.toSet());
        return parts(f).stream()
                .filter(p -> p.circuit().isPresent())
                .flatMap(p -> ends.getOrDefault(p.inWords(), Set.of()).stream())
                .filter(e -> !named.contains(e))
                .distinct()
                .toList();
    }

    private List<String> bearsOn(Finding f) {
        return Stream.concat(parts(f).stream().map(Finding.Part::equipment), concerned(f).stream())
                .distinct()
                .toList();
    }

    /** The id of the equipment's sheet on the page; empty for what is no equipment of the network. */
    public Optional<String> anchor(String equipment) {
        return Optional.ofNullable(anchors.get(equipment));
    }

    /** The id of a finding on the page: its own. */
    public String anchor(Finding f) {
        return findingAnchors.get(f);
    }

    /** Ids of all the equipment that a finding bears on, parted by spaces. */
    public String anchors(Finding f) {
        return String.join(
                " ", bearsOn(f).stream().flatMap(n -> anchor(n).stream()).toList());
    }

    /** Every drawing with its id on the page, in order of file. */
    public Map<String, String> drawings() {
        return drawings;
    }

    /** How many findings of danger there are at an equipment and its circuits. */
    public int dangersAt(String equipment) {
        return dangersAt.getOrDefault(equipment, 0);
    }

    /** How many there are against what a drawing shows. */
    public int dangersOn(String file) {
        return dangersOn.getOrDefault(file, 0);
    }

    /** Circuits elsewhere that name an equipment in other words; empty where there are none. */
    public String namedElsewhere(Verdict v) {
        return NamedElsewhere.inWords(elsewhere.of(v));
    }

    public String drawings(Finding f) {
        return String.join(
                " ",
                f.drawings().stream()
                        .map(Place::file)
                        .distinct()
                        .map(drawings::get)
                        .toList());
    }

    /** Who relies on what the finding's correction touches. */
    public ToBeTold toBeTold(Finding f) {
        return reliance.of(f);
    }

    /** The marked copies of the drawings. */
    public MarkedDrawings marked() {
        return marked;
    }

    /** Every equipment that a finding bears on, in natural order, with its id on the page. */
    public Map<String, String> equipmentWithFindings() {
        Map<String, String> named = new TreeMap<>(Natural.ORDER);
        findings.keySet().forEach(name -> anchor(name).ifPresent(id -> named.put(name, id)));
        return named;
    }

    public Optional<Verdict> verdict(String equipment) {
        return Optional.ofNullable(verdicts.get(equipment));
    }

    public List<Finding> findings(String equipment) {
        return findings.getOrDefault(equipment, List.of());
    }

    public List<Finding> findings(DeviceRecord device) {
        return byDevice.getOrDefault(device.device().label(), List.of());
    }

    public List<Connection> supply(String equipment) {
        return arriving.getOrDefault(equipment, List.of());
    }

    public List<Connection> supplies(String equipment) {
        return leaving.getOrDefault(equipment, List.of());
    }

    public List<DeviceRecord> devices(String equipment) {
        return devices.getOrDefault(equipment, List.of());
    }
}
