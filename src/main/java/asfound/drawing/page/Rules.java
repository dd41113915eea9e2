package asfound.drawing.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Rules of one direction, joined where they continue each other, in order of where they lie. */
public final class Rules {

    private static final double SAME_LINE = 0.9;
    private static final double GAP = 1.6;
    private static final Comparator<Rule> ORDER =
            Comparator.comparingDouble(Rule::at).thenComparingDouble(Rule::from).thenComparingDouble(Rule::to);

    private final List<Rule> rules;
    /** Where each lies: looked for more often than anything else. */
    private final double[] places;

    private Rules(List<Rule> rules) {
        this.rules = rules;
        places = new double[rules.size()];
        for (int i = 0; i < places.length; i++) places[i] = rules.get(i).at();
    }

    /** Joins pieces of one line: what lies within a hair of the same place and overlaps or nearly touches. */
    public static Rules joined(List<Rule> pieces) {
        List<Rule> sorted = new ArrayList<>(pieces);
        sorted.sort(ORDER);
        List<Rule> out = new ArrayList<>();
        for (int i = 0; i < sorted.size(); ) {
            int j = i + 1;
            while (j < sorted.size() && sorted.get(j).at() - sorted.get(i).at() <= SAME_LINE) j++;
            joinLine(sorted.subList(i, j), out);
            i = j;
        }
        out.sort(ORDER);
        return new Rules(List.copyOf(out));
    }

    private static void joinLine(List<Rule> line, List<Rule> out) {
        List<Rule> byStart = new ArrayList<>(line);
        byStart.sort(Comparator.comparingDouble(Rule::from));
        Rule open = null;
        for (Rule r : byStart) {
            if (open != null && r.from() <= open.to() + GAP)
                open = new Rule(open.at(), open.from(), Math.max(open.to(), r.to()));
            else {
                if (open != null) out.add(open);
                open = r;
            }
        }
        if (open != null) out.add(open);
    }

    public List<Rule> all() {
        return rules;
    }

    /** Those that lie from {@code low} to {@code high}, both included. */
    public List<Rule> between(double low, double high) {
        int from = first(low, 0);
        return rules.subList(from, first(Math.nextUp(high), from));
    }

    /** Whether one of them lies between the two places and passes {@code point}. */
    public boolean separates(double low, double high, double point) {
        for (int i = first(low, 0); i < places.length && places[i] <= high; i++)
            if (rules.get(i).passes(point)) return true;
        return false;
    }

    /** The first that lies at a place or behind it, none before {@code from}. */
    private int first(double at, int from) {
        int low = from, high = places.length;
        while (low < high) {
            int mid = (low + high) >>> 1;
            if (places[mid] < at) low = mid + 1;
            else high = mid;
        }
        return low;
    }
}
