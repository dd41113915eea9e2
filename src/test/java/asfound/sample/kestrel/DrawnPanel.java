package asfound.sample.kestrel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A panel as the drawings of Kestrel Wharf show it.
 *
 * @param mainA the main breaker's rating in amperes; empty for main lugs only
 * @param size how many pole positions it has
 * @param printedB what is added to the printed sums of phase B and of all: 0 but for the one sheet whose sums do not follow
 */
record DrawnPanel(
        String name,
        String location,
        String fedFrom,
        String voltage,
        int busA,
        Optional<Integer> mainA,
        int interruptingKA,
        String mounting,
        int size,
        int printedB,
        List<DrawnCircuit> circuits) {

    /** What a directory shows at one device, spare or space. */
    record DrawnCircuit(int position, int poles, int ratingA, String description, List<Integer> poleVA) {

        boolean isSpace() {
            return ratingA == 0;
        }

        boolean isSpare() {
            return description.equals("SPARE");
        }

        boolean isLoad() {
            return !isSpace() && !isSpare();
        }

        List<Integer> positions() {
            List<Integer> all = new ArrayList<>();
            for (int pole = 0; pole < poles; pole++) all.add(position + 2 * pole);
            return all;
        }

        /** {@code 7-9-11}. */
        String inWords() {
            return String.join("-", positions().stream().map(String::valueOf).toList());
        }
    }

    DrawnCircuit at(int position) {
        return circuits.stream()
                .filter(c -> c.position() == position)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(name + " has no device at " + position));
    }

    /** Connected load in VA on phase 0, 1 or 2 (A, B, C). */
    int phaseVA(int phase) {
        int sum = 0;
        for (DrawnCircuit c : circuits)
            for (int pole = 0; pole < c.poles(); pole++)
                if (phase(c.position() + 2 * pole) == phase) sum += c.poleVA().get(pole);
        return sum;
    }

    int totalVA() {
        return phaseVA(0) + phaseVA(1) + phaseVA(2);
    }

    int lineVolts() {
        return Integer.parseInt(voltage.substring(0, 3));
    }

    long amperes() {
        return Math.round(totalVA() / (Math.sqrt(3) * lineVolts()));
    }

    /** Phase of a position in a three-phase panel, by the usual order of the bus: rows A, B, C and again. */
    static int phase(int position) {
        return ((position - 1) / 2) % 3;
    }
}
