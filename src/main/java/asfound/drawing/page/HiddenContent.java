package asfound.drawing.page;

import java.util.ArrayDeque;
import java.util.Deque;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;

/** Which of the content belongs to a layer that is switched off: nobody who looks at the page sees it. */
final class HiddenContent {

    private final PDOptionalContentProperties layers;
    private final Deque<Boolean> open = new ArrayDeque<>();
    private int hidden;

    HiddenContent(PDDocument document) {
        PDOptionalContentProperties found;
        try {
            found = document.getDocumentCatalog().getOCProperties();
        } catch (RuntimeException e) {
            found = null;
        }
        layers = found;
    }

    boolean isHidden() {
        return hidden > 0;
    }

    void begin(COSName tag, COSDictionary properties) {
        boolean off = layers != null && COSName.OC.equals(tag) && properties != null && isOff(properties);
        open.push(off);
        if (off) hidden++;
    }

    void end() {
        if (!open.isEmpty() && open.pop()) hidden--;
    }

    private boolean isOff(COSDictionary properties) {
        try {
            return COSName.getPDFName("OCG").equals(properties.getCOSName(COSName.TYPE))
                    && !layers.isGroupEnabled(new PDOptionalContentGroup(properties));
        } catch (RuntimeException e) {
            return false;
        }
    }
}
