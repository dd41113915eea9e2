package asfound.drawing.schedule.phrase;

import asfound.model.Box;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Numbered lists that are no panel's directory although they look like one: fixtures, motors, doors, notes, revisions. */
public final class ForeignTables {

    private static final Pattern TITLE = Pattern.compile(
            "(?:.*\\b)?(?:(?:LIGHTING|LIGHT|LUMINAIRES?|FIXTURES?|LAMPS?|MOTORS?|TRANSFORMERS?|DOORS?|WINDOWS?|FINISH(?:ES)?|FANS?|PUMPS?|FEEDERS?|CONDUITS?|CABLES?"
                    + "|EQUIPMENT|MECHANICAL|PLUMBING|SYMBOLS?|KEY ?NOTES?|SHEETS?|DRAWINGS?|REVISIONS?|PARTS?|MATERIALS?|DEVICES?|CONTROLS?|RELAYS?|VALVES?|ROOMS?|HARDWARE"
                    + "|GENERATORS?|DISCONNECTS?|STARTERS?|DATA|TELEPHONE|CAMERAS?|ACCESSORIES)\\s+)+(?:[A-Z]+\\s+){0,2}"
                    + "(?:SCHEDULE|LIST|INDEX|LEGEND|CONNECTION)S?\\b.*|(?:LIST|INDEX|LEGEND|BILL)\\s+OF\\b.*|(?:GENERAL|KEYED|SHEET)\\s+NOTES?\\b.*|(?:DRAWING |KEY ?)NOTES|REVISIONS?|LEGEND|ABBREVIATIONS",
            Pattern.CASE_INSENSITIVE);
    /** Lists that speak of a panel, or of what is called one, and are no directory of it. */
    private static final Pattern ABOUT_PANELS = Pattern.compile(
            "\\b(?:CHECK\\s?-?LISTS?|INSPECTION (?:REPORT|RECORD|FORM|SHEET)|(?:MAINTENANCE|SERVICE|REPAIR) (?:LOG|RECORDS?|HISTORY|REPORT)"
                    + "|TEST (?:RESULTS?|REPORTS?|RECORDS?|SHEETS?)|METER READINGS?|(?:SUB-?)?METERING|BILLS? OF MATERIALS?|(?:MATERIAL|TAKE-?OFF|(?:SPARE )?PARTS?|PUNCH|SNAG) LISTS?"
                    + "|LABEL (?:LIST|SCHEDULE)S?|ARC[ -]?FLASH|PATCH PANELS?|(?:DATA|TELEPHONE|VOICE) OUTLETS?|FIRE ALARM|POINTS? LISTS?|I/?O LISTS?|LOAD CALCULATIONS?"
                    + "|THERMOGRAPH\\w+|INFRARED|LOCK-?OUT|(?:SCHEDULE|LIST) OF (?:[A-Z]+ )?(?:BOARDS|PANELS|PANELBOARDS))\\b",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern PANEL = Pattern.compile(
            "\\b(?:PANEL|PANELBOARD|PNL|BOARD|SWITCHBOARD|LOAD\\s?CENT(?:ER|RE)|CIRCUIT|DISTRIBUTION)\\b",
            Pattern.CASE_INSENSITIVE);
    /** Lines between a title and the headings below it. */
    private static final double REACH = 5;

    private static final double BESIDE = 30;

    private ForeignTables() {}

    /** The text is the title of a list of something else. */
    static boolean isTitle(String text) {
        return isAboutPanels(text) || isPlainTitle(text);
    }

    /** The text names a list that speaks of a panel and is no directory of it. */
    static boolean isAboutPanels(String text) {
        return ABOUT_PANELS.matcher(text).find();
    }

    /** The text names a list of something that is no panel. */
    static boolean isPlainTitle(String text) {
        return TITLE.matcher(text).matches();
    }

    /**
     * The title that says that a table is a list of something else; a panel's title between them says that it is not.
     *
     * @param numbers where its first column of numbers ends
     * @param clear its headings say that it holds circuits and their devices
     */
    public static Optional<Phrase> title(Phrases phrases, Box table, double numbers, boolean clear) {
        List<Phrase> above = phrases.between(Double.NEGATIVE_INFINITY, table.y() + phrases.largest()).stream()
                .filter(p -> p.centreY() < table.y() + p.size())
                .filter(p -> table.y() - p.box().bottom() < REACH * p.size())
                // a title begins at the left of its table, or over its middle or its numbers: one further right is
                // another's
                .filter(p -> p.right() > table.x() - BESIDE * p.size() && p.left() < Math.max(table.centreX(), numbers))
                .sorted(Comparator.comparingDouble((Phrase p) -> -p.box().bottom())
                        .thenComparingDouble(Phrase::left))
                .toList();
        for (Phrase p : above) {
            // a column of panels is headed so in a list of anything
            boolean heading = p.centreY() > table.y();
            if (!heading && !clear && phrases.meanings().isAboutPanels(p)) return Optional.of(p);
            if (!heading && PANEL.matcher(p.text()).find()) return Optional.empty();
            if (phrases.meanings().isForeignTitle(p)) return Optional.of(p);
            if (phrases.meanings().name(p).isPresent()) return Optional.empty();
        }
        return Optional.empty();
    }
}
