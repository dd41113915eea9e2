package asfound.recordset;

import asfound.model.CircuitRef;
import asfound.model.EquipmentKind;
import asfound.model.Place;
import asfound.model.Stated;
import asfound.model.Voltage;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;

/**
 * Reads the fields of one row of a survey or one-line. A field that says something that cannot be understood is reported,
 * and kept as unreadable beside its text.
 */
public final class RowReader {

    private final Table table;
    private final GridRow row;
    private final ProblemList problems;
    private final Place.InRow place;
    private final Stated<?> blank;

    public RowReader(Table table, GridRow row, ProblemList problems) {
        this.table = table;
        this.row = row;
        this.problems = problems;
        this.place = table.place(row);
        this.blank = Stated.blank(place);
    }

    public Place.InRow place() {
        return place;
    }

    /** A field's text without outer and doubled spaces; empty where blank. */
    public String plain(String column) {
        String raw = table.cell(row, column);
        return raw.isEmpty() ? "" : raw.strip().replaceAll("\\s+", " ");
    }

    public Stated<String> text(String column) {
        String raw = table.cell(row, column);
        return raw.isBlank() ? blank() : Stated.text(raw, place);
    }

    /** A rating in amperes. */
    public Stated<Integer> amperes(String column) {
        return value(column, FieldValues::amperes, "no rating in amperes", "Write a number of amperes, such as 100.");
    }

    /** A number of poles, 1 to 4. */
    public Stated<Integer> poles(String column) {
        return value(column, FieldValues::poles, "no number of poles", "Write 1, 2 or 3.");
    }

    public Stated<Double> number(String column) {
        return value(column, FieldValues::number, "no number", "Write a number such as 120.");
    }

    public Stated<Voltage> voltage(String column) {
        return value(column, Voltage::parse, "no voltage", "Write it as 208Y/120 or 480.");
    }

    /** A device: pole positions or a name. */
    public Stated<CircuitRef> circuit(String column) {
        String raw = plain(column);
        if (FieldValues.looksLikeDay(raw))
            return unreadable(
                    column,
                    "a date, it seems: a spreadsheet may have made it of pole positions",
                    "Write the positions as 7,9,11 and format the column as text.");
        return value(
                column,
                FieldValues::device,
                "no pole positions and no device name",
                "Write 7-9-11 or a device's name.");
    }

    public Stated<LocalDate> date(String column) {
        return value(
                column, Days::read, "no date that can be understood in only one way", "Write the day as 2024-05-02.");
    }

    /** The kind that a word names; a word that is not known is reported and says nothing. */
    public EquipmentKind kind(String column) {
        String word = plain(column);
        if (word.isEmpty() || word.equals("?") || word.equalsIgnoreCase("unknown")) return EquipmentKind.UNKNOWN;
        Optional<EquipmentKind> kind = EquipmentKind.of(word);
        if (kind.isEmpty())
            say(
                    "kinds that are not known",
                    "'" + shown(word) + "' in '" + header(column)
                            + "' is no kind of equipment that is known; the row is" + " used without it.",
                    "Write panel, switchboard, transformer, transfer switch, disconnect, utility, generator, inverter, ups,"
                            + " battery, motor or load.");
        return kind.orElse(EquipmentKind.UNKNOWN);
    }

    /** Reports something of this row. {@code sort} is what is counted together, in the plural. */
    public void say(String sort, String message, String remedy) {
        problems.add(sort, place, message, remedy);
    }

    /** A text as it can stand in a message. */
    public static String shown(String text) {
        String plain = text.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
        return plain.length() > 60 ? plain.substring(0, 60) + "…" : plain;
    }

    /** The column's name as the file has it. */
    public String header(String column) {
        int at = table.columns().indexOf(column);
        return at < 0 ? column : shown(table.headers().get(at));
    }

    /** One blank for all blank fields of the row. */
    @SuppressWarnings("unchecked")
    private <T> Stated<T> blank() {
        return (Stated<T>) blank;
    }

    private <T> Stated<T> value(String column, Function<String, Optional<T>> reading, String what, String remedy) {
        String tidy = plain(column);
        if (tidy.isEmpty()) return blank();
        Optional<T> value = reading.apply(tidy);
        return value.isPresent()
                ? Stated.of(value.get(), table.cell(row, column), place)
                : unreadable(column, what, remedy);
    }

    private <T> Stated<T> unreadable(String column, String what, String remedy) {
        String raw = table.cell(row, column);
        say(
                "fields that could not be read in '" + header(column) + "'",
                "'" + shown(raw) + "' in '" + header(column) + "' is " + what + "; it counts as unreadable.",
                remedy);
        return Stated.unreadable(raw, place);
    }
}
