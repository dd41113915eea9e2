package asfound.drawing.schedule.doubt;

import asfound.model.Place;
import asfound.model.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What speaks against a reading: what of it a person must look at, and how much all of that counts. */
public final class Doubts {

    private static final String LOOK = "Look at the drawing at this place.";

    private final List<Problem> problems = new ArrayList<>();
    private final Set<Integer> unread = new TreeSet<>();
    private double confidence = 1;

    /** @param cost from 0 to 1 */
    void say(Place place, double cost, String message) {
        problems.add(new Problem(place, message, LOOK));
        count(cost);
    }

    void say(Problem problem) {
        problems.add(problem);
    }

    /** Counts something of which there is nothing to say. */
    void count(double cost) {
        confidence -= cost;
    }

    /** The device at a position was not read in full. */
    public void unread(int position) {
        unread.add(position);
    }

    public List<Problem> problems() {
        return problems;
    }

    public List<Integer> unread() {
        return List.copyOf(unread);
    }

    /** From 0 to 1, to a hundredth. */
    public double confidence() {
        return Math.round(100 * Math.max(0.05, Math.min(1, confidence))) / 100.0;
    }
}
