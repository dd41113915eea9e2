package asfound.finding;

import asfound.model.Directory;
import asfound.model.Place;
import asfound.model.Stated;
import asfound.model.Voltage;
import asfound.network.DeviceRecord.Showing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One value of a device as one drawing states it.
 *
 * @param showing the drawing's entry or row
 */
record Drawn<T>(Stated<T> stated, Showing showing) {

    static List<Drawn<Integer>> ratings(Comparison c) {
        List<Drawn<Integer>> all = new ArrayList<>();
        for (Showing s : c.at().showings()) {
            s.circuit().ifPresent(e -> add(all, e.ratingA(), s));
            s.feeder().ifPresent(f -> add(all, f.ratingA(), s));
        }
        return all;
    }

    /** Poles of entries and rows; an entry that is a space holds no device and has none. */
    static List<Drawn<Integer>> poles(Comparison c) {
        List<Drawn<Integer>> all = new ArrayList<>();
        for (Showing s : c.at().showings()) {
            s.circuit()
                    .filter(e -> e.use() != Directory.Use.SPACE)
                    .ifPresent(e -> add(all, Stated.of(e.poles(), Integer.toString(e.poles()), e.place()), s));
            s.feeder().ifPresent(f -> add(all, f.poles(), s));
        }
        return all;
    }

    /** The voltage that a header states for its panel, or a feeder's row for the feeder. */
    static List<Drawn<Voltage>> voltages(Comparison c) {
        List<Drawn<Voltage>> all = new ArrayList<>();
        for (Showing s : c.at().showings()) {
            if (s.circuit().isPresent())
                s.directory().ifPresent(d -> add(all, d.header().voltage(), s));
            s.feeder().ifPresent(f -> add(all, f.voltage(), s));
        }
        return all;
    }

    /** Every voltage that a drawing states for a board: its headers and its rows on the one-line. */
    static List<Voltage> voltages(Facts facts, String board) {
        List<Voltage> all = new ArrayList<>();
        for (Directory d : facts.index().paper().directories(board))
            d.header().voltage().value().ifPresent(all::add);
        for (var e : facts.index().paper().listed(board)) e.voltage().value().ifPresent(all::add);
        return all;
    }

    private static <T> void add(List<Drawn<T>> all, Stated<T> stated, Showing showing) {
        if (stated.isStated()) all.add(new Drawn<>(stated, showing));
    }

    T value() {
        return stated.value().orElseThrow();
    }

    Place place() {
        return showing.place();
    }

    Optional<Directory> directory() {
        return showing.directory();
    }

    /** {@code Lp2.pdf, page 1: 100}. */
    String inWords() {
        return place().inWords() + ": " + stated.raw().strip();
    }
}
