package asfound.recordset;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a day that can be understood in one way only: ISO 8601, or with the month as a word. */
final class Days {

    private static final Pattern ISO = Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})(?:[T ]\\d{1,2}:.*)?");
    private static final Pattern DAY_FIRST =
            Pattern.compile("(\\d{1,2})(?:ST|ND|RD|TH)?[- .]*([A-Z]{3,9})\\.?[-, ]*(\\d{4})");
    private static final Pattern MONTH_FIRST =
            Pattern.compile("([A-Z]{3,9})\\.? *(\\d{1,2})(?:ST|ND|RD|TH)?,? *(\\d{4})");
    private static final List<String> MONTHS = List.of(
            "JANUARY",
            "FEBRUARY",
            "MARCH",
            "APRIL",
            "MAY",
            "JUNE",
            "JULY",
            "AUGUST",
            "SEPTEMBER",
            "OCTOBER",
            "NOVEMBER",
            "DECEMBER");

    private Days() {}

    /** Empty where the text is no day; {@code 05/02/2024} could be two days and is none. */
    static Optional<LocalDate> read(String text) {
        String t = text.strip().toUpperCase(Locale.ROOT);
        Matcher iso = ISO.matcher(t);
        if (iso.matches()) return day(iso.group(1), Integer.parseInt(iso.group(2)), iso.group(3));
        Matcher d = DAY_FIRST.matcher(t);
        if (d.matches()) return day(d.group(3), month(d.group(2)), d.group(1));
        Matcher m = MONTH_FIRST.matcher(t);
        return m.matches() ? day(m.group(3), month(m.group(1)), m.group(2)) : Optional.empty();
    }

    private static int month(String word) {
        for (int i = 0; i < MONTHS.size(); i++) if (MONTHS.get(i).startsWith(word)) return i + 1;
        return word.equals("SEPT") ? 9 : 0;
    }

    private static Optional<LocalDate> day(String year, int month, String day) {
        try {
            return Optional.of(LocalDate.of(Integer.parseInt(year), month, Integer.parseInt(day)));
        } catch (DateTimeException none) {
            return Optional.empty();
        }
    }
}
