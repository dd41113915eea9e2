package asfound.trust;

import asfound.model.Natural;
import asfound.model.Observation;
import asfound.model.Observation.Method;
import asfound.network.DeviceRecord;
import asfound.network.Network;
import asfound.recordset.Settings;
import asfound.trust.Coverage.Share;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Counts what was traced, and says what that says about the rest. */
public final class Coverages {

    static final double CONFIDENCE = 0.95;
    private static final List<Method> STRONGEST_FIRST = List.of(Method.OPENED, Method.TONE, Method.VISUAL);

    private Coverages() {}

    public static Coverage of(Network network, Settings settings) {
        boolean random =
                settings.chosen().filter(c -> c == Settings.Chosen.RANDOM).isPresent();
        Entries entries = new Entries(network, settings);
        Map<String, List<DeviceRecord>> byPanel = new TreeMap<>(Natural.ORDER);
        List<DeviceRecord> drawn = entries.drawn();
        for (DeviceRecord entry : drawn)
            byPanel.computeIfAbsent(entry.device().in(), p -> new ArrayList<>()).add(entry);
        List<Share> panels = new ArrayList<>();
        byPanel.forEach((panel, its) -> panels.add(share(panel, its, entries, random)));
        Share building = share("", drawn, entries, random);
        return new Coverage(
                building, panels, byMethod(drawn), byYear(drawn), Statements.of(building, settings.chosen()));
    }

    private static Share share(String panel, List<DeviceRecord> its, Entries entries, boolean random) {
        int traced = (int) its.stream().filter(Entries::isTraced).count();
        int wrong = (int) its.stream().filter(entries::isWrong).count();
        OptionalDouble bound = random && traced > 0
                ? OptionalDouble.of(FiniteBound.shareOfUntraced(its.size(), traced, wrong, CONFIDENCE))
                : OptionalDouble.empty();
        return new Share(panel, its.size(), traced, wrong, bound);
    }

    private static Map<String, Integer> byMethod(List<DeviceRecord> drawn) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Method method : STRONGEST_FIRST) counts.put(method.word(), 0);
        for (DeviceRecord entry : drawn)
            if (Entries.isTraced(entry))
                traces(entry)
                        .map(Observation::method)
                        .min(Comparator.comparingInt(STRONGEST_FIRST::indexOf))
                        .ifPresent(m -> counts.merge(m.word(), 1, Integer::sum));
        return counts;
    }

    private static Map<String, Integer> byYear(List<DeviceRecord> drawn) {
        Map<Integer, Integer> years = new TreeMap<>(Comparator.reverseOrder());
        int undated = 0;
        for (DeviceRecord entry : drawn) {
            if (!Entries.isTraced(entry)) continue;
            Optional<LocalDate> latest =
                    traces(entry).flatMap(o -> o.date().value().stream()).max(Comparator.naturalOrder());
            if (latest.isPresent()) years.merge(latest.get().getYear(), 1, Integer::sum);
            else undated++;
        }
        Map<String, Integer> counts = new LinkedHashMap<>();
        years.forEach((year, n) -> counts.put(Integer.toString(year), n));
        if (undated > 0) counts.put("no date", undated);
        return counts;
    }

    private static Stream<Observation> traces(DeviceRecord entry) {
        return entry.sightings().stream().filter(DeviceRecord.Sighting::traces).map(DeviceRecord.Sighting::observation);
    }
}
