package asfound.trust;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How much of what is drawn was traced.
 *
 * @param building all panels together
 * @param panels each panel, in natural order of its name
 * @param byMethod traced entries by the method that traced them (the strongest where there are several), strongest first
 * @param byYear traced entries by the year of their latest trace, latest first; {@code no date} last
 * @param statement what the traced part says about the rest, in words; that it says nothing, where the circuits were not
 *     chosen at random
 */
public record Coverage(
        Share building,
        List<Share> panels,
        Map<String, Integer> byMethod,
        Map<String, Integer> byYear,
        String statement) {

    public Coverage {
        panels = List.copyOf(panels);
        byMethod = Collections.unmodifiableMap(new LinkedHashMap<>(byMethod));
        byYear = Collections.unmodifiableMap(new LinkedHashMap<>(byYear));
    }

    /**
     * Coverage of one panel or of the building.
     *
     * @param panel its one name; empty for the building
     * @param drawn entries drawn with a device
     * @param traced of these, traced (the contract's definition)
     * @param wrong of the traced, found to feed something else than drawn
     * @param bound95 upper 95 % bound on the share of wrong entries among the untraced; empty where no bound holds
     */
    public record Share(String panel, int drawn, int traced, int wrong, OptionalDouble bound95) {

        /** From 0 to 1; 0 where nothing is drawn. */
        public double share() {
            return drawn == 0 ? 0 : traced / (double) drawn;
        }
    }
}
