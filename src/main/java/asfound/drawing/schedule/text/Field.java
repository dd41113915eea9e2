package asfound.drawing.schedule.text;

import java.util.Locale;

/** What a label in a header or below a directory announces. */
public enum Field {
    DESIGNATION,
    LOCATION,
    FED_FROM,
    VOLTAGE,
    PHASES,
    WIRES,
    PHASE_WIRE,
    BUS,
    MAIN,
    /** An isolator breaks no overcurrent: it is the main device only where a breaker stands behind its label. */
    ISOLATOR,
    MAIN_LUGS,
    /** The rating of the mains: the main breaker's, or the bus's where the breaker has a label of its own. */
    MAINS_RATING,
    /** How many positions the panel has. */
    POSITIONS,
    INTERRUPTING,
    MOUNTING,
    AMPERES,
    LOAD_A,
    LOAD_B,
    LOAD_C,
    LOAD_TOTAL,
    /** What a tester measured or an engineer calculated for where the panel stands, and no rating of what is in it. */
    FAULT_CURRENT,
    /** A known label of something that a directory does not keep: it ends the value before it. */
    OTHER;

    /** In the words of a message. */
    public String words() {
        return this == MAINS_RATING ? "main" : name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Its value is a figure, or a word of its own kind; in the name of a place any words may stand. */
    public boolean isOfFigures() {
        return switch (this) {
            case VOLTAGE, PHASES, WIRES, PHASE_WIRE, BUS, MAIN, ISOLATOR, INTERRUPTING -> true;
            default -> false;
        };
    }

    /** A directory keeps it. */
    public boolean isKept() {
        return this != OTHER && this != FAULT_CURRENT;
    }

    public boolean isTotal() {
        return this == AMPERES || this == LOAD_A || this == LOAD_B || this == LOAD_C || this == LOAD_TOTAL;
    }
}
