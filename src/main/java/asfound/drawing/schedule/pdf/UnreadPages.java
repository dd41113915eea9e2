package asfound.drawing.schedule.pdf;

import asfound.drawing.page.PageTree;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.recordset.Limit;
import asfound.recordset.Limits;
import asfound.recordset.Reasons;
import asfound.recordset.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;

/** What is said of pages of a PDF that were not read: why, and what to do. */
final class UnreadPages {

    private static final String MORE_MEMORY = "give Java more memory: java -Xmx4g -jar asfound.jar ...";

    private final Limits limits;

    UnreadPages(Limits limits) {
        this.limits = limits;
    }

    /** Pages that the file holds and does not lead to must not pass for none. */
    static List<Problem> lost(Source source, PageTree tree) {
        List<Problem> problems = new ArrayList<>();
        Place place = Place.file(source.file());
        String remedy = "Print the drawing to a new PDF, and count its pages.";
        if (tree.loops())
            problems.add(new Problem(
                    place,
                    "The PDF's list of its pages leads back into itself. Pages may not have been read.",
                    remedy));
        if (tree.lost() > 0)
            problems.add(new Problem(
                    place,
                    "The PDF's list of its pages leads to nothing "
                            + (tree.lost() == 1 ? "once" : tree.lost() + " times") + ": pages may be missing.",
                    remedy));
        if (tree.pages() > tree.stated())
            problems.add(new Problem(
                    place,
                    "The PDF says that it has " + tree.stated() + (tree.stated() == 1 ? " page" : " pages")
                            + " and holds " + tree.pages() + ": not all of them were read.",
                    remedy));
        return problems;
    }

    Problem beyondLimit(Source source, int read, int pages) {
        return new Problem(
                Place.file(source.file()),
                "Only the first " + read + " of " + pages + " pages were read.",
                "Split the file, or " + Limit.PAGES.raise() + ".");
    }

    Problem fileTooLong(Place page) {
        return new Problem(
                page,
                "The page was not read: the file takes longer than "
                        + limits.fileTime().toSeconds() + " s.",
                "Split the file, or " + Limit.FILE_SECONDS.raise() + ".");
    }

    Problem tooLong(Place page) {
        return new Problem(
                page,
                "The page holds more than can be read in " + limits.pageTime().toSeconds() + " s.",
                "Check this page by hand, export it once more, or " + Limit.PAGE_SECONDS.raise() + ".");
    }

    Problem tooMuch(Place page) {
        return new Problem(
                page,
                "The page holds more than " + limits.pageObjects()
                        + " letters or ruled lines, the limit for one page; it was not read.",
                "Check this page by hand, export it without what is not needed, or " + Limit.PAGE_OBJECTS.raise()
                        + ".");
    }

    Problem expanding(Place page) {
        return new Problem(
                page,
                "The page's content expands to more than " + limits.expandedBytes()
                        + " bytes, the limit for expanded content; it was not read.",
                "Check this page by hand, export it once more, or " + Limit.EXPANDED_MB.raise() + ".");
    }

    Problem outOfMemory(Place page) {
        return new Problem(
                page,
                "The page holds more than there is memory for (" + memory() + "); it was not read.",
                "Check this page by hand, or " + MORE_MEMORY);
    }

    Problem damaged(Place page) {
        return new Problem(
                page,
                "The page's content is damaged and was not read.",
                "Check this page by hand, or export it once more.");
    }

    /** @param why what stopped the reading of the file outside of any page */
    Problem unreached(Place page, Source source, Throwable why) {
        if (why instanceof OutOfMemoryError)
            return new Problem(
                    page,
                    "The page was not read: the file asks for more memory than there is (" + memory() + ").",
                    "Split the file, or " + MORE_MEMORY);
        if (why instanceof IOException gone && !Files.isReadable(source.path()))
            return new Problem(
                    page, "The page was not read. " + Reasons.unreadable(gone), "Put it back and run again.");
        return new Problem(
                page,
                "The page was not read: the file could not be opened once more ("
                        + why.getClass().getSimpleName() + "). It may be damaged, or have changed meanwhile.",
                "Run again; if that does not help, print the drawing to a new PDF.");
    }

    private static String memory() {
        return (Runtime.getRuntime().maxMemory() >> 20) + " MB";
    }
}
