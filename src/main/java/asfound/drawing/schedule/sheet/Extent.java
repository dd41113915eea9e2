package asfound.drawing.schedule.sheet;

import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.model.Problem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Whether a directory is whole, told by its numbers alone: they begin at 1, none is missing, both sides are there and end
 * together. It is asked when the pages of a directory have been put together.
 */
public final class Extent {

    private static final String LOOK = "Look at the drawing at this place.";
    private static final int FEW_ROWS = 3;

    private final Part part;
    private final Directory read;
    private final TreeSet<Integer> seen = new TreeSet<>();
    private final List<Problem> problems;
    private final Set<Integer> unread;
    private double confidence;

    private Extent(Part part) {
        this.part = part;
        read = part.directory();
        read.circuits().forEach(c -> seen.addAll(c.positions()));
        problems = new ArrayList<>(read.problems());
        unread = new TreeSet<>(read.unread());
        confidence = read.confidence();
    }

    /** The directory with what its numbers say against it. */
    public static Directory checked(Part part) {
        Extent extent = new Extent(part);
        if (!extent.seen.isEmpty()) {
            extent.beginning();
            extent.holes();
            extent.sides();
            extent.twice();
            extent.size();
        }
        Directory d = part.directory();
        return new Directory(
                d.panel(),
                d.header(),
                d.circuits(),
                d.totals(),
                d.place(),
                Math.round(100 * Math.max(0.05, extent.confidence)) / 100.0,
                List.copyOf(extent.unread),
                extent.problems);
    }

    private void say(double cost, String message) {
        problems.add(new Problem(read.place(), message, LOOK));
        confidence -= cost;
    }

    private void beginning() {
        int first = seen.first();
        boolean missed = part.rowEach() && !part.listed() ? first > 1 : first > FEW_ROWS;
        if (missed && first > 2)
            say(
                    0.05,
                    "Positions 1 to " + (first - 1) + " were not found: the directory begins at position " + first
                            + ".");
        else if (missed && !isHalf()) say(0.05, "Position 1 was not found: the directory begins at position 2.");
    }

    /** Where each position has its row, none is missing between the first and the last. */
    private void holes() {
        int lowest = seen.first(), highest = seen.last();
        List<Integer> missing = IntStream.range(lowest, highest)
                .filter(p -> !seen.contains(p))
                .boxed()
                .toList();
        if (missing.isEmpty()) return;
        if (!part.rowEach()) confidence -= 0.02;
        else if (missing.size() * 4 < highest - lowest) {
            unread.addAll(missing);
            for (int p : missing)
                say(0.02, "Position " + p + " was not found between " + lowest + " and " + highest + ".");
        } else
            say(
                    0.3,
                    missing.size() + " positions between " + lowest + " and " + highest + " were not found: " + missing
                            + ".");
    }

    /** The header says how many positions there are: ways of three phases count three times. */
    private void size() {
        int stated = part.stated(), last = seen.last();
        if (stated > 0 && stated != last && stated * 3 != last)
            say(
                    0.05,
                    "The header says " + stated + " positions, and the directory was read as ending at position " + last
                            + ".");
    }

    private boolean isHalf() {
        return seen.stream().map(p -> p % 2).distinct().count() == 1
                && read.circuits().size() >= FEW_ROWS;
    }

    private void sides() {
        if (isHalf() && !part.listed())
            say(
                    0.2,
                    "Only " + (seen.first() % 2 == 1 ? "odd" : "even")
                            + " positions were found: the other side is missing.");
        else if (part.paired()) {
            int odd = highest(1), even = highest(0);
            if (Math.abs(odd - even) > 1)
                say(0.1, "One side ends at position " + odd + " and the other at " + even + ".");
        }
    }

    private int highest(int rest) {
        return seen.stream().filter(p -> p % 2 == rest).max(Integer::compare).orElse(0);
    }

    private void twice() {
        Set<Integer> once = new TreeSet<>(), twice = new TreeSet<>();
        read.circuits().stream()
                .map(Circuit::positions)
                .flatMap(Collection::stream)
                .forEach(p -> {
                    if (!once.add(p)) twice.add(p);
                });
        for (int p : twice)
            if (problems.stream().noneMatch(q -> q.message().startsWith("Position " + p + " belongs to two entries")))
                say(0.02, "Position " + p + " belongs to two entries.");
    }
}
