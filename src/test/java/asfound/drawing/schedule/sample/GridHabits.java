package asfound.drawing.schedule.sample;

import asfound.drawing.schedule.sample.GridLayout.Arrangement;
import asfound.drawing.schedule.sample.GridLayout.Carry;
import asfound.drawing.schedule.sample.GridLayout.Kind;
import asfound.drawing.schedule.sample.GridLayout.Sides;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * What a spreadsheet and the years do to a table besides how it was laid out.
 *
 * @param lists the mark between the positions of a device that are written together in its first row; empty where they are
 *     not
 * @param change what the spreadsheet makes of such a list
 * @param dayFirst a day is written before its month
 * @param written how a text table writes a day
 * @param repeat after so many rows the headings come again; 0 where they never do
 * @param titled the panel's name comes again with them
 * @param named the panel's name stands before each position
 * @param separator the first line of a text names the delimiter
 * @param trailing so many blank columns end each row of a text
 */
record GridHabits(
        String lists,
        Change change,
        boolean dayFirst,
        Written written,
        int repeat,
        boolean titled,
        boolean named,
        boolean separator,
        int trailing) {

    enum Change {
        NONE,
        DAYS,
        FRACTIONS
    }

    enum Written {
        DAY_MONTH,
        MONTH_DAY,
        ISO,
        FIGURES,
        SHORT_YEAR
    }

    private static final Set<Sides> IN_ROWS =
            EnumSet.of(Sides.CENTRE, Sides.OUTSIDE, Sides.LEFT_OF_EACH, Sides.HALVES, Sides.DOWN, Sides.ODD_THEN_EVEN);
    private static final String[] MONTHS = {
        "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"
    };

    /** The year in which the lists were typed. */
    private static final int YEAR = 2026;

    /** Half of all tables have none of these habits. */
    static GridHabits random(long seed, GridLayout layout) {
        Random r = new Random(seed * 0x9E3779B97F4A7C15L + 0x632BE59BD9B4E019L);
        boolean any = r.nextBoolean();
        boolean rows = any && IN_ROWS.contains(layout.sides()) && r.nextInt(3) == 0;
        String lists = rows ? GridLayout.any(r, new String[] {",", ", ", "-", "/"}) : "";
        boolean changed = any && r.nextInt(3) == 0;
        String mark = rows ? lists : markOf(layout);
        boolean day = mark.equals("-") || mark.equals("/");
        boolean dayFirst = r.nextBoolean();
        Written written = GridLayout.any(r, Written.values());
        int repeat = any && layout.carry() != Carry.JOINED && r.nextInt(4) == 0 ? 6 + r.nextInt(15) : 0;
        boolean titled = r.nextBoolean();
        boolean list = layout.sides() == Sides.LIST && !changed && !mark.equals("-") && !mark.equals("/");
        boolean named = list && any && r.nextInt(2) == 0;
        boolean text = layout.kind() != Kind.WORKBOOK && any;
        Change change = !changed || mark.isEmpty() ? Change.NONE : day ? Change.DAYS : Change.FRACTIONS;
        return new GridHabits(
                lists,
                change,
                dayFirst,
                written,
                layout.arrangement() == Arrangement.COMBINED && titled ? 0 : repeat,
                titled,
                named,
                text && r.nextInt(3) == 0,
                text && r.nextInt(3) == 0 ? 1 + r.nextInt(4) : 0);
    }

    private static String markOf(GridLayout layout) {
        if (layout.sides() != Sides.LIST) return "";
        return switch (layout.numbers()) {
            case COMMAS -> ",";
            case COMMAS_SPACED -> ", ";
            case HYPHENS -> "-";
            case SLASHES -> "/";
            default -> "";
        };
    }

    boolean listsInRows() {
        return !lists.isEmpty();
    }

    /** The day that a list of positions becomes while it is typed. */
    Optional<LocalDate> day(List<Integer> positions) {
        if (change != Change.DAYS || positions.size() < 2 || positions.size() > 3) return Optional.empty();
        int month = positions.get(dayFirst ? 1 : 0), day = positions.get(dayFirst ? 0 : 1);
        int third = positions.size() == 3 ? positions.get(2) : 0;
        int year = third == 0 ? YEAR : third < 30 ? 2000 + third : 1900 + third;
        return month > 12 || day > 28 ? Optional.empty() : Optional.of(LocalDate.of(year, month, day));
    }

    /** The fraction that two positions become where a comma parts fractions. */
    Optional<String> fraction(List<Integer> positions) {
        if (change != Change.FRACTIONS || positions.size() != 2 || positions.get(1) > 99) return Optional.empty();
        String f = positions.get(0) + "." + positions.get(1);
        return Optional.of(f.endsWith("0") ? f.substring(0, f.length() - 1) : f);
    }

    /** A day as a text table writes it: without its year only where that is the present one. */
    String inText(LocalDate day) {
        String month = MONTHS[day.getMonthValue() - 1];
        boolean present = day.getYear() == YEAR;
        return switch (written) {
            case ISO -> day.toString();
            case FIGURES ->
                dayFirst
                        ? day.getDayOfMonth() + "/" + day.getMonthValue() + "/" + day.getYear()
                        : day.getMonthValue() + "/" + day.getDayOfMonth() + "/" + day.getYear();
            case SHORT_YEAR -> String.format("%d-%s-%02d", day.getDayOfMonth(), month, day.getYear() % 100);
            case DAY_MONTH ->
                String.format("%02d-%s", day.getDayOfMonth(), month) + (present ? "" : "-" + day.getYear());
            case MONTH_DAY ->
                present ? month + "-" + day.getDayOfMonth() : month + "-" + day.getDayOfMonth() + "-" + day.getYear();
        };
    }
}
