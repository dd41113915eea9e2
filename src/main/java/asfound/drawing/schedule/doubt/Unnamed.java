package asfound.drawing.schedule.doubt;

import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.model.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Parts of a sheet without a name whose positions would go on from those of a directory on the same sheet: a half of it that
 * was taken for a table of its own. The directory that has the name must not pass for whole.
 */
public final class Unnamed {

    private Unnamed() {}

    public static List<Problem> beside(List<Directory> onSheet) {
        List<Problem> out = new ArrayList<>();
        for (Directory nameless : onSheet) {
            if (nameless.header().designation().isStated()
                    || nameless.circuits().isEmpty()
                    || lowest(nameless) == 1) continue;
            for (Directory named : onSheet)
                if (named.header().designation().isStated() && !overlap(named, nameless))
                    out.add(new Problem(
                            nameless.place(),
                            "The directory '" + named.panel()
                                    + "' may go on in a part of this sheet that has no name of its own, with positions "
                                    + lowest(nameless) + " to " + highest(nameless) + ".",
                            "Look at the drawing at this place."));
        }
        return out;
    }

    private static int lowest(Directory d) {
        return d.circuits().stream().mapToInt(Circuit::position).min().orElse(0);
    }

    private static int highest(Directory d) {
        return d.circuits().stream()
                .flatMap(c -> c.positions().stream())
                .mapToInt(p -> p)
                .max()
                .orElse(0);
    }

    private static boolean overlap(Directory a, Directory b) {
        Set<Integer> own = new HashSet<>();
        a.circuits().forEach(c -> own.addAll(c.positions()));
        return b.circuits().stream().anyMatch(c -> c.positions().stream().anyMatch(own::contains));
    }
}
