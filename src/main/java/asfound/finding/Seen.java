package asfound.finding;

import asfound.finding.Correction.Field;
import asfound.model.Observation;
import asfound.model.Observation.Relation;
import asfound.model.Stated;
import asfound.model.Voltage;
import asfound.network.DeviceRecord.Sighting;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What tracing observations saw of one property of a device.
 *
 * @param what rating, poles or phase
 * @param values each different value once, as written
 * @param observations those that state it
 */
record Seen(Field what, List<String> values, List<Observation> observations) {

    /** Some property of the device itself was seen or drawn with its conductor: else there is nothing to compare. */
    static boolean anything(Comparison c) {
        for (Sighting s : c.at().sightings()) {
            Observation o = s.observation();
            boolean states = !o.ratingA().isBlank()
                    || !o.poles().isBlank()
                    || !o.voltage().isBlank();
            if (states || !o.phase().isBlank() || !o.wire().isBlank()) return true;
            if (o.circuit().value().filter(r -> r.positions().size() > 1).isPresent()) return true;
        }
        return c.at().showings().stream().anyMatch(s -> s.feeder().isPresent());
    }

    /** Rating, poles and phase, as far as any observation that traces the device states them. */
    static Stream<Seen> ofAll(Comparison c) {
        return Stream.of(
                of(c, Field.RATING, o -> text(o.ratingA())),
                of(c, Field.POLES, o -> text(o.poles())),
                of(c, Field.PHASE, o -> phases(o.phase())));
    }

    static Seen of(Comparison c, Field what, Function<Observation, Optional<String>> value) {
        List<Observation> observations = c.at().sightings().stream()
                .filter(Sighting::traces)
                .map(Sighting::observation)
                .filter(o -> value.apply(o).isPresent())
                .toList();
        return new Seen(
                what,
                observations.stream()
                        .map(value)
                        .flatMap(Optional::stream)
                        .distinct()
                        .toList(),
                observations);
    }

    private static <T> Optional<String> text(Stated<T> stated) {
        return stated.value().map(Object::toString);
    }

    /** Phase letters in order: {@code B}, {@code AC}; L1, L2, L3 are A, B, C. Empty where it names none. */
    static Optional<String> phases(Stated<String> stated) {
        String t = stated.or("").toUpperCase(java.util.Locale.ROOT);
        t = t.replace("L1", "A").replace("L2", "B").replace("L3", "C").replaceAll("\\b(PHASE|PH|AND|Ø)\\b", "");
        String letters = t.replaceAll("[^A-Z]", "");
        if (!letters.matches("[ABC]{1,3}")) return Optional.empty();
        TreeSet<String> sorted = new TreeSet<>(Arrays.asList(letters.split("")));
        return Optional.of(String.join("", sorted));
    }

    /** The first voltage that any of the observations states. */
    static Optional<Voltage> voltage(Comparison c) {
        return c.evidence().stream().flatMap(o -> o.voltage().value().stream()).findFirst();
    }

    /** {@code feeds LP-2A, opened on 2024-05-02}. */
    static String inWords(Observation o) {
        boolean far = o.relation() != Relation.NOTHING && o.relation() != Relation.NO_DEVICE;
        return o.relation().word()
                + (far ? " " + o.found().or("?") : "")
                + (o.method() == Observation.Method.UNKNOWN
                        ? ""
                        : ", " + o.method().word())
                + o.date().value().map(d -> " on " + d).orElse("")
                + (o.by().isBlank() ? "" : " by " + o.by());
    }
}
