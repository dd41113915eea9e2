package asfound.drawing.page;

import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Whether a PDF's list of its pages, a tree, is one.
 *
 * @param pages how many pages the tree has
 * @param stated how many it says it has
 * @param lost how many of its entries lead to nothing
 * @param loops going down it, or from a page up, leads back to where one was
 */
public record PageTree(int pages, int stated, int lost, boolean loops) {

    /** A tree is not followed further than this. */
    private static final int MOST = 200_000;

    /** Walks through the tree, each part of it once. */
    public static PageTree of(PDDocument document) {
        COSDictionary root = document.getPages().getCOSObject();
        Set<COSBase> met = Collections.newSetFromMap(new IdentityHashMap<>());
        Set<COSBase> leadsOut = Collections.newSetFromMap(new IdentityHashMap<>());
        Deque<COSDictionary> open = new ArrayDeque<>();
        open.add(root);
        met.add(root);
        int pages = 0, lost = 0;
        boolean loops = false;
        while (!open.isEmpty() && met.size() < MOST) {
            COSDictionary node = open.pop();
            loops = loops || !leadsOut(node, leadsOut);
            if (!(node.getDictionaryObject(COSName.KIDS) instanceof COSArray kids)) {
                if (node != root) pages++;
                continue;
            }
            for (int i = 0; i < kids.size(); i++) {
                if (!(kids.getObject(i) instanceof COSDictionary kid)) lost++;
                else if (met.add(kid)) open.push(kid);
                else if (kid.containsKey(COSName.KIDS)) loops = true;
                else pages++; // one page shown twice
            }
        }
        return new PageTree(pages, document.getNumberOfPages(), lost, loops);
    }

    /** Whether going up from a part of the tree comes to an end; all that it passes is remembered to do so. */
    private static boolean leadsOut(COSDictionary from, Set<COSBase> known) {
        Set<COSBase> way = Collections.newSetFromMap(new IdentityHashMap<>());
        COSDictionary at = from;
        while (at != null && !known.contains(at)) {
            if (!way.add(at)) return false;
            at = at.getDictionaryObject(COSName.PARENT, COSName.P) instanceof COSDictionary above ? above : null;
        }
        known.addAll(way);
        return true;
    }
}
