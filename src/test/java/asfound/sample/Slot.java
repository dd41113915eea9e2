package asfound.sample;

import asfound.model.CircuitRef;
import asfound.model.Directory.Use;
import asfound.network.Device;
import java.util.ArrayList;
import java.util.List;

/** One place for a device in a board: what the drawings show there, and what is there in truth. Changed by planting. */
final class Slot {

    final Board in;
    List<Integer> positions;
    int rating;

    // as drawn
    Use use = Use.SPARE;
    Load drawnLoad;
    Board drawnTo;
    /** The text of the entry where it is not written from load or board. */
    String drawnText;

    Integer oneLineRating;
    double[] loadVA = {};

    // in truth
    Load load;
    Board to;
    boolean nothing;
    boolean noDevice;
    Board backfedBy;
    Integer trueRating;
    Integer truePoles;
    String trueVoltage;
    String truePhase;

    /** Used by a planted event; no other may touch it. */
    boolean taken;
    /** Traced whatever the coverage. */
    boolean alwaysTraced;

    final List<String> extraRows = new ArrayList<>();

    Slot(Board in, List<Integer> positions, int rating) {
        this.in = in;
        this.positions = positions;
        this.rating = rating;
    }

    Device device() {
        return new Device(in.name, key());
    }

    String key() {
        return Integer.toString(positions.get(0));
    }

    String circuit() {
        return CircuitRef.of(positions).inWords();
    }

    int poles() {
        return positions.size();
    }

    /** Drawn with a load or a board, and so in truth. */
    boolean isOrdinary() {
        return !taken && use == Use.LOAD && drawnText == null;
    }

    boolean isBranch() {
        return isOrdinary() && drawnTo == null && poles() == 1;
    }

    boolean isFreeSpare() {
        return !taken && use == Use.SPARE;
    }

    void draw(Load thing) {
        use = Use.LOAD;
        drawnLoad = thing;
        load = thing;
    }

    void draw(Board board) {
        use = Use.LOAD;
        drawnTo = board;
        to = board;
        board.parent = this;
    }

    Slot take() {
        taken = true;
        return this;
    }
}
