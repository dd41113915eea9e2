package asfound.drawing.schedule.phrase;

import asfound.drawing.page.Sheet;
import asfound.drawing.page.Word;
import java.util.ArrayList;
import java.util.List;

/**
 * The phrases of a sheet as they are read: without the marks of its border's zones, and parted where two things stand no
 * further apart than words do.
 */
public final class SheetPhrases {

    private SheetPhrases() {}

    /** @param known what is known of texts from sheets before */
    public static Phrases of(Sheet sheet, KnownTexts known) {
        List<Word> turned = sheet.words().stream().filter(w -> !w.upright()).toList();
        Meanings meanings = new Meanings(known);
        List<Phrase> lines = TightHeaders.parted(BorderZones.without(Phrase.of(sheet), sheet), meanings);
        List<Phrase> written = WrittenNumbers.parted(lines, meanings);
        return new Phrases(new ArrayList<>(TightHeadings.parted(written, meanings)), turned, meanings);
    }
}
