package asfound.recordset;

import asfound.model.Place;
import asfound.model.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Collects the problems of one file. Of a thousand problems of one sort the first are told one by one, and of the rest
 * their true count. Work that was given up may still add to it: every method is safe for two threads.
 */
public final class ProblemList {

    private static final int EACH = 50;

    private final String file;
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, Integer> counts = new LinkedHashMap<>();
    private final Map<String, Place> last = new LinkedHashMap<>();

    public ProblemList(String file) {
        this.file = file;
    }

    /**
     * Adds a problem.
     *
     * @param sort what is counted together, as the words that follow a number: {@code rows with too few fields}
     */
    public synchronized void add(String sort, Place place, String message, String remedy) {
        if (counts.merge(sort, 1, Integer::sum) <= EACH) problems.add(new Problem(place, message, remedy));
        last.put(sort, place);
    }

    /** Adds a problem that was met elsewhere. */
    public synchronized void add(String sort, Problem problem) {
        add(sort, problem.place(), problem.message(), problem.remedy());
    }

    /** Adds a problem of the whole file that happens once. */
    public synchronized void add(String message, String remedy) {
        problems.add(new Problem(Place.file(file), message, remedy));
    }

    public synchronized void addAll(List<Problem> others) {
        problems.addAll(others);
    }

    /** All problems in the order in which they were met, with the count of those that are not told one by one. */
    public synchronized List<Problem> all() {
        List<Problem> all = new ArrayList<>(problems);
        counts.forEach((sort, n) -> {
            if (n > EACH)
                all.add(new Problem(
                        Place.file(file),
                        "There are " + n + " " + sort + " in all; the first " + EACH
                                + " are told one by one, the last is "
                                + last.get(sort).within() + ".",
                        ""));
        });
        return List.copyOf(all);
    }
}
