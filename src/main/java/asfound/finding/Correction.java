package asfound.finding;

import asfound.model.Place;

/**
 * One change to one value on one drawing, exact enough to be applied without further thought.
 *
 * @param place the drawing, page and box, or the row, that reads wrong; the file and page alone where an entry is to be added
 * @param panel the panel or equipment whose entry it is
 * @param circuit positions or device as written, empty for a header or equipment row
 * @param field which value
 * @param reads what stands there now; empty where nothing does
 * @param shouldRead what should stand there; empty where the entry is to be taken out
 * @param why one sentence
 */
public record Correction(
        Place place, String panel, String circuit, Field field, String reads, String shouldRead, String why) {

    /** What a correction changes. */
    public enum Field {
        /** Description of a directory's entry. */
        DESCRIPTION("description"),
        /** Load, spare or space. */
        USE("use"),
        RATING("rating"),
        POLES("poles"),
        /** The positions of an entry. */
        POSITIONS("positions"),
        VOLTAGE("voltage"),
        PHASE("phase"),
        WIRE("wire"),
        LOAD("load"),
        TOTAL("total"),
        /** {@code Fed from} of a directory's header or of an equipment row. */
        FED_FROM("fed from"),
        /** The designation of a panel or equipment. */
        DESIGNATION("designation"),
        /** The supplied end of a feeder row. */
        FEEDER_TO("to"),
        /** The device of a feeder row. */
        FEEDER_DEVICE("device"),
        /** The supplying end of a feeder row. */
        FEEDER_FROM("from"),
        /** A whole feeder row to add ({@code shouldRead}: from, device, to) or take out. */
        FEEDER_ROW("feeder"),
        /** A whole equipment row to add ({@code shouldRead}: name, kind) or take out. */
        EQUIPMENT_ROW("equipment");

        private final String word;

        Field(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
