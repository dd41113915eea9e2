package asfound.drawing.schedule.pdf;

import asfound.drawing.page.Page;
import asfound.model.Place;
import asfound.model.Problem;
import java.util.ArrayList;
import java.util.List;

/** What of a page a person sees and a reader of text does not. */
final class Legibility {

    private static final String REMEDY = "Read this page by hand, or get it with its text (exported, not scanned).";

    private Legibility() {}

    static List<Problem> problems(Page page, Place place, boolean read) {
        List<Problem> out = new ArrayList<>();
        boolean picture = page.imageShare() > 0.25;
        boolean outlines = page.outlines() > 60 && page.outlines() > page.letters();
        if (page.letters() < 25 && (picture || outlines))
            out.add(new Problem(
                    place,
                    "The page has no readable text: "
                            + (picture ? "it is a picture." : "its letters are drawn as outlines."),
                    REMEDY));
        else if (outlines)
            out.add(new Problem(place, "Much of the page is drawn as outlines, which were not read.", REMEDY));
        else if (picture)
            out.add(new Problem(
                    place,
                    "A picture covers " + Math.round(100 * page.imageShare())
                            + "% of the page; what it shows was not read.",
                    REMEDY));
        if (page.unknown() > 20 && page.unknown() * 5 > page.letters())
            out.add(new Problem(
                    place,
                    page.unknown() + " of " + page.letters()
                            + " letters are in a font that does not tell what they are.",
                    REMEDY));
        else if (page.unknown() > 0 && read)
            out.add(new Problem(
                    place, page.unknown() + " letters could not be told; they are shown as \uFFFD.", REMEDY));
        return out;
    }
}
