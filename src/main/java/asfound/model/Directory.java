package asfound.model;

import java.util.List;

/**
 * A panel's circuit directory as one drawing shows it.
 *
 * @param panel the designation as printed, tidied; the file's or sheet's own name where none is printed
 * @param header what the header block states
 * @param circuits one entry for each device, spare or space, in order of their lowest position
 * @param totals what the sums below the directory state
 * @param place the file and page (or sheet) where the directory begins
 * @param confidence from 0 to 1: how well the reading explains the page; below {@link #DOUBTFUL} it is shown to the user
 *     and keeps the equipment from {@code agrees}
 * @param unread positions that are there and could not be read, each reported as a problem too
 * @param problems what could not be read or explained in this directory
 */
public record Directory(
        String panel,
        Header header,
        List<Circuit> circuits,
        Totals totals,
        Place place,
        double confidence,
        List<Integer> unread,
        List<Problem> problems) {

    /** Readings with less confidence than this are doubtful: a person must look. */
    public static final double DOUBTFUL = 0.7;

    public Directory {
        circuits = List.copyOf(circuits);
        unread = List.copyOf(unread);
        problems = List.copyOf(problems);
    }

    public boolean isDoubtful() {
        return confidence < DOUBTFUL || !unread.isEmpty();
    }

    /** How the panel's mains are made. */
    public enum Mains {
        BREAKER,
        LUGS
    }

    /**
     * What the header block states; each value blank where it is not printed.
     *
     * @param fedFrom the supply as printed: {@code MDP CKT 7}, {@code MDP-7}, {@code T-3}
     * @param busA bus rating in amperes
     * @param mainA main breaker's rating in amperes; blank for main lugs only
     * @param interruptingKA interrupting rating in kiloamperes
     */
    public record Header(
            Stated<String> designation,
            Stated<String> location,
            Stated<String> fedFrom,
            Stated<Voltage> voltage,
            Stated<Integer> phases,
            Stated<Integer> wires,
            Stated<Integer> busA,
            Stated<Integer> mainA,
            Stated<Mains> mains,
            Stated<Double> interruptingKA,
            Stated<String> mounting) {

        /** With what another header says of which this one says nothing. */
        public Header completed(Header other) {
            return new Header(
                    designation.isBlank() ? other.designation : designation,
                    location.isBlank() ? other.location : location,
                    fedFrom.isBlank() ? other.fedFrom : fedFrom,
                    voltage.isBlank() ? other.voltage : voltage,
                    phases.isBlank() ? other.phases : phases,
                    wires.isBlank() ? other.wires : wires,
                    busA.isBlank() ? other.busA : busA,
                    mainA.isBlank() ? other.mainA : mainA,
                    mains.isBlank() ? other.mains : mains,
                    interruptingKA.isBlank() ? other.interruptingKA : interruptingKA,
                    mounting.isBlank() ? other.mounting : mounting);
        }

        public static Header empty() {
            return of(Stated.blank());
        }

        /** Of which nothing but the name is known. */
        public static Header of(Stated<String> designation) {
            return new Header(
                    designation,
                    Stated.blank(),
                    Stated.blank(),
                    Stated.blank(),
                    Stated.blank(),
                    Stated.blank(),
                    Stated.blank(),
                    Stated.blank(),
                    Stated.blank(),
                    Stated.blank(),
                    Stated.blank());
        }
    }

    /** What an entry is there for. */
    public enum Use {
        LOAD,
        SPARE,
        SPACE
    }

    /**
     * One entry of the directory.
     *
     * @param positions the pole positions in rising order, at least one
     * @param label the positions as printed where that is not their number ({@code 1L1}); empty otherwise
     * @param poles the number of poles
     * @param ratingA trip rating in amperes
     * @param description what the device serves; blank for a device without a description
     * @param loadVA connected load in VA by phase, in the order A, B, C; blank where none is printed for that phase. One
     *     element alone is the sum over the poles where the drawing gives no phases
     * @param place the file, page and box (or row) of the entry
     */
    public record Circuit(
            List<Integer> positions,
            String label,
            int poles,
            Stated<Integer> ratingA,
            Stated<String> description,
            Use use,
            List<Stated<Double>> loadVA,
            Place place) {

        public Circuit {
            positions = List.copyOf(positions);
            loadVA = List.copyOf(loadVA);
            if (positions.isEmpty()) throw new IllegalArgumentException("a circuit without a position");
        }

        public int position() {
            return positions.get(0);
        }

        public CircuitRef ref() {
            return CircuitRef.of(positions);
        }

        /** The sum over the poles in VA; blank where no load is printed, unreadable where any part is. */
        public Stated<Double> totalVA() {
            if (loadVA.stream().allMatch(Stated::isBlank)) return Stated.blank(place);
            String raw = String.join(
                    " + ",
                    loadVA.stream().filter(l -> !l.isBlank()).map(Stated::raw).toList());
            if (loadVA.stream().anyMatch(Stated::isUnreadable)) return Stated.unreadable(raw, place);
            return Stated.of(loadVA.stream().mapToDouble(l -> l.or(0.0)).sum(), raw, place);
        }
    }

    /**
     * The sums that the drawing itself states.
     *
     * @param byPhaseVA connected load by phase in VA, in the order A, B, C; empty where none is printed
     * @param totalVA connected load in VA
     * @param amperes the current that the drawing states for the total
     */
    public record Totals(List<Stated<Double>> byPhaseVA, Stated<Double> totalVA, Stated<Double> amperes) {

        public Totals {
            byPhaseVA = List.copyOf(byPhaseVA);
        }

        public static Totals none() {
            return new Totals(List.of(), Stated.blank(), Stated.blank());
        }
    }
}
