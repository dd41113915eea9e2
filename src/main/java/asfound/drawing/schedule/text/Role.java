package asfound.drawing.schedule.text;

/** What a column of a schedule tells of a circuit. */
public enum Role {
    POSITION,
    DESCRIPTION,
    RATING,
    POLES,
    /** Rating and poles in one column: {@code 20/1}, {@code 20A-1P}. */
    DEVICE,
    /** The phase that a position is on. */
    PHASE,
    LOAD,
    LOAD_A,
    LOAD_B,
    LOAD_C,
    /** Conductor, cable, conduit or earth. */
    WIRE,
    /** The panel that a row of a combined list belongs to. */
    PANEL,
    /** In one word for each position whether it has a load, a spare device or a space. */
    USE,
    /** Anything else that has a heading of its own. */
    OTHER;

    public boolean isPhaseLoad() {
        return this == LOAD_A || this == LOAD_B || this == LOAD_C;
    }

    public boolean isLoad() {
        return this == LOAD || isPhaseLoad();
    }
}
