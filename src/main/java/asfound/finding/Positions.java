package asfound.finding;

import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.recordset.Settings;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/** Positions of a directory: odd left and even right, or numbered down one side and then the other (common practice). */
final class Positions {

    /** Numbers of poles for which panels are made (common practice; makers' tables differ in the rare ones). */
    private static final Set<Integer> USUAL = Set.of(12, 16, 18, 20, 24, 30, 32, 36, 40, 42, 48, 54, 60, 66, 72, 84);

    private Positions() {}

    /** The user says so, or the directory's own multi-pole devices stand at 1-2-3 more often than at 1-3-5. */
    static boolean runDown(Directory directory, Settings settings) {
        if (settings.numbering().filter(n -> n == Settings.Numbering.DOWN).isPresent()) return true;
        long down = multiPole(directory).stream().filter(c -> steps(c, 1)).count();
        long across = multiPole(directory).stream().filter(c -> steps(c, 2)).count();
        return down > 1 && down > across;
    }

    private static List<Circuit> multiPole(Directory directory) {
        return directory.circuits().stream()
                .filter(c -> c.positions().size() > 1)
                .toList();
    }

    private static boolean steps(Circuit c, int by) {
        for (int i = 1; i < c.positions().size(); i++)
            if (c.positions().get(i) - c.positions().get(i - 1) != by) return false;
        return true;
    }

    /** A board with ways and phases counts its positions across ways: there 1-2-3 is one way. */
    static boolean areConsecutive(Circuit c, boolean down) {
        return !c.label().isEmpty() || steps(c, down ? 1 : 2);
    }

    /**
     * The panel's size, as far as its directory tells: every position up to a usual size is listed, no entry begins in the
     * rows after it without a gap. Empty where it cannot be told.
     */
    static OptionalInt size(Directory directory) {
        boolean told = !directory.isDoubtful()
                && directory.circuits().stream().allMatch(c -> c.label().isEmpty());
        if (!told) return OptionalInt.empty();
        Set<Integer> listed = new TreeSet<>();
        for (Circuit c : directory.circuits()) listed.addAll(c.positions());
        int end = 0;
        while (listed.contains(end + 1)) end++;
        int whole = end;
        int last = directory.circuits().stream()
                .mapToInt(Circuit::position)
                .filter(p -> p <= whole)
                .max()
                .orElse(0);
        // a card whose last rows on both sides belong to multi-pole devices ends with them
        boolean filled = listed.size() == whole && USUAL.contains(whole);
        int size = filled ? whole : last + last % 2;
        if (!filled && goesOn(directory, listed, size)) return OptionalInt.empty();
        return USUAL.contains(size) ? OptionalInt.of(size) : OptionalInt.empty();
    }

    /** A row or two left out is no end: a usual size is reached without them, or devices of both sides reach further. */
    private static boolean goesOn(Directory directory, Set<Integer> listed, int size) {
        int top = listed.stream().mapToInt(p -> p).max().orElse(0);
        int end = top + top % 2;
        if (end > size && USUAL.contains(end) && end - listed.size() <= 2) return true;
        return directory.circuits().stream()
                        .filter(c -> c.position() <= size)
                        .filter(c -> c.positions().stream().anyMatch(p -> p > size))
                        .map(c -> c.position() % 2)
                        .distinct()
                        .count()
                > 1;
    }

    static String inWords(String panel, Circuit c) {
        String what = c.description()
                .or(
                        c.use() == Directory.Use.LOAD
                                ? "no description"
                                : c.use().name().toLowerCase(java.util.Locale.ROOT));
        return panel + "/" + c.ref().inWords() + " (" + what + ")";
    }
}
