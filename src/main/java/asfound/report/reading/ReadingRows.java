package asfound.report.reading;

import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.model.Directory.Header;
import asfound.model.Place;
import asfound.model.Stated;
import asfound.report.table.Rows;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Readings as a table, one row for each circuit. */
public final class ReadingRows {

    private static final List<String> COLUMNS = List.of(
            "panel",
            "circuit",
            "label",
            "poles",
            "rating_a",
            "description",
            "use",
            "load_va",
            "fed_from",
            "voltage",
            "location",
            "confidence",
            "file",
            "place");

    private ReadingRows() {}

    public static Rows of(Readings readings) {
        List<List<String>> rows = new ArrayList<>();
        for (Directory d : readings.directories()) for (Circuit c : d.circuits()) rows.add(row(d, c));
        return new Rows(COLUMNS, rows);
    }

    private static List<String> row(Directory d, Circuit c) {
        Header h = d.header();
        return List.of(
                d.panel(),
                c.positions().stream().map(String::valueOf).collect(Collectors.joining("-")),
                c.label(),
                Integer.toString(c.poles()),
                written(c.ratingA()),
                written(c.description()),
                c.use().name().toLowerCase(Locale.ROOT),
                c.totalVA().value().map(ReadingRows::figure).orElse(""),
                written(h.fedFrom()),
                h.voltage().value().map(v -> v.inWords()).orElse(""),
                written(h.location()),
                String.format(Locale.ROOT, "%.2f", d.confidence()),
                d.place().file(),
                where(c.place()));
    }

    /** The value, or the text as it stands in brackets where it could not be understood. */
    private static String written(Stated<?> stated) {
        return stated.value().map(Object::toString).orElse(stated.isUnreadable() ? "[" + stated.raw() + "]" : "");
    }

    private static String figure(double va) {
        return va == Math.rint(va) ? Long.toString((long) va) : Double.toString(va);
    }

    private static String where(Place place) {
        return place.within();
    }
}
