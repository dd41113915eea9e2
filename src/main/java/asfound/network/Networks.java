package asfound.network;

import asfound.drawing.Drawings;
import asfound.model.EquipmentKind;
import asfound.model.Natural;
import asfound.model.Observation;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.names.Descriptions;
import asfound.network.DeviceRecord.Showing;
import asfound.network.DeviceRecord.Sighting;
import asfound.recordset.Settings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Joins paper and survey into the one network that findings, verdicts and reports read. */
public final class Networks {

    private static final Pattern LIFE_SAFETY = Pattern.compile(
            "\\b(LIFE.?SAFETY|EMERGENCY|EMERG|EGRESS|FIRE|SMOKE|FACP|(EM|LS|ELS|EMLP|EMDP)(?![A-Z]))",
            Pattern.CASE_INSENSITIVE);
    private static final Comparator<Connection> ORDER = Comparator.comparing(Connection::from, Natural.ORDER)
            .thenComparing(
                    c -> String.join(
                            " ", c.devices().stream().map(Device::label).toList()),
                    Natural.ORDER)
            .thenComparing(Connection::to, Natural.ORDER)
            .thenComparing(c -> !c.drawn());

    private final Names names;
    private final Kinds kinds;
    private final PlainNumbers plainNumbers;
    private final Paper paper;
    private final Sightings sightings;
    private final Settings settings;
    private final Tracer tracer;

    private Networks(Drawings drawings, List<Observation> survey, Settings settings) {
        this.settings = settings;
        names = Names.of(drawings, survey, settings);
        kinds = new Kinds(names, drawings, survey);
        DeviceKeys keys = new DeviceKeys(names, drawings, survey);
        plainNumbers = new PlainNumbers(names, keys);
        Set<String> met = met(survey);
        paper = new Paper(names, keys, kinds, met, drawings);
        sightings = new Sightings(names, keys, survey, settings, n -> met.contains(n) || paper.isDrawn(n));
        tracer = new Tracer(new DrawnConnections(paper, kinds).drafts(), kinds, keys);
        tracer.lay(sightings);
    }

    /**
     * The network of a building. The order of drawings and observations, and how they are spread over files, make no
     * difference.
     */
    public static Network build(Drawings drawings, List<Observation> survey, Settings settings) {
        Networks n = new Networks(drawings, survey, settings);
        List<Problem> problems = new ArrayList<>(n.names.problems());
        problems.addAll(n.plainNumbers.problems(survey, drawings));
        return new Network(n.equipment(), n.connections(), n.devices(), problems);
    }

    /** Equipment that the survey met: what holds a device that was seen, and what a row says to be equipment. */
    private Set<String> met(List<Observation> survey) {
        Set<String> met = new HashSet<>();
        for (Observation o : survey) {
            if (!Names.meets(o)) continue;
            o.panel().value().ifPresent(p -> met.add(names.orItself(p)));
            if (Names.namesEquipment(o)) o.found().value().ifPresent(f -> met.add(names.orItself(f)));
        }
        return met;
    }

    private List<Connection> connections() {
        return tracer.drafts().stream().map(Draft::connection).sorted(ORDER).toList();
    }

    private List<DeviceRecord> devices() {
        Set<Device> all = new TreeSet<>(paper.showings.keySet());
        all.addAll(sightings.byDevice.keySet());
        tracer.drafts().forEach(d -> all.addAll(d.devices));
        Descriptions descriptions = Descriptions.of(settings);
        List<DeviceRecord> records = new ArrayList<>(all.size());
        for (Device d : all) {
            List<Sighting> seen = sightings.byDevice.getOrDefault(d, List.of());
            List<Showing> shown = paper.showings.getOrDefault(d, List.of()).stream()
                    .sorted(Comparator.comparing(Showing::place, Place.ORDER))
                    .toList();
            records.add(new DeviceRecord(d, shown, seen, Sightings.tracing(seen, descriptions)));
        }
        return records;
    }

    private List<Equipment> equipment() {
        Set<String> all = new TreeSet<>(Natural.ORDER);
        all.addAll(paper.shownAt.keySet());
        all.addAll(paper.mentionedAt.keySet());
        all.addAll(sightings.metBy.keySet());
        Set<String> lifeSafety = new HashSet<>();
        settings.lifeSafety().forEach(n -> lifeSafety.add(names.orItself(n)));
        return all.stream().map(n -> equipment(n, lifeSafety)).toList();
    }

    private Equipment equipment(String name, Set<String> lifeSafety) {
        List<Observation> seenBy = sightings.metBy.getOrDefault(name, List.of());
        List<String> alsoWritten = names.alsoWritten(name);
        boolean vital = lifeSafety.contains(name)
                || Stream.concat(Stream.of(name), alsoWritten.stream())
                        .anyMatch(n -> LIFE_SAFETY.matcher(n).find());
        Map<String, TreeSet<Place>> places = paper.shownAt.containsKey(name) ? paper.shownAt : paper.mentionedAt;
        return new Equipment(
                name,
                kind(name),
                paper.isDrawn(name),
                !seenBy.isEmpty(),
                alsoWritten,
                List.copyOf(places.getOrDefault(name, new TreeSet<>(Place.ORDER))),
                seenBy,
                vital,
                paper.doubtful.contains(name) || sightings.unclear.contains(name));
    }

    private EquipmentKind kind(String name) {
        return kinds.of(name);
    }
}
