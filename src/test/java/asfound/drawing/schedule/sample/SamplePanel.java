package asfound.drawing.schedule.sample;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An invented panel, as a reader should find it.
 *
 * @param ways the number of positions
 * @param step how far poles of one device stand apart in number: 2 across two sides, 1 down one side
 * @param header printed header values by their names in the output
 * @param circuits in order of their lowest position
 */
record SamplePanel(
        String name,
        int ways,
        int step,
        int phases,
        boolean iec,
        Map<String, String> header,
        List<SampleCircuit> circuits) {

    /** @param use {@code load}, {@code spare} or {@code space}; a space has no rating */
    record SampleCircuit(
            List<Integer> positions, int rating, String description, String use, int vaPerPole, String wire) {

        int poles() {
            return positions.size();
        }

        int first() {
            return positions.get(0);
        }
    }

    Optional<SampleCircuit> at(int position) {
        return circuits.stream().filter(c -> c.positions().contains(position)).findFirst();
    }

    /** A, B, C by position: across two sides in pairs, down one side or by ways one by one. */
    int phaseOf(int position) {
        return step == 2 ? ((position - 1) / 2) % phases : (position - 1) % phases;
    }
}
