package asfound.drawing.page;

import asfound.model.Box;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Filled rectangles that were painted over letters, as an office does that amends a sheet: nobody who looks at the page sees
 * what is under them.
 */
final class Covers {

    private static final double BAND = 20;
    /** A smaller one hides no letter. */
    private static final double SMALLEST = 3;
    /** So much of a letter's box may stand out on each side: letters do not fill their boxes. */
    private static final double MARGIN = 0.2;

    private final List<Cover> all = new ArrayList<>();

    /** @param before how many letters were shown before it */
    private record Cover(Box box, int before) {}

    /** To be called once for each letter. */
    interface Step {
        void taken() throws IOException;
    }

    void add(Box box, int before) {
        if (before > 0 && box.w() >= SMALLEST && box.h() >= SMALLEST) all.add(new Cover(box, before));
    }

    int size() {
        return all.size();
    }

    /** The letters that are still seen, in their order. */
    List<Glyph> seen(List<Glyph> letters, Step step) throws IOException {
        if (all.isEmpty()) return letters;
        Map<Integer, List<Cover>> bands = new HashMap<>();
        List<Cover> tall = new ArrayList<>();
        for (Cover c : all) {
            int first = band(c.box().y()), last = band(c.box().bottom());
            if (last - first > 8) tall.add(c);
            else
                for (int b = first; b <= last; b++)
                    bands.computeIfAbsent(b, k -> new ArrayList<>()).add(c);
        }
        int free = all.get(all.size() - 1).before(); // from here on letters are shown over all covers
        List<Glyph> seen = new ArrayList<>(letters.size());
        for (int i = 0; i < free; i++) {
            step.taken();
            Glyph g = letters.get(i);
            List<Cover> near = bands.getOrDefault(band(g.box().centreY()), List.of());
            if (!isUnder(g.box(), i, near) && !isUnder(g.box(), i, tall)) seen.add(g);
        }
        seen.addAll(letters.subList(free, letters.size()));
        return seen;
    }

    private static int band(double y) {
        return (int) Math.floor(y / BAND);
    }

    private static boolean isUnder(Box letter, int at, List<Cover> covers) {
        double across = MARGIN * letter.w(), down = MARGIN * letter.h();
        for (Cover c : covers)
            if (at < c.before()
                    && c.box().x() <= letter.x() + across
                    && c.box().right() >= letter.right() - across
                    && c.box().y() <= letter.y() + down
                    && c.box().bottom() >= letter.bottom() - down) return true;
        return false;
    }
}
