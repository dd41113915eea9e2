package asfound.report.reading;

import asfound.model.Directory;
import asfound.model.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * What was read from some files.
 *
 * @param directories in the order of the files, pages and places
 * @param problems of files, pages and places, those of single directories among them
 */
public record Readings(List<Directory> directories, List<Problem> problems) {

    public Readings {
        directories = List.copyOf(directories);
        problems = List.copyOf(problems);
    }

    /** Everything that could not be read, each once, in order of its place. */
    public List<Problem> everyProblem() {
        List<Problem> all = new ArrayList<>(problems);
        directories.forEach(d -> all.addAll(d.problems()));
        return all.stream().distinct().sorted().toList();
    }
}
