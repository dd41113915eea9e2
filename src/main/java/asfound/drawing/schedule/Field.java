package asfound.drawing.schedule;

/** What a label in a header or below a directory announces. */
enum Field {
    DESIGNATION,
    LOCATION,
    FED_FROM,
    VOLTAGE,
    PHASES,
    WIRES,
    PHASE_WIRE,
    BUS,
    MAIN,
    MAIN_LUGS,
    INTERRUPTING,
    MOUNTING,
    AMPERES,
    LOAD_A,
    LOAD_B,
    LOAD_C,
    LOAD_TOTAL,
    /** A known label of something that a directory does not keep: it ends the value before it. */
    OTHER;

    boolean isTotal() {
        return this == AMPERES || this == LOAD_A || this == LOAD_B || this == LOAD_C || this == LOAD_TOTAL;
    }
}
