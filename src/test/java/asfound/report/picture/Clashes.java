package asfound.report.picture;

import asfound.model.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What is written or placed on a picture, and what of it meets something else: a word, a box, a line. */
public final class Clashes {

    private record Piece(String what, Set<String> lines, Box box) {}

    private record Stretch(String what, double x1, double y1, double x2, double y2) {}

    private final List<Piece> pieces = new ArrayList<>();
    private final List<Stretch> stretches = new ArrayList<>();

    /** Something that must touch no other piece, and no line but those that belong to it. */
    public void piece(String what, Box box) {
        piece(what, Set.of(), box);
    }

    /**
     * The same, where lines of these names may meet it: a device sits on its line.
     *
     * @param lines the names of its lines
     */
    public void piece(String what, Set<String> lines, Box box) {
        pieces.add(new Piece(what, lines, box));
    }

    /** A line through these corners. */
    public void line(String what, List<double[]> corners) {
        for (int i = 1; i < corners.size(); i++) {
            double[] a = corners.get(i - 1), b = corners.get(i);
            stretches.add(new Stretch(what, a[0], a[1], b[0], b[1]));
        }
    }

    /** What meets what, in words. */
    public List<String> found() {
        List<String> found = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Piece a = pieces.get(i);
            for (Piece b : pieces.subList(i + 1, pieces.size()))
                if (meet(a.box, b.box.x(), b.box.y(), b.box.right(), b.box.bottom()))
                    found.add(a.what + " meets " + b.what);
            for (Stretch s : stretches)
                if (!a.lines.contains(s.what)
                        && meet(
                                a.box,
                                Math.min(s.x1, s.x2),
                                Math.min(s.y1, s.y2),
                                Math.max(s.x1, s.x2),
                                Math.max(s.y1, s.y2))) found.add(a.what + " meets the line " + s.what);
        }
        return found;
    }

    /** Overlaps by more than a hair; boxes that lines end at only touch them. */
    private static boolean meet(Box a, double left, double top, double right, double bottom) {
        double hair = 0.3;
        return a.x() + hair < right && left < a.right() - hair && a.y() + hair < bottom && top < a.bottom() - hair;
    }
}
