package asfound.drawing.schedule.spine;

import asfound.drawing.schedule.phrase.Span;
import asfound.drawing.schedule.spine.Spine.Token;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Parts a band of spines where what stands side by side is no one table: a list of revisions beside a directory has its own
 * rows, and its numbers begin anew. Read together, the columns of both would be sought in the few rows of the shorter.
 */
public final class BandParts {

    /** Entries of one row stand no further above or below each other, in sizes of their type. */
    private static final double LEVEL = 0.2;

    /** Title and headings of a table take up no more above its first row, in sizes of its type. */
    private static final double HEAD = 8;

    private BandParts() {}

    /**
     * Spines that share rows, or whose numbers can complete each other.
     *
     * @param limits how far it may reach to both sides
     */
    public record Part(List<Spine> spines, Span limits) {}

    /**
     * The parts of a band, each from left to right.
     *
     * @param others the numbers of lists on the sheet that are read as no table
     */
    public static List<Part> of(List<Spine> band, List<Spine> others) {
        List<List<Spine>> parts = new ArrayList<>();
        for (Spine s : band) {
            List<List<Spine>> own = parts.stream()
                    .filter(p -> p.stream().anyMatch(o -> canBeOne(o, s)))
                    .toList();
            List<Spine> joined = new ArrayList<>();
            own.forEach(joined::addAll);
            joined.add(s);
            parts.removeAll(own);
            parts.add(joined);
        }
        double top = band.stream()
                .mapToDouble(s -> s.firstY() - HEAD * s.size())
                .min()
                .orElse(0);
        double bottom = band.stream().mapToDouble(Spine::lastY).max().orElse(0);
        List<Spine> all = new ArrayList<>(band);
        others.stream().filter(o -> o.lastY() > top && o.firstY() < bottom).forEach(all::add);
        return parts.stream().map(p -> new Part(p, limits(p, all))).toList();
    }

    /** Up to the numbers of the nearest others. */
    private static Span limits(List<Spine> part, List<Spine> all) {
        double first = part.get(0).left(), last = part.get(part.size() - 1).right();
        double left = Double.NEGATIVE_INFINITY, right = Double.POSITIVE_INFINITY;
        for (Spine s : all) {
            if (s.right() < first) left = Math.max(left, s.right());
            if (s.left() > last) right = Math.min(right, s.left());
        }
        return new Span(left, right);
    }

    private static boolean canBeOne(Spine a, Spine b) {
        Set<Integer> numbers = new HashSet<>(a.everyNumber());
        return b.everyNumber().stream().noneMatch(numbers::contains)
                || areHeadedOnOneLine(a, b)
                || haveOneSetOfRows(a, b);
    }

    /** As several panels are that a drafter set side by side, whose rows part where loads are wrapped. */
    private static boolean areHeadedOnOneLine(Spine a, Spine b) {
        return a.headed()
                && b.headed()
                && Math.abs(a.heading().orElseThrow().centreY()
                                - b.heading().orElseThrow().centreY())
                        < LEVEL * a.size();
    }

    /** Most of the entries of the shorter have one of the other on their level; some do by chance. */
    private static boolean haveOneSetOfRows(Spine a, Spine b) {
        Spine fewer = a.tokens().size() < b.tokens().size() ? a : b, more = fewer == a ? b : a;
        double near = LEVEL * fewer.size();
        long level = fewer.tokens().stream()
                .mapToDouble(Token::y)
                .filter(y -> more.tokens().stream().anyMatch(t -> Math.abs(t.y() - y) < near))
                .count();
        return 10 * level >= 7 * fewer.tokens().size();
    }
}
