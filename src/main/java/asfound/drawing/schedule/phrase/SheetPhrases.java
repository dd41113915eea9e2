package asfound.drawing.schedule.phrase;

import asfound.drawing.page.Sheet;
import asfound.drawing.page.Word;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The phrases of a sheet as they are read: without what is printed over them and the marks of its border's zones, and parted
 * where two things stand no further apart than words do.
 */
public final class SheetPhrases {

    private SheetPhrases() {}

    /** @param known what is known of texts from sheets before */
    public static Phrases of(Sheet sheet, KnownTexts known) {
        List<Overprint> overprints = Overprint.of(sheet.words(), sheet.askew());
        if (overprints.isEmpty()) return of(sheet, known, overprints);
        Set<Word> over = new HashSet<>();
        overprints.forEach(o -> over.addAll(o.words()));
        List<Word> rest = sheet.words().stream().filter(w -> !over.contains(w)).toList();
        return of(sheet.with(rest), known, overprints);
    }

    private static Phrases of(Sheet sheet, KnownTexts known, List<Overprint> overprints) {
        List<Word> turned = sheet.words().stream().filter(w -> !w.upright()).toList();
        Meanings meanings = new Meanings(known);
        List<Phrase> lines = TightHeaders.parted(BorderZones.without(Phrase.of(sheet), sheet), meanings);
        List<Phrase> written = WrittenNumbers.parted(lines, meanings);
        return new Phrases(new ArrayList<>(TightHeadings.parted(written, meanings)), turned, overprints, meanings);
    }
}
