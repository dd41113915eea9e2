package asfound.report.pdf;

import asfound.recordset.Patience;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/**
 * Leaves of an opened drawing only what is seen on its pages. Scripts, actions, attachments, forms, links and references
 * to other files are not carried into a marked copy that many people will open.
 */
final class Stripped {

    private static final Set<String> CATALOG = Set.of("Type", "Version", "Pages", "OCProperties");
    private static final Set<String> PAGES =
            Set.of("Type", "Kids", "Count", "Parent", "Resources", "MediaBox", "CropBox", "Rotate");
    private static final Set<String> PAGE = Set.of(
            "Type",
            "Parent",
            "Resources",
            "MediaBox",
            "CropBox",
            "BleedBox",
            "TrimBox",
            "ArtBox",
            "Rotate",
            "Contents",
            "Group",
            "UserUnit",
            "Annots");
    private static final Set<String> ANNOTATIONS = Set.of(
            "Text",
            "FreeText",
            "Line",
            "Square",
            "Circle",
            "Polygon",
            "PolyLine",
            "Highlight",
            "Underline",
            "Squiggly",
            "StrikeOut",
            "Stamp",
            "Caret",
            "Ink",
            "Widget");
    private static final Set<String> ANNOTATION = Set.of(
            "Type",
            "Subtype",
            "Rect",
            "Contents",
            "NM",
            "M",
            "F",
            "AP",
            "AS",
            "Border",
            "C",
            "OC",
            "T",
            "CA",
            "Subj",
            "IT",
            "CreationDate",
            "BS",
            "BE",
            "RD",
            "QuadPoints",
            "L",
            "LE",
            "IC",
            "Vertices",
            "InkList",
            "DA",
            "Q",
            "DS",
            "CL",
            "Name");
    private static final Set<String> ACTIONS = Set.of(
            "JavaScript",
            "Launch",
            "URI",
            "SubmitForm",
            "ImportData",
            "ResetForm",
            "GoToR",
            "GoToE",
            "GoTo",
            "Named",
            "Hide",
            "Rendition",
            "Sound",
            "Movie",
            "Trans",
            "GoTo3DView",
            "RichMediaExecute",
            "SetOCGState",
            "Thread");
    private static final List<String> OUTSIDE_OF_STREAMS =
            List.of("F", "FFilter", "FDecodeParms", "Ref", "OPI", "AF", "PieceInfo", "Metadata", "AA", "A");

    private final Set<String> leftOut = new TreeSet<>();

    private Stripped() {}

    /**
     * Strips the document as it stands in memory; the file is not touched.
     *
     * @return what was left out, in words, sorted
     */
    static Set<String> strip(PDDocument document) {
        Stripped work = new Stripped();
        COSDictionary catalog = document.getDocumentCatalog().getCOSObject();
        work.tellCatalog(catalog);
        keep(catalog, CATALOG);
        for (PDPage page : document.getPages()) work.page(page.getCOSObject());
        work.pageTree(catalog.getCOSDictionary(COSName.PAGES));
        work.walk(catalog);
        return work.leftOut;
    }

    private void tellCatalog(COSDictionary catalog) {
        if (catalog.containsKey("OpenAction") || catalog.containsKey(COSName.AA)) leftOut.add("document actions");
        if (catalog.containsKey(COSName.ACRO_FORM)) leftOut.add("form functions");
        if (catalog.containsKey(COSName.OUTLINES)) leftOut.add("bookmarks");
        COSDictionary names = catalog.getCOSDictionary(COSName.NAMES);
        if (names != null && names.containsKey("JavaScript")) leftOut.add("scripts");
        if (names != null && names.containsKey("EmbeddedFiles")) leftOut.add("attached files");
    }

    private void page(COSDictionary page) {
        if (page.containsKey(COSName.AA)) leftOut.add("page actions");
        keep(page, PAGE);
        COSArray annotations = page.getCOSArray(COSName.ANNOTS);
        if (annotations == null) {
            page.removeItem(COSName.ANNOTS);
            return;
        }
        COSArray kept = new COSArray();
        for (COSBase each : annotations) {
            COSBase annotation = dereferenced(each);
            if (annotation instanceof COSDictionary d && isSeen(d)) kept.add(each);
        }
        page.setItem(COSName.ANNOTS, kept);
    }

    /** A kind of annotation that shows something by its own appearance; a form field becomes the picture of itself. */
    private boolean isSeen(COSDictionary annotation) {
        String kind = annotation.getNameAsString(COSName.SUBTYPE);
        boolean picture = annotation.getCOSDictionary(COSName.AP) != null;
        if (kind == null || !ANNOTATIONS.contains(kind) || !picture) {
            leftOut.add(
                    "Link".equals(kind) ? "links" : "Popup".equals(kind) ? "pop-ups" : "annotations without a picture");
            return false;
        }
        if ("Widget".equals(kind)) {
            annotation.setName(COSName.SUBTYPE, "Stamp");
            leftOut.add("form functions");
        }
        if (annotation.containsKey(COSName.A) || annotation.containsKey(COSName.AA)) leftOut.add("annotation actions");
        keep(annotation, ANNOTATION);
        return true;
    }

    private void pageTree(COSDictionary root) {
        Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        Deque<COSDictionary> open = new ArrayDeque<>();
        if (root != null) open.add(root);
        while (!open.isEmpty()) {
            COSDictionary node = open.remove();
            COSArray kids = node.getCOSArray(COSName.KIDS);
            if (!seen.add(node) || kids == null) continue;
            keep(node, PAGES);
            for (COSBase kid : kids) if (dereferenced(kid) instanceof COSDictionary d) open.add(d);
        }
    }

    /** Everything that can still be reached: actions, files and references to the outside go. */
    private void walk(COSBase start) {
        Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        Deque<COSBase> open = new ArrayDeque<>(List.of(start));
        while (!open.isEmpty()) {
            Patience.check();
            COSBase base = open.pop();
            if (!seen.add(base)) continue;
            if (base instanceof COSStream stream)
                OUTSIDE_OF_STREAMS.forEach(k -> stream.removeItem(COSName.getPDFName(k)));
            if (base instanceof COSDictionary d) {
                for (COSName key : List.copyOf(d.keySet())) {
                    COSBase value = dereferenced(d.getItem(key));
                    if (isForeign(value)) d.removeItem(key);
                    else if (value instanceof COSDictionary || value instanceof COSArray) open.push(value);
                }
            } else if (base instanceof COSArray array) {
                for (int i = array.size() - 1; i >= 0; i--) {
                    COSBase value = dereferenced(array.get(i));
                    if (isForeign(value)) array.remove(i);
                    else if (value instanceof COSDictionary || value instanceof COSArray) open.push(value);
                }
            }
        }
    }

    private boolean isForeign(COSBase value) {
        if (!(value instanceof COSDictionary d)) return false;
        String type = d.getNameAsString(COSName.TYPE);
        if ("Filespec".equals(type) || "EmbeddedFile".equals(type) || d.containsKey(COSName.EF)) {
            leftOut.add("attached files");
            return true;
        }
        boolean action =
                "Action".equals(type) || (d.getItem(COSName.S) instanceof COSName s && ACTIONS.contains(s.getName()));
        if (action) leftOut.add("actions");
        return action;
    }

    private static void keep(COSDictionary dictionary, Set<String> keys) {
        for (COSName key : List.copyOf(dictionary.keySet()))
            if (!keys.contains(key.getName())) dictionary.removeItem(key);
    }

    private static COSBase dereferenced(COSBase base) {
        return base instanceof COSObject o ? o.getObject() : base;
    }
}
