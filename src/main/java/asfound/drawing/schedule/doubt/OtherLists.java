package asfound.drawing.schedule.doubt;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.device.Circuits;
import asfound.drawing.schedule.phrase.ForeignTables;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.table.Table;
import asfound.model.Box;
import asfound.model.Problem;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Tables that look like a directory and are a list of something else: told, so that one that is a directory is not lost. */
public final class OtherLists {

    private static final String REMEDY = "If it is one, read it by hand.";
    /** Fewer panels with a row each may be what is left of a longer list. */
    private static final int PANELS = 4;

    private OtherLists() {}

    /** What a panel's builder calls its breakers, and others what hangs on a loop. */
    private static final Pattern DEVICES = Pattern.compile(
            "(?:.*\\b)?DEVICES? (?:SCHEDULE|LIST)S?|(?:LIST|SCHEDULE) OF DEVICES", Pattern.CASE_INSENSITIVE);

    private static boolean isOfBreakers(Phrase title, Table table, Phrases phrases) {
        return DEVICES.matcher(title.text()).matches() && ForeignHeadings.hasBreakers(table, phrases);
    }

    /**
     * Why a table was not taken for a directory; empty where it was.
     *
     * @param box the whole table
     * @param read what its rows would say as circuits, one for each panel that they name
     */
    public static Optional<Problem> problem(Sheet sheet, Phrases phrases, Table table, Box box, List<Circuits> read) {
        boolean clear = ForeignHeadings.isOfCircuits(table, phrases) && ForeignHeadings.hasDevices(table, phrases);
        Optional<Phrase> title = ForeignTables.title(
                        phrases, box, table.sides().get(0).spine().right(), clear)
                .filter(p -> !isOfBreakers(p, table, phrases))
                .or(() -> CountedThings.heading(phrases, table));
        if (title.isPresent())
            return Optional.of(new Problem(
                    sheet.place(title.get().box()),
                    "The table headed '" + title.get().text() + "' was not taken for a panel's directory.",
                    REMEDY));
        Optional<String> heading = ForeignHeadings.of(table, phrases);
        if (heading.isPresent())
            return Optional.of(new Problem(
                    sheet.place(box),
                    "The table with a column '" + heading.get() + "' was not taken for a panel's directory.",
                    REMEDY));
        if (read.get(0).scattered())
            return Optional.of(new Problem(
                    sheet.place(box),
                    "A list that names circuits of several panels, out of their order and few of each, was not taken for"
                            + " their directories.",
                    REMEDY));
        boolean ofPanels =
                read.size() >= PANELS && read.stream().allMatch(c -> c.drafts().size() <= 1);
        return ofPanels
                ? Optional.of(new Problem(
                        sheet.place(box),
                        "A list that names each panel once was not taken for their directories.",
                        REMEDY))
                : Optional.empty();
    }
}
