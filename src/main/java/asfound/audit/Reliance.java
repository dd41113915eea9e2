package asfound.audit;

import asfound.finding.Correction;
import asfound.finding.Finding;
import asfound.finding.Severity;
import asfound.isolation.Verdict;
import asfound.model.Natural;
import asfound.model.Place;
import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Who relies on what a finding touches: lockout records, door cards and drawings, found by the devices and names in it. */
public final class Reliance {

    private final Set<String> withDirectory = new HashSet<>();
    /** Equipment that has the device (by its label) among its points. */
    private final Map<String, List<String>> byPoint = new HashMap<>();
    /** Equipment that the device (by its label) supplies or is drawn to supply. */
    private final Map<String, List<String>> supplied = new HashMap<>();
    /** Equipment that another holds live with the drawn points open. */
    private final Map<String, List<String>> heldLiveBy = new HashMap<>();

    private Reliance() {}

    public static Reliance of(Audit audit) {
        Reliance all = new Reliance();
        for (Verdict v : audit.verdicts()) {
            Stream.concat(v.drawnPoints().stream(), v.foundPoints().stream().flatMap(List::stream))
                    .map(Device::label)
                    .distinct()
                    .forEach(point -> add(all.byPoint, point, v.equipment()));
            if (v.standing() == Verdict.Standing.FAILS)
                for (String live : v.liveFrom()) add(all.heldLiveBy, live, v.equipment());
        }
        for (Connection c : audit.network().connections())
            for (Device d : c.devices()) add(all.supplied, d.label(), c.to());
        for (DeviceRecord d : audit.network().devices())
            if (d.showings().stream().anyMatch(s -> s.directory().isPresent()))
                all.withDirectory.add(d.device().in());
        return all;
    }

    private static void add(Map<String, List<String>> map, String key, String value) {
        map.computeIfAbsent(key, k -> new ArrayList<>()).add(value);
    }

    /** A notice is about paper that is untidy: it changes what cards and drawings say, and no point of isolation. */
    public ToBeTold of(Finding finding) {
        Set<String> equipment = new TreeSet<>(Natural.ORDER), devices = new TreeSet<>(Natural.ORDER);
        Set<String> cards = new TreeSet<>(Natural.ORDER), drawings = new TreeSet<>(Natural.ORDER);
        for (Finding.Part part : finding.event().parts()) {
            cards.add(part.equipment());
            if (part.circuit().isPresent()) {
                String device = part.inWords();
                devices.add(device);
                equipment.addAll(byPoint.getOrDefault(device, List.of()));
                List<String> fed = supplied.getOrDefault(device, List.of());
                equipment.addAll(fed);
                cards.addAll(fed); // a card says what feeds its panel
            } else {
                equipment.add(part.equipment());
                equipment.addAll(heldLiveBy.getOrDefault(part.equipment(), List.of()));
            }
        }
        for (Correction c : finding.corrections()) {
            cards.add(c.panel());
            drawings.add(c.place().file());
        }
        finding.drawings().stream().map(Place::file).forEach(drawings::add);
        boolean lockout = finding.severity() != Severity.NOTICE;
        return new ToBeTold(
                lockout ? List.copyOf(equipment) : List.of(),
                lockout ? List.copyOf(devices) : List.of(),
                cards.stream().filter(withDirectory::contains).toList(),
                List.copyOf(drawings));
    }
}
