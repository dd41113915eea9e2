package asfound.network;

import asfound.model.Observation;
import asfound.model.Observation.Relation;
import asfound.model.Place;
import asfound.names.Descriptions;
import asfound.names.Sameness;
import asfound.network.DeviceRecord.Sighting;
import asfound.network.DeviceRecord.Tracing;
import asfound.recordset.Settings;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** What the survey saw, by device, each in order of its row. */
final class Sightings {

    private static final Comparator<Sighting> BY_ROW =
            Comparator.comparing(s -> s.observation().place(), Place.ORDER);

    final Map<Device, List<Sighting>> byDevice = new HashMap<>();
    /** Rows without a circuit, by equipment. */
    final Map<String, List<Sighting>> withoutDevice = new HashMap<>();

    final Map<String, List<Observation>> metBy = new HashMap<>();
    /** Equipment that a row names beside a device that could not be read. */
    final Set<String> unclear = new HashSet<>();

    private final Map<String, LocalDate> modified = new HashMap<>();

    Sightings(
            Names names, DeviceKeys keys, List<Observation> survey, Settings settings, Predicate<String> isEquipment) {
        settings.modified()
                .forEach((name, day) -> modified.merge(names.orItself(name), day, (a, b) -> a.isAfter(b) ? a : b));
        for (Observation o : survey) {
            if (!o.panel().isStated()) continue;
            String panel = names.orItself(o.panel().value().get());
            Optional<Served> serves =
                    o.found().value().map(t -> new Served(t, names.of(t).filter(isEquipment)));
            Sighting s = new Sighting(o, serves, isStale(o, panel));
            if (Names.meets(o)) {
                meet(panel, o);
                serves.flatMap(Served::equipment).filter(e -> !e.equals(panel)).ifPresent(e -> meet(e, o));
            }
            if (o.circuit().isStated())
                byDevice.computeIfAbsent(
                                keys.device(
                                        panel,
                                        keys.meant(panel, o.circuit().value().get(), o.poles())),
                                d -> new ArrayList<>(1))
                        .add(s);
            else if (o.circuit().isUnreadable())
                serves.flatMap(Served::equipment).ifPresent(unclear::add);
            else withoutDevice.computeIfAbsent(panel, p -> new ArrayList<>(1)).add(s);
        }
        byDevice.values().forEach(all -> all.sort(BY_ROW));
        withoutDevice.values().forEach(all -> all.sort(BY_ROW));
        metBy.values().forEach(all -> all.sort(Comparator.comparing(Observation::place, Place.ORDER)));
    }

    private void meet(String equipment, Observation o) {
        metBy.computeIfAbsent(equipment, e -> new ArrayList<>(2)).add(o);
    }

    /** Older than the equipment's latest modification. A row without a readable date cannot be shown to be later. */
    private boolean isStale(Observation o, String panel) {
        LocalDate day = modified.get(panel);
        return day != null && o.date().value().map(d -> d.isBefore(day)).orElse(true);
    }

    /** What the observations of one device amount to. */
    static Tracing tracing(List<Sighting> sightings, Descriptions descriptions) {
        if (sightings.isEmpty()) return Tracing.NOT_SEEN;
        List<Sighting> fresh = sightings.stream().filter(Sighting::traces).toList();
        if (inConflict(fresh, descriptions)) return Tracing.CONFLICT;
        if (fresh.stream().anyMatch(s -> s.observation().relation() != Relation.DOES_NOT_FEED)) return Tracing.TRACED;
        boolean before = sightings.stream().anyMatch(s -> s.stale() && Names.meets(s.observation()));
        return before ? Tracing.STALE : Tracing.NOT_TRACED;
    }

    private static boolean inConflict(List<Sighting> fresh, Descriptions descriptions) {
        Set<String> feeds = new HashSet<>(), not = new HashSet<>();
        boolean nothing = false, missing = false;
        for (Sighting s : fresh) {
            String what =
                    s.serves().map(w -> w.inWords().toUpperCase(Locale.ROOT)).orElse("");
            switch (s.observation().relation()) {
                case FEEDS, FED_BY -> feeds.add(what);
                case DOES_NOT_FEED -> not.add(what);
                case NOTHING -> nothing = true;
                case NO_DEVICE -> missing = true;
            }
        }
        return (nothing && missing)
                || ((nothing || missing) && !feeds.isEmpty())
                || not.stream().anyMatch(n -> feeds.stream().anyMatch(f -> isOneThing(f, n, descriptions)));
    }

    /** One equipment, or one load in whatever words: {@code Vending 488} and {@code vending machine room 488}. */
    private static boolean isOneThing(String a, String b, Descriptions descriptions) {
        return a.equals(b) || descriptions.compare(a, b) == Sameness.SAME;
    }
}
