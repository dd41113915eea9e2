package asfound.drawing.page;

import asfound.model.Box;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** To which part of the page painting is held, where that is a rectangle; of any other shape nothing is sure. */
final class ClipBoxes {

    private static final Box ALL = new Box(-1e6, -1e6, 2e6, 2e6);
    private static final Box UNSURE = new Box(0, 0, 0, 0);

    private final Deque<Box> saved = new ArrayDeque<>();
    private Box now = ALL;

    void save() {
        saved.push(now);
    }

    void restore() {
        if (!saved.isEmpty()) now = saved.pop();
    }

    int depth() {
        return saved.size();
    }

    /** Back to so many saved ones, whatever a form left open. */
    void restoreTo(int depth) {
        while (saved.size() > depth) restore();
    }

    void hold(Optional<Box> rectangle) {
        now = rectangle.map(r -> both(now, r)).orElse(UNSURE);
    }

    /** What is painted of a rectangle; without extent where nothing of it is, or nothing is sure. */
    Box painted(Box rectangle) {
        return both(now, rectangle);
    }

    static Box both(Box a, Box b) {
        double x = Math.max(a.x(), b.x()), y = Math.max(a.y(), b.y());
        double right = Math.min(a.right(), b.right()), bottom = Math.min(a.bottom(), b.bottom());
        return right <= x || bottom <= y ? UNSURE : new Box(x, y, right - x, bottom - y);
    }
}
