package asfound.drawing.schedule.phrase;

import asfound.drawing.page.Rules;
import asfound.drawing.page.Sheet;
import asfound.drawing.page.Word;
import asfound.drawing.schedule.text.LoadText;
import asfound.model.Box;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Words that stand together on one line, with no rule and no wider gap than a space between them. Nothing is asked more often
 * of a sheet than where its phrases stand, so edges and middle are at hand.
 */
public final class Phrase {

    private static final double GAP = 0.62;
    private static final double WIDEST_GAP = 1.05;
    /** So far behind its figure a unit may be set. */
    private static final double UNIT_GAP = 2;

    private final List<Word> words;
    private final String text;
    private final Box box;
    private final double size;
    private final double right;
    private final double centreX;
    private final double centreY;
    /** What its text means, from when somebody first asks. */
    private KnownText known;

    /**
     * @param words from left to right, at least one
     * @param text the words with single spaces
     * @param box around them
     */
    Phrase(List<Word> words, String text, Box box) {
        this.words = List.copyOf(words);
        this.text = text;
        this.box = box;
        size = words.get(0).size();
        right = box.right();
        centreX = box.centreX();
        centreY = box.centreY();
    }

    public static Phrase of(List<Word> words) {
        Word first = words.get(0);
        if (words.size() == 1) return new Phrase(words, first.text(), first.box());
        StringBuilder text = new StringBuilder(first.text());
        Box box = first.box();
        for (Word w : words.subList(1, words.size())) {
            text.append(' ').append(w.text());
            box = box.union(w.box());
        }
        return new Phrase(words, text.toString(), box);
    }

    public List<Word> words() {
        return words;
    }

    public String text() {
        return text;
    }

    public Box box() {
        return box;
    }

    /** What its text means, on this sheet or any other. */
    KnownText known(KnownTexts texts) {
        if (known == null) known = texts.of(text);
        return known;
    }

    public double size() {
        return size;
    }

    public double centreX() {
        return centreX;
    }

    public double centreY() {
        return centreY;
    }

    public double left() {
        return box.x();
    }

    public double right() {
        return right;
    }

    /** All phrases of a sheet's upright words, in any order. */
    public static List<Phrase> of(Sheet sheet) {
        List<Word> words = sheet.words().stream().filter(Word::upright).toList();
        List<Phrase> out = new ArrayList<>();
        List<List<Word>> lines = lines(words);
        double[] spaces = spaces(lines);
        double gap = gap(spaces);
        ColumnGaps columns = new ColumnGaps(lines, spaces, sheet.down());
        for (List<Word> line : lines) join(line, sheet.down(), gap, columns, out);
        return out;
    }

    /** From top to bottom, and from left to right on one level. */
    public static final Comparator<Phrase> ORDER = (a, b) -> {
        int down = Double.compare(a.centreY, b.centreY);
        return down != 0 ? down : Double.compare(a.left(), b.left());
    };

    /** From left to right, and from top to bottom at one edge. */
    public static final Comparator<Phrase> ACROSS = (a, b) -> {
        int across = Double.compare(a.left(), b.left());
        return across != 0 ? across : Double.compare(a.centreY, b.centreY);
    };

    /** The widest gap inside a phrase, in units of the type's size: wide and spaced types have wide spaces. */
    private static double gap(double[] spaces) {
        if (spaces.length < 6) return GAP;
        return Math.min(WIDEST_GAP, Math.max(GAP, 1.35 * spaces[spaces.length / 2]));
    }

    /** The spaces between words of lines, narrow ones first, in units of the type's size; none that may part columns. */
    private static double[] spaces(List<List<Word>> lines) {
        double[] spaces = new double[lines.stream().mapToInt(List::size).sum()];
        int n = 0;
        for (List<Word> line : lines)
            for (int i = 1; i < line.size(); i++) {
                Word w = line.get(i);
                double space = (w.left() - line.get(i - 1).right()) / w.size();
                if (space > 0.1 && space < 0.95) spaces[n++] = space;
            }
        Arrays.sort(spaces, 0, n);
        return Arrays.copyOf(spaces, n);
    }

    /** Words whose middles lie on one level, each line from left to right. */
    public static List<List<Word>> lines(List<Word> words) {
        List<Word> sorted = new ArrayList<>(words);
        sorted.sort(Phrase::byPlace);
        List<List<Word>> lines = new ArrayList<>();
        List<Word> open = new ArrayList<>();
        for (Word w : sorted) {
            if (!open.isEmpty()
                    && w.centreY() - open.get(0).centreY()
                            > 0.3 * Math.min(w.size(), open.get(0).size())) {
                lines.add(open);
                open = new ArrayList<>();
            }
            open.add(w);
        }
        if (!open.isEmpty()) lines.add(open);
        for (List<Word> line : lines) line.sort(Phrase::fromTheLeft);
        return lines;
    }

    private static int byPlace(Word a, Word b) {
        int down = Double.compare(a.centreY(), b.centreY());
        return down != 0 ? down : fromTheLeft(a, b);
    }

    private static int fromTheLeft(Word a, Word b) {
        int across = Double.compare(a.left(), b.left());
        return across != 0 ? across : a.text().compareTo(b.text());
    }

    private static void join(List<Word> line, Rules down, double gap, ColumnGaps columns, List<Phrase> out) {
        List<Word> open = new ArrayList<>();
        for (Word w : line) {
            Word last = open.isEmpty() ? null : open.get(open.size() - 1);
            if (last != null && (!follows(last, w, down, gap) || columns.parts(last, w))) {
                out.add(Phrase.of(open));
                open = new ArrayList<>();
            }
            open.add(w);
        }
        if (!open.isEmpty()) out.add(Phrase.of(open));
    }

    private static boolean follows(Word a, Word b, Rules down, double widest) {
        double size = Math.min(a.size(), b.size());
        double gap = b.left() - a.right();
        // a lone W may be the colour of a conductor
        boolean unit =
                gap > widest * size && b.text().length() > 1 && LoadText.isUnit(b.text()) && GapTally.isFigure(a);
        if (gap > (unit ? UNIT_GAP : widest) * size || gap < -0.5 * size || Math.max(a.size(), b.size()) > 1.7 * size)
            return false;
        return !down.separates(a.right() - 0.15 * size, b.left() + 0.15 * size, b.centreY());
    }

    /** Its words whose middles lie between two edges. */
    public String piece(double left, double right) {
        if (left() >= left && right() <= right) return text;
        if (right() < left || left() > right || words.size() == 1 && !isBetween(words.get(0), left, right)) return "";
        return words.stream()
                .filter(w -> isBetween(w, left, right))
                .map(Word::text)
                .collect(Collectors.joining(" "));
    }

    private static boolean isBetween(Word w, double left, double right) {
        return w.centreX() >= left && w.centreX() < right;
    }

    /**
     * What of each phrase lies between two edges that follow each other, where anything does: a list for each such stretch.
     *
     * @param edges from left to right
     */
    public static List<List<String>> pieces(List<Phrase> phrases, List<Double> edges) {
        double[] at = edges.stream().mapToDouble(Double::doubleValue).toArray();
        List<List<String>> out = new ArrayList<>();
        for (int i = 1; i < at.length; i++) out.add(new ArrayList<>());
        for (Phrase p : phrases) {
            int i = 1;
            while (i < at.length && at[i] < p.left()) i++;
            for (; i < at.length && at[i - 1] <= p.right(); i++) {
                String text = p.piece(at[i - 1], at[i]);
                if (!text.isEmpty()) out.get(i - 1).add(text);
            }
        }
        return out;
    }
}
