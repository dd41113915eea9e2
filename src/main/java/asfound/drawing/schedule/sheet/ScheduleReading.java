package asfound.drawing.schedule.sheet;

import asfound.model.Directory;
import asfound.model.Problem;
import java.util.List;

/**
 * What was read from one file of schedules.
 *
 * @param directories the panels' directories in order of page and place
 * @param problems pages without readable text, tables that could not be explained, limits reached
 * @param pages how many pages (or sheets) the file has
 */
public record ScheduleReading(List<Directory> directories, List<Problem> problems, int pages) {

    public ScheduleReading {
        directories = List.copyOf(directories);
        problems = List.copyOf(problems);
    }
}
