package asfound.drawing.page;

import java.util.ArrayDeque;
import java.util.Deque;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;

/** Which of the content belongs to a layer that is switched off: nobody who looks at the page sees it. */
final class HiddenContent {

    private final Layers layers;
    private final Deque<Boolean> open = new ArrayDeque<>();
    private int hidden;

    HiddenContent(Layers layers) {
        this.layers = layers;
    }

    boolean isHidden() {
        return hidden > 0;
    }

    /** Marked content begins. */
    void begin(COSName tag, COSDictionary properties) {
        open(COSName.OC.equals(tag) && layers.isOff(properties));
    }

    /** A form begins, which can be on a layer of its own. */
    void begin(COSDictionary form) {
        open(isOff(form));
    }

    /** Whether a picture, a form or a note is on a layer that is switched off. */
    boolean isOff(COSDictionary drawn) {
        return layers.isOff(drawn.getCOSDictionary(COSName.OC));
    }

    private void open(boolean off) {
        open.push(off);
        if (off) hidden++;
    }

    void end() {
        if (!open.isEmpty() && open.pop()) hidden--;
    }

    /** How many have begun and not ended. */
    int depth() {
        return open.size();
    }

    /** Back to so many, whatever a form left open. */
    void endTo(int depth) {
        while (open.size() > depth) end();
    }
}
