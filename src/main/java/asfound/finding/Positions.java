package asfound.finding;

import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.recordset.Settings;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Positions of a directory: odd left and even right, or numbered down one side and then the other (common practice). */
final class Positions {

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

    /** Up to where every position is listed: the panel's size, as far as its directory tells. */
    static int size(Directory directory) {
        Set<Integer> listed = new TreeSet<>();
        for (Circuit c : directory.circuits()) listed.addAll(c.positions());
        int size = 0;
        while (listed.contains(size + 1)) size++;
        return size < 12 ? Integer.MAX_VALUE / 4 : size;
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
