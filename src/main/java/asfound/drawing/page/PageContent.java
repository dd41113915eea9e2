package asfound.drawing.page;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** What of one page's content could not be unpacked or followed, gathered while the page is gone through. */
final class PageContent {

    /** Instructions without which text is lost or read in the wrong font. */
    private static final Set<String> OF_TEXT = Set.of("Do", "Tf", "Tj", "TJ", "'", "\"", "Td", "TD", "Tm", "T*", "BT");

    /** Instructions of PDF (ISO 32000-1, annex A) that show nothing and are not followed. */
    private static final Set<String> SILENT = Set.of("BX", "EX", "MP", "DP", "d0", "d1", "i", "ri");

    private static final int MOST_TOLD = 5;

    private final StreamCheck check;
    private final Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    private final List<String> lost = new ArrayList<>();

    PageContent(StreamCheck check) {
        this.check = check;
    }

    /** In words, each to stand in a list; empty where all was followed. */
    List<String> lost() {
        return List.copyOf(lost);
    }

    private void lose(String what) {
        if (lost.size() < MOST_TOLD && !lost.contains(what)) lost.add(what);
    }

    /**
     * Looks at what a page consists of, before it is gone through.
     *
     * @return what it unpacks to; empty where it is damaged, too large to be kept or there is none
     */
    Optional<byte[]> of(PDPage page) throws IOException {
        COSBase entry = page.getCOSObject().getItem(COSName.CONTENTS);
        if (entry == null || entry instanceof COSNull) return Optional.empty(); // a blank page
        ContentSyntax syntax = new ContentSyntax();
        Unpacked unpacked = new Unpacked();
        boolean whole = true;
        if (resolved(entry) instanceof COSArray parts)
            for (int i = 0; i < parts.size(); i++) {
                whole &= part(parts.get(i), syntax, unpacked);
                unpacked.write('\n');
            }
        else {
            whole = part(entry, syntax, unpacked);
            // the library leaves the prediction in there, and what is read is what it makes of it
            if (resolved(entry) instanceof COSStream stream && StreamCheck.isPredictedAlone(stream)) unpacked.drop();
        }
        if (whole && !syntax.isClosed()) lose("a text, list or dictionary in its content is not closed");
        return whole ? unpacked.bytes() : Optional.empty();
    }

    private static COSBase resolved(COSBase entry) {
        return entry instanceof COSObject reference ? reference.getObject() : entry;
    }

    private boolean part(COSBase entry, ContentSyntax syntax, Unpacked unpacked) throws IOException {
        COSBase part = resolved(entry);
        if (part instanceof COSStream stream && check.isWhole(stream, syntax, unpacked)) return true;
        lose(
                part instanceof COSStream
                        ? "a part of its content cannot be unpacked"
                        : part == null || part instanceof COSNull
                                ? "a part of its content is missing from the file"
                                : "a part of its content is no content");
        return false;
    }

    /** Looks at a form once, however often it is drawn. */
    void form(COSStream form) throws IOException {
        if (!seen.add(form)) return;
        ContentSyntax syntax = new ContentSyntax();
        if (!check.isWhole(form, syntax)) lose("a form drawn on it cannot be unpacked");
        else if (!syntax.isClosed()) lose("a text, list or dictionary in a form drawn on it is not closed");
    }

    /** Looks at the table by which a font tells its letters. */
    void font(PDFont font) throws IOException {
        if (font == null) lose("a font is missing");
        else if (seen.add(font.getCOSObject())
                && font.getCOSObject().getDictionaryObject(COSName.TO_UNICODE) instanceof COSStream letters
                && !check.isWhole(letters, new ContentSyntax())) lose("a font's table of letters cannot be unpacked");
    }

    void failed(String instruction) {
        if (OF_TEXT.contains(instruction)) lose("an instruction ('" + instruction + "') cannot be followed");
    }

    /** What stands in place of an instruction and is none: the content is not what was once written. */
    void unknown(String instruction) {
        if (!SILENT.contains(instruction) && lost.isEmpty()) lose("instructions that PDF does not know");
    }
}
