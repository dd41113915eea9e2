package asfound.names;

import asfound.model.Problem;
import asfound.recordset.Settings;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;

/**
 * The one name of everything that is named in a record set.
 *
 * <p>Names are matched by structure (see {@link Designation}); {@code same} and {@code distinct} of the settings come
 * first. What could mean two things keeps a name of its own, or has none, and is reported.
 *
 * <p>The one name is the first of a group under {@code same} where it is so written; else the way in which drawings write it most often without words of kind and place; of several as frequent
 * the shortest, then the first in order. Where no drawing writes it, the surveyors' way.
 */
public final class NameBook {

    private final NameIndex index;
    private final Map<String, Optional<String>> known;
    private final Map<String, SortedSet<String>> written;
    private final List<Problem> problems;

    NameBook(
            NameIndex index,
            Map<String, Optional<String>> known,
            Map<String, SortedSet<String>> written,
            List<Problem> problems) {
        this.index = index;
        this.known = known;
        this.written = written;
        this.problems = List.copyOf(problems);
    }

    public static NameBook of(Collection<Written> all, Settings settings) {
        return new NameBookMaker(all, settings).make();
    }

    /** The one name of what a text names; empty where it names nothing known, or could mean two things. */
    public Optional<String> nameOf(String raw) {
        Optional<String> before = known.get(raw);
        return before != null ? before : index.find(Designation.of(raw)).name();
    }

    /** The other ways in which something is written, sorted. */
    public List<String> alsoWritten(String name) {
        return written.getOrDefault(name, java.util.Collections.emptySortedSet()).stream()
                .filter(w -> !w.equals(name))
                .toList();
    }

    /** Every one name, in natural order. */
    public List<String> names() {
        return written.keySet().stream().sorted(asfound.model.Natural.ORDER).toList();
    }

    /** Names that could mean two things or cannot be told apart, and letters that only look like others. */
    public List<Problem> problems() {
        return problems;
    }
}
