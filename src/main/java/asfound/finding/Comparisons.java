package asfound.finding;

import asfound.finding.Comparison.Answer;
import asfound.model.Directory;
import asfound.model.Observation;
import asfound.model.Observation.Relation;
import asfound.names.Sameness;
import asfound.network.DeviceRecord;
import asfound.network.DeviceRecord.Sighting;
import asfound.network.Served;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Compares paper and survey at each device. */
final class Comparisons {

    private final Sames sames;
    private final Through through;

    Comparisons(Sames sames, Through through) {
        this.sames = sames;
        this.through = through;
    }

    /** One for each device, in their order. Each is by itself, so that all processors share the work. */
    List<Comparison> of(List<DeviceRecord> devices) {
        return devices.parallelStream().map(this::of).toList();
    }

    private Comparison of(DeviceRecord at) {
        List<Served> drawn = once(at.showings().stream().flatMap(s -> s.serves().stream()));
        List<Served> feeds = seen(at, Relation.FEEDS), fedBy = seen(at, Relation.FED_BY);
        boolean backfed = feeds.isEmpty() && !fedBy.isEmpty();
        List<Served> seen = backfed ? fedBy : feeds;
        return new Comparison(at, answer(at, drawn, seen, backfed), drawn, seen, backfed);
    }

    private Answer answer(DeviceRecord at, List<Served> drawn, List<Served> seen, boolean backfed) {
        if (at.tracing() == DeviceRecord.Tracing.CONFLICT) return Answer.CONFLICT;
        if (at.sightings().stream().noneMatch(Sighting::traces)) return Answer.SILENT;
        if (seen.isEmpty()) return withoutFar(at, drawn);
        if (backfed) return backfed(at, drawn, seen);
        if (drawn.isEmpty()) return undrawn(at);
        return switch (sames.compare(drawn, seen)) {
            case SAME -> Answer.AGREES;
            case UNCLEAR -> Answer.UNCLEAR;
            case DIFFERENT -> Answer.OTHER;
        };
    }

    /** Nothing was seen at the other end: nothing connected, no device, or only what it does not feed. */
    private Answer withoutFar(DeviceRecord at, List<Served> drawn) {
        boolean nothing =
                traced(at).anyMatch(o -> o.relation() == Relation.NOTHING || o.relation() == Relation.NO_DEVICE);
        boolean inUse = at.showings().stream().anyMatch(s -> s.use() == Directory.Use.LOAD);
        if (nothing) return !inUse ? Answer.AGREES : isUnread(at) ? Answer.SILENT : Answer.NOTHING;
        boolean denied = at.sightings().stream()
                .filter(s -> s.traces() && s.observation().relation() == Relation.DOES_NOT_FEED)
                .flatMap(s -> s.serves().stream())
                .anyMatch(s -> drawn.stream().anyMatch(d -> sames.same(d, s)));
        return denied ? Answer.NOT_FED : Answer.SILENT;
    }

    /** Fed from its other end: as drawn where the drawings name that supply, at the device or for the equipment. */
    private Answer backfed(DeviceRecord at, List<Served> drawn, List<Served> seen) {
        if (!drawn.isEmpty() && sames.compare(drawn, seen) != Sameness.DIFFERENT) return Answer.AGREES;
        Set<String> supplies = through.suppliesOf(at.device().in());
        if (seen.stream().allMatch(s -> s.equipment().filter(supplies::contains).isPresent())) return Answer.AGREES;
        if (seen.stream().allMatch(s -> s.equipment().isEmpty())) return Answer.UNCLEAR;
        boolean main = at.showings().isEmpty() && !isNumber(at.device().key());
        if (main) return supplies.isEmpty() ? Answer.UNDRAWN : Answer.OTHER;
        return drawn.isEmpty() ? undrawn(at) : Answer.OTHER;
    }

    private static Answer undrawn(DeviceRecord at) {
        if (isUnread(at)) return Answer.SILENT;
        boolean inUse = at.showings().stream().anyMatch(s -> s.use() == Directory.Use.LOAD);
        return inUse ? Answer.BLANK : Answer.UNDRAWN;
    }

    /** Unreadable is not absent. */
    private static boolean isUnread(DeviceRecord at) {
        return at.showings().stream()
                .flatMap(s -> s.circuit().stream())
                .anyMatch(c -> c.description().isUnreadable());
    }

    /** One thing that several observations write in several ways is one. */
    private List<Served> seen(DeviceRecord at, Relation relation) {
        List<Served> all = once(at.sightings().stream()
                .filter(s -> s.traces() && s.observation().relation() == relation)
                .flatMap(s -> s.serves().stream())
                .filter(s -> !s.text().isBlank()));
        if (all.size() < 2) return all;
        List<Served> different = new ArrayList<>();
        for (Served s : all) if (different.stream().noneMatch(d -> sames.same(d, s))) different.add(s);
        return different;
    }

    private static Stream<Observation> traced(DeviceRecord at) {
        return at.sightings().stream().filter(Sighting::traces).map(Sighting::observation);
    }

    /** Each thing once: equipment by its one name, descriptions by their text. The order of the rows decides nothing. */
    private static List<Served> once(Stream<Served> things) {
        Set<String> met = new LinkedHashSet<>();
        return things.sorted(Comparator.comparing(Served::inWords).thenComparing(Served::text))
                .filter(t -> met.add(t.equipment().map(e -> "=" + e).orElse(t.text())))
                .toList();
    }

    static boolean isNumber(String key) {
        return !key.isEmpty() && key.length() <= 3 && key.chars().allMatch(c -> c >= '0' && c <= '9');
    }
}
