package asfound.report.pdf;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;

/** Bookmarks of a marked drawing: the summary, then each page with what is marked on it (ISO 32000-1, 12.3.3). */
final class Outline {

    private Outline() {}

    /** @param pages of the drawing; the first summary page stands in front of them, further ones behind */
    static void add(Redline redline, PDDocument document, int pages) {
        PDDocumentOutline outline = new PDDocumentOutline();
        document.getDocumentCatalog().setDocumentOutline(outline);
        outline.addLast(item(document, 0, "Summary: what is to be changed"));
        for (int page = 1; page <= pages; page++)
            outline.addLast(item(document, page, "Page " + page + ": " + said(redline, page)));
        if (document.getNumberOfPages() > pages + 1) outline.addLast(item(document, pages + 1, "Summary, continued"));
        if (pages > 1) document.getDocumentCatalog().setPageMode(PageMode.USE_OUTLINES);
    }

    private static String said(Redline redline, int page) {
        long findings = redline.marks().stream()
                .filter(m -> m.page() == page)
                .flatMap(m -> m.notes().stream())
                .map(n -> n.finding().id())
                .distinct()
                .count();
        String count = findings == 0 ? "no finding" : findings == 1 ? "1 finding" : findings + " findings";
        Redline.PageVerdict verdict = redline.pages().get(page);
        if (verdict == null) return count;
        return count + ", " + verdict.state().brief;
    }

    private static PDOutlineItem item(PDDocument document, int index, String title) {
        PDPageFitDestination whole = new PDPageFitDestination();
        whole.setPage(document.getPage(index));
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(Visible.of(title));
        item.setDestination(whole);
        return item;
    }
}
