package asfound.finding;

import asfound.finding.Correction.Field;
import asfound.model.EquipmentKind;
import asfound.model.Observation;
import asfound.model.OneLine;
import asfound.network.DeviceRecord.Showing;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A conductor that its device does not protect by the usual rules.
 *
 * @param wire the conductor as written
 * @param ratingA the device's rating: as seen where it was, else as drawn
 * @param mostA the most usual protection of the conductor
 */
record Protection(String wire, int ratingA, int mostA, String drawn, String seen, List<Observation> observations) {

    static Optional<Protection> of(Comparison c) {
        if (hasRulesOfItsOwn(c)) return Optional.empty();
        Optional<Integer> rating = ratingOf(c);
        if (rating.isEmpty()) return Optional.empty();
        List<Observation> traces = c.evidence();
        for (Observation o : traces)
            if (o.wire().isStated() && exceeds(o.wire().or(""), rating.get()))
                return Optional.of(
                        at(o.wire().or(""), rating.get(), "", o.wire().or(""), List.of(o)));
        for (Showing s : c.at().showings()) {
            String wire =
                    s.feeder().map(OneLine.Feeder::wire).flatMap(w -> w.value()).orElse("");
            if (exceeds(wire, rating.get())) return Optional.of(at(wire, rating.get(), wire, "", traces));
        }
        return Optional.empty();
    }

    private static Protection at(String wire, int rating, String drawn, String seen, List<Observation> observations) {
        int most = Conductors.largestProtection(wire).orElseThrow();
        return new Protection(wire, rating, most, drawn, seen, observations);
    }

    private static boolean exceeds(String wire, int rating) {
        OptionalInt most = Conductors.largestProtection(wire);
        return most.isPresent() && rating > most.getAsInt();
    }

    private static Optional<Integer> ratingOf(Comparison c) {
        Seen seen = Seen.of(c, Field.RATING, o -> o.ratingA().value().map(Objects::toString));
        if (seen.values().size() == 1)
            return Optional.of(Integer.parseInt(seen.values().get(0)));
        return Drawn.ratings(c).stream().map(Drawn::value).min(Integer::compare);
    }

    private static boolean hasRulesOfItsOwn(Comparison c) {
        return Conductors.hasRulesOfItsOwn(c.drawnInWords() + " " + c.seenInWords())
                || c.evidence().stream().anyMatch(o -> o.kind() == EquipmentKind.MOTOR);
    }
}
