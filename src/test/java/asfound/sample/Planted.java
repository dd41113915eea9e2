package asfound.sample;

import asfound.finding.Finding;
import asfound.network.Device;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * An event planted in a random building, and what an audit is to say of it.
 *
 * @param kind the kind of finding when everything is traced
 * @param says what the traced devices can reveal of it: exactly these findings and no others
 */
public record Planted(String kind, Function<Set<Device>, List<Expected>> says) {

    /**
     * One finding that is expected.
     *
     * @param parts equipment and devices ({@code MDP/7}) that it must name
     */
    public record Expected(String kind, Set<String> parts) {

        public boolean isMetBy(Finding f) {
            List<String> named = new ArrayList<>();
            f.event().parts().forEach(p -> named.add(bare(p.inWords())));
            return f.kind().equals(kind)
                    && named.containsAll(parts.stream().map(Expected::bare).toList());
        }

        /** What no drawing shows goes by the surveyor's writing. */
        private static String bare(String part) {
            return part.toUpperCase(java.util.Locale.ROOT).replaceAll("[^A-Z0-9/]", "");
        }
    }

    static Expected expect(String kind, String... parts) {
        return new Expected(kind, Set.of(parts));
    }
}
