package asfound.drawing.schedule.pdf;

import asfound.drawing.schedule.sheet.Part;
import asfound.model.Problem;
import java.util.List;

/** What one page of a PDF gave. */
record PageReading(List<Part> parts, List<Problem> problems) {

    /** Nothing, and why. */
    static PageReading none(Problem why) {
        return new PageReading(List.of(), List.of(why));
    }
}
