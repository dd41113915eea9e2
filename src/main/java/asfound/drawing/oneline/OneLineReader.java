package asfound.drawing.oneline;

import asfound.model.OneLine;
import asfound.model.Stated;
import asfound.recordset.GridRow;
import asfound.recordset.Limits;
import asfound.recordset.ProblemList;
import asfound.recordset.RowReader;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import asfound.recordset.Table;
import asfound.recordset.TableReading;
import asfound.recordset.Tables;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads feeder and equipment tables; one file may hold either or both.
 *
 * <p>A row that lacks an end or a name is reported and not used. A tie is what a row's kind, note or device name calls one;
 * that an open connection of two switchboards is one too is settled where the kinds of both are known.
 */
public final class OneLineReader {

    private static final Pattern TIE =
            Pattern.compile("\\b(?:bus[ -]?)?ties?\\b|\\bbus[ -]?coupler\\b|\\btie[ -]?\\d", Pattern.CASE_INSENSITIVE);

    private OneLineReader() {}

    public static OneLineReading read(Source source, Settings settings, Limits limits) {
        TableReading reading = Tables.read(source, settings, limits);
        ProblemList problems = new ProblemList(source.file());
        problems.addAll(reading.problems());
        List<OneLine.Feeder> feeders = new ArrayList<>();
        List<OneLine.Listed> equipment = new ArrayList<>();
        for (Table table : reading.tables())
            for (GridRow cells : table.rows()) {
                RowReader row = new RowReader(table, cells, problems);
                switch (table.kind()) {
                    case FEEDERS -> feeder(row).ifPresent(feeders::add);
                    case EQUIPMENT -> listed(row).ifPresent(equipment::add);
                    default ->
                        row.say(
                                "rows of another table",
                                "The row belongs to a table that is neither feeders nor equipment; it was not used.",
                                "Put that table into a file of its own.");
                }
            }
        return new OneLineReading(new OneLine(feeders, equipment), problems.all(), reading.rows());
    }

    private static Optional<OneLine.Feeder> feeder(RowReader row) {
        Stated<String> from = row.text("from"), to = row.text("to");
        if (from.isBlank() || to.isBlank()) {
            row.say(
                    "feeders that lack an end",
                    "The feeder names no " + (from.isBlank() ? "'from'" : "'to'") + "; it was not used.",
                    "Write both ends of the feeder.");
            return Optional.empty();
        }
        String note = row.plain("note");
        boolean tie = TIE.matcher(note).find()
                || TIE.matcher(row.plain("kind")).find()
                || TIE.matcher(row.plain("device")).find();
        return Optional.of(new OneLine.Feeder(
                from,
                row.circuit("device"),
                to,
                row.amperes("rating_a"),
                row.poles("poles"),
                row.voltage("voltage"),
                row.text("wire"),
                row.number("length_ft"),
                isOpen(row),
                tie,
                row.plain("sheet"),
                note,
                row.place()));
    }

    /** Drawn open or closed: either way it can be the other, so a word that is not known costs nothing but its report. */
    private static boolean isOpen(RowReader row) {
        String word = row.plain("normally").toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
        switch (word) {
            case "open", "no", "normallyopen", "o", "opened", "off" -> {
                return true;
            }
            case "", "closed", "nc", "normallyclosed", "c", "close", "on" -> {
                return false;
            }
            default -> {
                row.say(
                        "positions that are not known",
                        "'" + RowReader.shown(row.plain("normally")) + "' in '" + row.header("normally")
                                + "' is neither open nor closed; it was taken as closed.",
                        "Write open or closed.");
                return false;
            }
        }
    }

    private static Optional<OneLine.Listed> listed(RowReader row) {
        Stated<String> name = row.text("name");
        if (name.isBlank()) {
            row.say("equipment without a name", "The row names no equipment; it was not used.", "Write its name.");
            return Optional.empty();
        }
        String mains = row.plain("main_a").toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
        boolean lugs = mains.matches("mlo|mainlugs|mainlugsonly|lugs|lugsonly|none|na|");
        return Optional.of(new OneLine.Listed(
                name,
                row.kind("kind"),
                row.voltage("voltage"),
                row.amperes("bus_a"),
                lugs ? Stated.blank(row.place()) : row.amperes("main_a"),
                row.text("fed_from"),
                row.text("location"),
                row.plain("sheet"),
                row.plain("note"),
                row.place()));
    }
}
