package asfound.audit;

import asfound.model.Directory;
import asfound.model.Problem;
import asfound.network.Equipment;
import asfound.network.Network;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Panels that have a directory on more than one drawing: nobody can tell from the paper which of them is valid. */
final class SamePanelTwice {

    private SamePanelTwice() {}

    /** One problem for each directory after a panel's first. */
    static List<Problem> problems(List<Directory> directories, Network network) {
        Map<String, String> nameOf = new HashMap<>();
        for (Equipment e : network.equipment()) {
            nameOf.put(e.name(), e.name());
            e.alsoWritten().forEach(written -> nameOf.putIfAbsent(written, e.name()));
        }
        Map<String, Directory> first = new HashMap<>();
        List<Problem> problems = new ArrayList<>();
        for (Directory d : directories) {
            String panel = nameOf.getOrDefault(d.panel(), d.panel());
            Directory earlier = first.putIfAbsent(panel, d);
            if (earlier != null)
                problems.add(new Problem(
                        d.place(),
                        panel + " has a second directory here; another is in "
                                + earlier.place().inWords() + ". Both were compared with the survey.",
                        "Take the one that is no longer valid out of the record set."));
        }
        return problems;
    }
}
