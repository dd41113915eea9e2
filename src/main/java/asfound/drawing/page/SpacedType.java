package asfound.drawing.page;

import asfound.model.Box;
import java.util.ArrayList;
import java.util.List;

/** Puts together what was set with a space between every two letters: {@code P A N E L   E M - 2}. */
final class SpacedType {

    private static final int FEWEST = 4;
    private static final double WIDEST = 0.9;
    private static final double EVEN = 1.5;
    private static final double WORDS = 4.5;

    private SpacedType() {}

    static List<Word> joined(List<Word> words) {
        List<Word> out = new ArrayList<>(words.size());
        List<Word> open = new ArrayList<>();
        for (int i : byLine(words)) {
            Word w = words.get(i);
            boolean single = w.text().codePointCount(0, w.text().length()) == 1;
            // another word on the line ends a row of letters
            if (!single) {
                out.addAll(together(open));
                open.clear();
                out.add(w);
                continue;
            }
            if (!open.isEmpty() && !follows(open.get(open.size() - 1), w)) {
                out.addAll(together(open));
                open.clear();
            }
            open.add(w);
        }
        out.addAll(together(open));
        return out;
    }

    private static int[] byLine(List<Word> words) {
        int[] all = new int[words.size()];
        double[] lines = new double[all.length], lefts = new double[all.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = i;
            lefts[i] = words.get(i).left();
            lines[i] = Math.round(words.get(i).bottom() / (0.3 * words.get(i).size()));
        }
        Ordered.sort(all, all.length, (a, b) -> {
            int line = Double.compare(lines[a], lines[b]);
            int place = line != 0 ? line : Double.compare(lefts[a], lefts[b]);
            return place != 0
                    ? place
                    : words.get(a).text().compareTo(words.get(b).text());
        });
        return all;
    }

    private static boolean follows(Word a, Word b) {
        return Math.abs(a.bottom() - b.bottom()) < 0.15 * a.size()
                && Math.abs(a.size() - b.size()) < 0.05 * a.size()
                && b.left() > a.right() - 0.1 * a.size()
                && b.left() - a.right() < WORDS * WIDEST * a.size();
    }

    /** The words of a row of letters; the letters themselves where they are no spaced type. */
    private static List<Word> together(List<Word> row) {
        if (row.size() < FEWEST
                || mostlyMarks(row)
                || row.stream().allMatch(w -> w.text().matches("[ABC\\d]"))) return List.copyOf(row);
        double least = Double.MAX_VALUE;
        for (int i = 1; i < row.size(); i++) least = Math.min(least, gap(row, i));
        if (least <= 0 || least > WIDEST * row.get(0).size()) return List.copyOf(row);
        List<Word> out = new ArrayList<>();
        int from = 0, inside = 0;
        for (int i = 1; i <= row.size(); i++) {
            if (i < row.size() && gap(row, i) > WORDS * least) return List.copyOf(row);
            if (i < row.size() && gap(row, i) <= EVEN * least) {
                inside++;
                continue;
            }
            out.add(word(row.subList(from, i)));
            from = i;
        }
        return inside * 3 >= (row.size() - 1) * 2 ? out : List.copyOf(row);
    }

    /** {@code 1 & 2 -} are words of one letter each. */
    private static boolean mostlyMarks(List<Word> row) {
        return row.stream()
                                .filter(w -> !Character.isLetterOrDigit(w.text().codePointAt(0)))
                                .count()
                        * 2
                >= row.size();
    }

    private static double gap(List<Word> row, int i) {
        return row.get(i).left() - row.get(i - 1).right();
    }

    private static Word word(List<Word> letters) {
        Box box = letters.stream().map(Word::box).reduce(Box::union).orElseThrow();
        String text = String.join("", letters.stream().map(Word::text).toList());
        return new Word(text, box, letters.get(0).size(), letters.get(0).upright());
    }
}
