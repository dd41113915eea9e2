package asfound.drawing.schedule.doubt;

import asfound.model.Directory;
import asfound.model.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Directories of one sheet that go by one name: at most one of them can be right. Each after the first is told once. */
public final class NamedAlike {

    private NamedAlike() {}

    public static List<Problem> problems(List<Directory> onSheet) {
        List<Problem> out = new ArrayList<>();
        Set<String> met = new HashSet<>();
        for (Directory d : onSheet)
            if (!met.add(d.panel()))
                out.add(new Problem(
                        d.place(),
                        "Two directories on this sheet were both read as '" + d.panel() + "'.",
                        "Look which of them has another name."));
        return out;
    }
}
