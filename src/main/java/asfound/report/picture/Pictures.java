package asfound.report.picture;

import asfound.isolation.Verdict;
import asfound.model.Directory;
import asfound.model.Stated;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.network.Equipment;
import asfound.network.Network;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The one-line of a whole network, sheet by sheet. */
public final class Pictures {

    /** A sheet with more connections than this is a thicket that nobody can read, and takes minutes to lay out. */
    static final int MOST_CONNECTIONS = 250;

    private final Map<String, Verdict.Standing> verdicts = new HashMap<>();
    private final Map<String, Integer> sheetOf = new HashMap<>();
    private final Map<String, String> voltages = new HashMap<>();
    private final Map<Device, String> labels = new HashMap<>();

    private Pictures() {}

    /** Sheets in order of their numbers; none where the network holds no equipment. */
    public static List<Picture> of(Network network, List<Verdict> verdicts) {
        Pictures pictures = new Pictures();
        verdicts.forEach(v -> pictures.verdicts.put(v.equipment(), v.standing()));
        network.devices().forEach(pictures::learn);
        List<Sheet> sheets = Sheeting.of(network);
        for (Sheet sheet : sheets) for (Equipment e : sheet.equipment()) pictures.sheetOf.put(e.name(), sheet.number());
        GraphBuilder builder = new GraphBuilder(pictures.verdicts, pictures.sheetOf, pictures::detail);
        List<Picture> result = new ArrayList<>();
        for (Sheet sheet : sheets) result.add(pictures.draw(sheet, builder));
        return result;
    }

    /** The picture is an aid: no network, however made, may keep the rest of the report from being written for want of it. */
    private Picture draw(Sheet sheet, GraphBuilder builder) {
        if (sheet.connections().size() > MOST_CONNECTIONS) return Picture.undrawn(sheet);
        try {
            return Layout.of(sheet, builder.build(sheet), this::label);
        } catch (RuntimeException | StackOverflowError e) {
            return Picture.undrawn(sheet);
        }
    }

    private void learn(DeviceRecord record) {
        for (DeviceRecord.Showing showing : record.showings()) {
            showing.directory()
                    .map(d -> d.header().voltage())
                    .flatMap(Stated::value)
                    .ifPresent(v -> voltages.putIfAbsent(record.device().in(), v.inWords() + " V"));
            Optional<String> rating = showing.circuit()
                    .map(Directory.Circuit::ratingA)
                    .or(() -> showing.feeder().map(f -> f.ratingA()))
                    .flatMap(Stated::value)
                    .map(a -> a + " A");
            rating.ifPresent(
                    r -> labels.putIfAbsent(record.device(), record.device().key() + " · " + r));
        }
    }

    private String detail(Equipment e) {
        String kind = e.kind().word();
        String voltage = voltages.getOrDefault(e.name(), "");
        String both = kind.isEmpty() || voltage.isEmpty() ? kind + voltage : kind + ", " + voltage;
        return e.drawn() ? both : both + (both.isEmpty() ? "" : ", ") + "not drawn";
    }

    private String label(Device device) {
        return labels.getOrDefault(device, device.key());
    }
}
