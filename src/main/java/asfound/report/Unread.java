package asfound.report;

import asfound.audit.Audit;
import asfound.model.Problem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** What of a record set was not read or not understood, from wherever it was noticed, each problem once. */
public final class Unread {

    private final SortedMap<String, TreeSet<Problem>> byFile = new TreeMap<>();

    private Unread() {}

    public static Unread of(Audit audit) {
        Unread unread = new Unread();
        unread.add(audit.recordSet().problems());
        for (Audit.Input input : audit.inputs()) unread.add(input.problems());
        audit.drawings().directories().forEach(d -> unread.add(d.problems()));
        unread.add(audit.network().problems());
        return unread;
    }

    private void add(Collection<Problem> problems) {
        for (Problem problem : problems)
            byFile.computeIfAbsent(problem.place().file(), f -> new TreeSet<>()).add(problem);
    }

    /** Every problem in order of its place. */
    public List<Problem> all() {
        List<Problem> all = new ArrayList<>();
        byFile.values().forEach(all::addAll);
        return all;
    }

    /** The files that have a problem, in order. */
    public List<String> files() {
        return List.copyOf(byFile.keySet());
    }

    public List<Problem> in(String file) {
        return List.copyOf(byFile.getOrDefault(file, new TreeSet<>()));
    }
}
