package asfound.recordset;

import asfound.model.Problem;
import java.nio.file.Path;
import java.util.List;

/**
 * A folder of records of one building.
 *
 * @param name the folder's name
 * @param root the folder
 * @param settings what {@code record.yaml} says
 * @param sources its files in order of their names
 * @param problems what could not be opened or told
 */
public record RecordSet(String name, Path root, Settings settings, List<Source> sources, List<Problem> problems) {

    public RecordSet {
        sources = List.copyOf(sources);
        problems = List.copyOf(problems);
    }

    /** The building's name, or the folder's where none is given. */
    public String building() {
        return settings.building().orElse(name);
    }
}
