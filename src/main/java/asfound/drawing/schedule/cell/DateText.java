package asfound.drawing.schedule.cell;

import asfound.drawing.schedule.phrase.PositionText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A day as spreadsheets write it: {@code 2026-01-03}, {@code 1/3/2026}, {@code 3-Jan}, {@code Jan-26}. Which number is the day
 * and which the month does not matter to whom it is a list of positions that was taken for a day.
 *
 * @param numbers day and month in rising order; what else was taken for them where only one is written
 * @param year 0 where none is written
 */
record DateText(List<Integer> numbers, int year) {

    private static final Pattern ISO = Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})(?:[T ][\\d:.]+Z?)?");
    private static final Pattern FIGURES = Pattern.compile("(\\d{1,2})[-/.](\\d{1,2})[-/.](\\d{4})(?: [\\d:.]+)?");
    private static final Pattern DAY_FIRST =
            Pattern.compile("(\\d{1,2})[-/. ]{1,2}(\\p{L}{3,9})\\.?(?:[-/. ]{1,2}(\\d{4}|\\d{2}))?");
    private static final Pattern MONTH_FIRST =
            Pattern.compile("(\\p{L}{3,9})\\.?[-/. ]{1,2}(\\d{1,2})(?:[-/., ]{1,2}(\\d{4}))?");
    /** The beginnings of the months' names in English, German, French and Spanish. */
    private static final List<String> MONTHS = List.of(
            "jan|ene",
            "feb|fév|fev",
            "mar|mär|mrz|mae",
            "apr|avr|abr",
            "may|mai",
            "jun|juin",
            "jul|juil",
            "aug|aoû|aou|ago",
            "sep",
            "oct|okt",
            "nov",
            "dec|dez|déc|dic");

    DateText {
        numbers = List.copyOf(numbers);
    }

    /** Empty where the text is no day. */
    static Optional<DateText> parse(String text) {
        String t = text.strip();
        if (t.length() < 5 || t.length() > 24) return Optional.empty();
        Matcher iso = ISO.matcher(t);
        if (iso.matches()) return day(number(iso.group(2)), number(iso.group(3)), iso.group(1));
        Matcher figures = FIGURES.matcher(t);
        if (figures.matches()) return day(number(figures.group(1)), number(figures.group(2)), figures.group(3));
        Matcher d = DAY_FIRST.matcher(t);
        if (d.matches()) return day(number(d.group(1)), month(d.group(2)), d.group(3));
        Matcher m = MONTH_FIRST.matcher(t);
        return m.matches() ? day(month(m.group(1)), number(m.group(2)), m.group(3)) : Optional.empty();
    }

    private static Optional<DateText> day(int a, int b, String year) {
        boolean one = Math.min(a, b) < 1 || Math.min(a, b) > 12;
        if (one) return Optional.empty();
        int y = year == null ? 0 : number(year);
        return Optional.of(new DateText(
                List.of(Math.min(a, b), Math.max(a, b)), year != null && year.length() == 2 ? 2000 + y : y));
    }

    private static int number(String text) {
        return Integer.parseInt(text);
    }

    private static int month(String word) {
        String w = word.toLowerCase(Locale.ROOT);
        for (int i = 0; i < MONTHS.size(); i++)
            for (String begin : MONTHS.get(i).split("\\|")) if (w.startsWith(begin)) return i + 1;
        return 0;
    }

    /** The year is the third of three numbers that rise evenly: {@code 1-3-5} becomes a day of 2005. */
    boolean hasThird() {
        return year % 100 - numbers.get(1) == numbers.get(1) - numbers.get(0) && numbers.get(0) < numbers.get(1);
    }

    /** The positions that became this day, as they are written in a list; empty where two numbers are no list. */
    Optional<String> positions(boolean third) {
        List<Integer> all = new ArrayList<>(numbers);
        if (third) all.add(year % 100);
        String list = String.join("-", all.stream().map(String::valueOf).toList());
        return PositionText.parse(list).map(p -> list);
    }
}
