package asfound.drawing.oneline;

import asfound.model.OneLine;
import asfound.model.Problem;
import java.util.List;

/**
 * What was read from one export.
 *
 * @param oneLine feeders and equipment in order of their rows
 * @param problems rows and fields that could not be read
 * @param rows how many rows the file has below its headers
 */
public record OneLineReading(OneLine oneLine, List<Problem> problems, int rows) {

    public OneLineReading {
        problems = List.copyOf(problems);
    }
}
