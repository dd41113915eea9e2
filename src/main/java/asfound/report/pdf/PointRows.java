package asfound.report.pdf;

import asfound.audit.Audit;
import asfound.isolation.Verdict.Standing;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.network.Served;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What an isolation sheet says of each point: its part, what the drawings show there, who saw what, when and how. */
final class PointRows {

    static final double[] WIDTHS = {0.13, 0.14, 0.17, 0.32, 0.08, 0.08, 0.08};
    static final List<String> HEAD =
            List.of("Point", "Part", "Drawn to feed", "Seen there: who, when, how", "Lock", "Tag", "Tested");
    /** Columns before this one are printed, from it on they are blanks. */
    static final int WRITTEN = 4;

    private static final int MOST = 3;

    private PointRows() {}

    static List<String> row(Audit audit, Device device, Set<Device> drawn, Set<Device> found, Standing verdict) {
        Optional<DeviceRecord> record = audit.network().devices().stream()
                .filter(r -> r.device().equals(device))
                .findFirst();
        return List.of(
                device.label(),
                part(drawn.contains(device), found.contains(device), verdict),
                record.map(PointRows::drawn).orElse("not drawn"),
                record.map(PointRows::seen).orElse("not traced"),
                "",
                "",
                "");
    }

    private static String part(boolean drawn, boolean found, Standing verdict) {
        if (drawn && found) return "drawn and found";
        if (!drawn) return "FOUND, the drawings miss it";
        return verdict == Standing.FAILS ? "drawn only: it alone does not isolate" : "drawn, NOT PROVEN";
    }

    private static String drawn(DeviceRecord record) {
        if (record.showings().isEmpty()) return "not drawn";
        return record.showings().stream()
                .map(s -> s.serves().map(Served::inWords).orElse(s.use().name().toLowerCase(java.util.Locale.ROOT))
                        + " (" + Evidence.briefly(s.place()) + ")")
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private static String seen(DeviceRecord record) {
        List<DeviceRecord.Sighting> all = record.sightings();
        if (all.isEmpty()) return "not traced";
        String first = all.stream()
                .limit(MOST)
                .map(s -> Evidence.briefly(s.observation())
                        + (s.stale() ? ", OUT OF DATE" : "")
                        + (s.observation().method().traces() ? "" : ", no trace"))
                .collect(Collectors.joining(". "));
        return first + (all.size() > MOST ? ". And " + (all.size() - MOST) + " more rows." : ".");
    }
}
