package asfound.survey;

import asfound.model.Observation;
import asfound.model.Observation.Method;
import asfound.model.Observation.Relation;
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

/**
 * Reads a survey: one row, one observation.
 *
 * <p>A row that names no panel, names a relation that is not known, or feeds something that it does not name, is reported
 * and not used: taking it for anything would be a guess. A method that is not known proves nothing.
 */
public final class SurveyReader {

    private SurveyReader() {}

    public static SurveyReading read(Source source, Settings settings, Limits limits) {
        TableReading reading = Tables.read(source, settings, limits);
        ProblemList problems = new ProblemList(source.file());
        problems.addAll(reading.problems());
        List<Observation> observations = new ArrayList<>();
        for (Table table : reading.tables()) {
            if (table.kind() == Source.Kind.SURVEY)
                for (GridRow row : table.rows())
                    observation(new RowReader(table, row, problems)).ifPresent(observations::add);
            else sayOther(table, problems);
        }
        return new SurveyReading(observations, problems.all(), reading.rows());
    }

    private static void sayOther(Table table, ProblemList problems) {
        problems.add(
                "The file holds a survey and "
                        + (table.sheet().isEmpty() ? "another table" : "the table " + table.sheet())
                        + " that is none; only the survey was read.",
                "Put the other table into a file of its own.");
    }

    private static Optional<Observation> observation(RowReader row) {
        Stated<String> panel = row.text("panel");
        if (panel.isBlank()) {
            row.say(
                    "rows without a panel",
                    "The row names no panel; it was not used.",
                    "Write the panel into every row.");
            return Optional.empty();
        }
        Stated<String> found = row.text("found");
        Optional<Relation> relation = relation(row, found);
        if (relation.isEmpty()) return Optional.empty();
        boolean far = relation.get() != Relation.NOTHING && relation.get() != Relation.NO_DEVICE;
        if (far && found.isBlank() && row.plain("relation").isEmpty()) {
            row.say(
                    "rows that are not filled in",
                    "The row does not say what was found; it was not used, and its device does not count as traced.",
                    "Write what was found, or 'nothing' under relation where nothing is connected.");
            return Optional.empty();
        }
        if (far && found.isBlank()) {
            row.say(
                    "rows that do not say what was found",
                    "The row says '" + relation.get().word() + "' and does not name what was found; it was not used.",
                    "Write what was found, or 'nothing' under relation where nothing is connected.");
            return Optional.empty();
        }
        return Optional.of(new Observation(
                panel,
                row.circuit("circuit"),
                relation.get(),
                found,
                row.kind("kind"),
                method(row),
                row.poles("poles"),
                row.amperes("rating_a"),
                row.voltage("voltage"),
                row.text("phase"),
                row.text("wire"),
                row.text("location"),
                row.plain("by"),
                row.date("date"),
                row.plain("note"),
                row.plain("photo"),
                row.place()));
    }

    private static Optional<Relation> relation(RowReader row, Stated<String> found) {
        String word = row.plain("relation");
        if (word.isEmpty()) return Optional.of(ofFound(found));
        Optional<Relation> relation = Relation.of(word);
        if (relation.isEmpty())
            row.say(
                    "rows with a relation that is not known",
                    "'" + RowReader.shown(word) + "' in '" + row.header("relation")
                            + "' is no relation that is known; the row was not used.",
                    "Write feeds, fed by, does not feed, nothing or no device.");
        return relation;
    }

    /** With no relation written, {@code nothing} under 'found' says that nothing is there, not a load of that name. */
    private static Relation ofFound(Stated<String> found) {
        String text =
                found.or("").toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", " ").strip();
        return switch (text) {
            case "nothing",
                    "none",
                    "nothing connected",
                    "not connected",
                    "no load",
                    "spare",
                    "disconnected",
                    "unused" -> Relation.NOTHING;
            case "space", "empty", "empty space", "no device", "no breaker" -> Relation.NO_DEVICE;
            default -> Relation.FEEDS;
        };
    }

    private static Method method(RowReader row) {
        String word = row.plain("method");
        Optional<Method> method = Method.of(word);
        if (word.isEmpty())
            row.say(
                    "rows without a method",
                    "The row does not say how it was traced; it proves nothing.",
                    "Write opened, tone, visual or label.");
        else if (method.isEmpty())
            row.say(
                    "rows with a method that is not known",
                    "'" + RowReader.shown(word) + "' in '" + row.header("method")
                            + "' is no method that is known; the row proves nothing.",
                    "Write opened, tone, visual or label.");
        return method.orElse(Method.UNKNOWN);
    }
}
