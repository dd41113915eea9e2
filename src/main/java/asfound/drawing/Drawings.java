package asfound.drawing;

import asfound.model.Directory;
import asfound.model.OneLine;
import java.util.List;

/**
 * Everything that the paper says.
 *
 * @param directories of all schedules, in order of file, page and place
 * @param oneLine of all one-line exports together
 */
public record Drawings(List<Directory> directories, OneLine oneLine) {

    public Drawings {
        directories = List.copyOf(directories);
    }
}
