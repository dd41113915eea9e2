package asfound.drawing.schedule.spine;

import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.spine.Spine.Token;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Puts together what is one column of positions and was taken for two: a worksheet sets {@code 7} at the right of its cell and
 * {@code 1,3,5}, which is a text to it, at the left.
 */
final class SplitColumns {

    /** A cell of positions is no wider, in sizes of its type. */
    private static final double WIDEST = 12;

    private static final int ROWS = 4, LISTS = 2;

    private SplitColumns() {}

    /** The columns, with those put together that fill each other's rows in rising order. */
    static List<List<Token>> joined(List<List<Token>> columns, Phrases phrases) {
        List<List<Token>> out = new ArrayList<>(columns);
        for (int i = 0; i < out.size(); i++)
            for (int j = i + 1; j < out.size(); ) {
                List<Token> a = out.get(i), b = out.get(j);
                List<Token> both = mayBeOne(a, b) ? both(a, b) : List.of();
                if (!both.isEmpty() && areOne(both, phrases)) {
                    out.set(i, both);
                    out.remove(j);
                    j = i + 1;
                } else j++;
            }
        return out;
    }

    private static List<Token> both(List<Token> a, List<Token> b) {
        List<Token> both = new ArrayList<>(a);
        both.addAll(b);
        both.sort(Comparator.comparingDouble(Token::y));
        return both;
    }

    /** Lists of positions in the one and single ones in the other. */
    private static boolean mayBeOne(List<Token> a, List<Token> b) {
        if (a.size() + b.size() < ROWS || a.size() < LISTS || b.size() < LISTS) return false;
        return areLists(a) && areSingle(b) || areLists(b) && areSingle(a);
    }

    /** They stand in turn, each higher than the one above. */
    private static boolean areOne(List<Token> both, Phrases phrases) {
        double size = both.get(0).phrase().size();
        double left = both.stream().mapToDouble(t -> t.phrase().left()).min().orElse(0);
        double right = both.stream().mapToDouble(t -> t.phrase().right()).max().orElse(0);
        if (right - left > WIDEST * size) return false;
        for (int i = 1; i < both.size(); i++) {
            Token above = both.get(i - 1), here = both.get(i);
            if (here.y() - above.y() < 0.5 * size) return false;
            if (here.text().first() <= above.text().first()) return false;
        }
        return both.stream().allMatch(t -> isAlone(t, left, right, phrases));
    }

    private static boolean areLists(List<Token> column) {
        return column.stream().allMatch(t -> t.text().numbers().size() > 1);
    }

    private static boolean areSingle(List<Token> column) {
        return column.stream().allMatch(t -> t.text().numbers().size() == 1);
    }

    private static boolean isAlone(Token token, double left, double right, Phrases phrases) {
        return phrases.near(token.y(), 0.3 * token.phrase().size()).stream()
                .noneMatch(p -> p != token.phrase() && p.left() < right && p.right() > left);
    }
}
