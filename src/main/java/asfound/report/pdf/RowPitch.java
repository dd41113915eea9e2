package asfound.report.pdf;

import asfound.model.Box;
import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.model.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How far apart the rows of a directory stand: the box of an entry is as high as its words, and tells less. */
final class RowPitch {

    private RowPitch() {}

    /** In points, of the directories on one page of a drawing: the median from each entry to the next of its side. */
    static Optional<Double> on(Place.OnPage page, List<Directory> directories) {
        List<Double> pitches = new ArrayList<>();
        for (Directory directory : directories) {
            Map<Integer, Box> byPosition = new HashMap<>();
            for (Circuit c : directory.circuits())
                box(c, page).ifPresent(b -> byPosition.putIfAbsent(c.positions().get(0), b));
            for (Circuit c : directory.circuits())
                box(c, page).ifPresent(here -> {
                    int last = c.positions().get(c.positions().size() - 1);
                    // two sides, or one list
                    for (int next : new int[] {last + 2, last + 1})
                        Optional.ofNullable(byPosition.get(next))
                                .filter(there ->
                                        there.y() > here.y() && there.x() < here.right() && here.x() < there.right())
                                .ifPresent(there -> pitches.add(
                                        (there.y() - here.y()) / c.positions().size()));
                });
        }
        pitches.sort(null);
        return pitches.isEmpty() ? Optional.empty() : Optional.of(pitches.get(pitches.size() / 2));
    }

    private static Optional<Box> box(Circuit c, Place.OnPage page) {
        return c.place() instanceof Place.OnPage p
                        && p.file().equals(page.file())
                        && p.page() == page.page()
                        && !c.positions().isEmpty()
                ? p.area()
                : Optional.empty();
    }
}
