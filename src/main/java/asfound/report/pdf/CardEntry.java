package asfound.report.pdf;

import java.util.List;

/**
 * One device on a door card.
 *
 * @param positions the pole positions in rising order; empty for a device with a name of its own
 * @param label its positions as printed where that is not their number ({@code 1L1}), or its name; else empty
 * @param text what it serves
 * @param rating in amperes as written; empty where not known
 * @param state how far the text can be believed
 */
record CardEntry(List<Integer> positions, String label, String text, String rating, State state) {

    /** How far an entry can be believed, each with a sign of its own. */
    enum State {
        /** Traced by opening, tone or eye, and shown as traced. */
        TRACED("traced in the building"),
        /** As the drawings say, and nobody traced it. */
        DRAWN("drawn, not traced"),
        /** Observations or drawings contradict each other, are out of date, or could not be read. */
        DOUBTFUL("in doubt: do not rely on it");

        final String meaning;

        State(String meaning) {
            this.meaning = meaning;
        }
    }

    CardEntry {
        positions = List.copyOf(positions);
    }

    int lowest() {
        return positions.isEmpty() ? 0 : positions.get(0);
    }

    int highest() {
        return positions.isEmpty() ? 0 : positions.get(positions.size() - 1);
    }
}
