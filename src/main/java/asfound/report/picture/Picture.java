package asfound.report.picture;

import asfound.isolation.Verdict;
import asfound.model.EquipmentKind;
import asfound.network.Device;
import asfound.network.Standing;
import java.util.List;
import java.util.Optional;

/**
 * One sheet of the one-line with a place for everything on it. Supply runs from left to right; lengths are in the
 * picture's own units, about a pixel at natural size, from the top left corner.
 *
 * @param number the sheet's number, from 1
 * @param title what it shows
 * @param symbols equipment, ties and references to other sheets
 * @param wires connections as drawn and as found
 * @param taps devices, each once where it sits in its equipment
 * @param joints where wires of one device or equipment part
 */
public record Picture(
        int number,
        String title,
        double width,
        double height,
        List<Symbol> symbols,
        List<Wire> wires,
        List<Tap> taps,
        List<Joint> joints) {

    public Picture {
        symbols = List.copyOf(symbols);
        wires = List.copyOf(wires);
        taps = List.copyOf(taps);
        joints = List.copyOf(joints);
    }

    /** A sheet that could not be laid out, or not so that anyone could read it. */
    static Picture undrawn(Sheet sheet) {
        return new Picture(sheet.number(), sheet.title(), 0, 0, List.of(), List.of(), List.of(), List.of());
    }

    /** Every sheet holds equipment; where nothing of it is placed, the sheet is not drawn, and the reader must be told. */
    public boolean isDrawn() {
        return !symbols.isEmpty();
    }

    /** How something is drawn. */
    public enum Form {
        /** A box with a bus bar at its right edge, from which its devices tap. */
        BOX,
        /** A symbol in the line with its name beside it. */
        IN_LINE,
        /** The device of a tie between two buses. */
        TIE,
        /** A flag that names another sheet. */
        REFERENCE
    }

    /**
     * A piece of equipment, a tie or a reference.
     *
     * @param name the equipment's one name; for a reference to several pieces of equipment, what stands there in words
     * @param kind what it is
     * @param drawn some drawing shows it
     * @param found an observation met it
     * @param verdict of its isolation; empty for sources, ties and references
     * @param sheet the sheet where it stands in full
     */
    public record Symbol(
            Form form,
            String name,
            EquipmentKind kind,
            String detail,
            boolean drawn,
            boolean found,
            Optional<Verdict.Standing> verdict,
            int sheet,
            double x,
            double y,
            double w,
            double h) {

        /** As much of the name as there is room for; the whole of it stands where the equipment is opened. */
        public String label() {
            return Sizes.fit(name);
        }
    }

    /**
     * A connection.
     *
     * @param path corner points {@code x,y} from the supplying end on
     * @param standing between paper and survey; for several connections together the one that most needs a look
     * @param words the connection in a sentence, for those who hear the picture
     * @param count of connections that the line stands for
     * @param marked carries its standing's mark; of several lines of one connection only one does
     * @param markX where its mark stands
     */
    public record Wire(
            List<Point> path,
            Standing standing,
            boolean normallyOpen,
            String from,
            String to,
            String words,
            int count,
            boolean marked,
            double markX,
            double markY) {

        public Wire {
            path = List.copyOf(path);
        }
    }

    public record Point(double x, double y) {}

    /**
     * A device at an end of a wire.
     *
     * @param label its circuit and, where one is drawn, its rating; says where it is drawn normally open
     * @param open drawn normally open
     * @param arriving at the supplied end of its wire
     */
    public record Tap(Device device, String label, boolean open, boolean arriving, double x, double y) {}

    public record Joint(double x, double y) {}
}
