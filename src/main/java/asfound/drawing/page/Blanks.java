package asfound.drawing.page;

import asfound.model.Box;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Where spaces stand among letters that run from left to right. */
final class Blanks {

    private static final Comparator<Box> ORDER = (a, b) -> {
        int line = Double.compare(a.bottom(), b.bottom());
        return line != 0 ? line : Double.compare(a.x(), b.x());
    };

    private final List<Box> all = new ArrayList<>();
    /** Most pages never ask. */
    private boolean sorted;

    Blanks(List<Glyph> letters) {
        for (Glyph g : letters) if (g.isSpace()) all.add(g.box());
    }

    /** Whether the middle of one lies between two places, on a line from {@code low} to {@code high}. */
    boolean between(double left, double right, double low, double high) {
        if (!sorted) all.sort(ORDER);
        sorted = true;
        for (int i = first(low); i < all.size() && all.get(i).bottom() <= high; i++) {
            double x = all.get(i).centreX();
            if (x > left && x < right) return true;
        }
        return false;
    }

    private int first(double bottom) {
        int low = 0, high = all.size();
        while (low < high) {
            int mid = (low + high) >>> 1;
            if (all.get(mid).bottom() < bottom) low = mid + 1;
            else high = mid;
        }
        return low;
    }
}
