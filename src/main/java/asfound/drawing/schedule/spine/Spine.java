package asfound.drawing.schedule.spine;

import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.PositionText;
import asfound.model.Box;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A column of position numbers running down: what the rows of a schedule hang on.
 */
public final class Spine {

    /** One entry of the column. */
    public record Token(PositionText text, Phrase phrase) {

        public double y() {
            return phrase.centreY();
        }
    }

    private final List<Token> tokens;
    private final Optional<Box> heading;
    private final double left;
    private final double right;
    private final boolean oddThenEven;
    private final List<Integer> numbers;
    private final List<Integer> everyNumber;
    private final double pitch;

    /**
     * @param tokens from top to bottom, at least one
     * @param heading where a heading above it says that these are positions
     */
    public Spine(List<Token> tokens, Optional<Box> heading) {
        this.tokens = FirstToLast.of(tokens);
        this.heading = heading;
        left = tokens.stream().mapToDouble(t -> t.phrase().left()).min().orElse(0);
        right = tokens.stream().mapToDouble(t -> t.phrase().right()).max().orElse(0);
        numbers = tokens.stream().map(t -> t.text().order()).toList();
        everyNumber = tokens.stream().flatMap(t -> t.text().numbers().stream()).toList();
        pitch = pitch(tokens.stream().mapToDouble(Token::y).toArray(), size());
        oddThenEven = turnsToEven();
    }

    public List<Token> tokens() {
        return tokens;
    }

    public Optional<Box> heading() {
        return heading;
    }

    public boolean headed() {
        return heading.isPresent();
    }

    public double left() {
        return left;
    }

    public double right() {
        return right;
    }

    public double centreX() {
        return (left() + right()) / 2;
    }

    /** Around its numbers. */
    public Box box() {
        return tokens.stream().map(t -> t.phrase().box()).reduce(Box::union).orElseThrow();
    }

    public double firstY() {
        return tokens.get(0).y();
    }

    public double lastY() {
        return tokens.get(tokens.size() - 1).y();
    }

    public double size() {
        return tokens.get(0).phrase().size();
    }

    /** The usual distance from one row to the next. */
    public double pitch() {
        return pitch;
    }

    /**
     * The usual distance from one level to the next.
     *
     * @param levels from top to bottom
     * @param size of the type
     */
    public static double pitch(double[] levels, double size) {
        if (levels.length < 2) return 2 * size;
        double[] steps = new double[levels.length - 1];
        for (int i = 1; i < levels.length; i++) steps[i - 1] = levels[i] - levels[i - 1];
        Arrays.sort(steps);
        return Math.max(0.5 * size, steps[(steps.length - 1) / 2]);
    }

    public List<Integer> numbers() {
        return numbers;
    }

    public List<Integer> everyNumber() {
        return everyNumber;
    }

    public boolean isOdd() {
        for (int n : everyNumber) if (n % 2 != 1) return false;
        return true;
    }

    public boolean isEven() {
        for (int n : everyNumber) if (n % 2 != 0) return false;
        return true;
    }

    /** The odd positions from 1 up, and the even ones from 2 up below them. */
    public boolean isOddThenEven() {
        return oddThenEven;
    }

    private boolean turnsToEven() {
        List<Integer> n = numbers();
        int turn = n.indexOf(2);
        if (turn < 2 || turn > n.size() - 2 || n.get(0) != 1) return false;
        for (int i = 1; i < n.size(); i++)
            if (n.get(i) % 2 != (i < turn ? 1 : 0) || i != turn && up(i) < 1) return false;
        return true;
    }

    /** Its entries are the names of devices. */
    public boolean isNamed() {
        return tokens.stream().allMatch(t -> t.text().isNamed());
    }

    /** Each row names one position, and none a way with its phase. */
    public boolean isSingle() {
        for (Token t : tokens) if (t.text().numbers().size() != 1 || t.text().isWay()) return false;
        return true;
    }

    /** By how much the number of a row is above that of the row before. */
    public int up(int i) {
        return numbers.get(i) - numbers.get(i - 1);
    }

    /** How far apart in number a row and the one before can be: two where all around are odd, or all even. */
    public List<Integer> steps(int i) {
        if (oddThenEven) return List.of(2);
        int from = i - 1, to = i, rest = rest(i);
        while (from > 0 && up(from) > 0 && rest(from - 1) == rest) from--;
        while (to + 1 < tokens.size() && up(to + 1) > 0 && rest(to + 1) == rest) to++;
        boolean alike = rest(i - 1) == rest && to - from + 1 >= Math.min(6, tokens.size());
        return alike ? List.of(2) : List.of(1, 2);
    }

    private int rest(int i) {
        return numbers.get(i) % 2;
    }

    /** The share of rows whose number is above that of the row before. */
    double rising() {
        if (tokens.size() < 2) return 0;
        int up = 0;
        for (int i = 1; i < numbers.size(); i++) if (up(i) > 0) up++;
        return up / (tokens.size() - 1.0);
    }

    /** The number by which most rows go up. */
    public int step() {
        int[] counts = new int[8];
        for (int i = 1; i < numbers.size(); i++) {
            int step = up(i);
            if (step > 0 && step < counts.length) counts[step]++;
        }
        int best = 1;
        for (int s = 2; s < counts.length; s++) if (counts[s] > counts[best]) best = s;
        return best;
    }

    /** The share of rows that go up by the usual step, or that name several positions of one device. */
    public double regular() {
        return Math.max(regularByStep(), proportional());
    }

    /** The share of rows that lie as far below the row before as their number is above its: one row to a position. */
    private double proportional() {
        double[] heights = new double[tokens.size()];
        int n = 0;
        for (int i = 1; i < tokens.size(); i++) {
            double height =
                    up(i) <= 0 ? 0 : (tokens.get(i).y() - tokens.get(i - 1).y()) / up(i);
            if (height > 0) heights[n++] = height;
        }
        if (n == 0) return 0;
        Arrays.sort(heights, 0, n);
        double usual = heights[n / 2];
        if (usual < 0.8 * size()) return 0;
        int alike = 0;
        for (int i = 0; i < n; i++) if (Math.abs(heights[i] - usual) < 0.12 * usual) alike++;
        return alike / (tokens.size() - 1.0);
    }

    private double regularByStep() {
        int step = step(), good = 0;
        for (int i = 1; i < tokens.size(); i++) {
            int up = up(i);
            boolean grouped = tokens.get(i - 1).text().numbers().size() > 1
                    || tokens.get(i).text().numbers().size() > 1;
            if (up == step || grouped || up > 0 && up <= 6 && up % step == 0) good++;
        }
        return tokens.size() < 2 ? 0 : good / (tokens.size() - 1.0);
    }
}
