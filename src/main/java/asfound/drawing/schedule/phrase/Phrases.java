package asfound.drawing.schedule.phrase;

import asfound.drawing.page.Word;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.RandomAccess;
import java.util.Spliterator;

/**
 * All phrases of a sheet from top to bottom and left to right. Nearly all that is asked of them is asked of a few lines, and
 * those are found without looking at the others.
 */
public final class Phrases extends AbstractList<Phrase> implements RandomAccess {

    /** Lines are given a hair too generously: whoever asks looks at each phrase once more, by his own measure. */
    private static final double HAIR = 1e-6;

    private final ArrayList<Phrase> all;
    private final List<Word> turned;
    private final List<Overprint> overprints;
    private final Meanings meanings;
    private final double[] levels;
    private final double largest;
    private final double tallest;

    /**
     * Those of a sheet.
     *
     * @param all in any order; becomes this list's own
     * @param turned the words that do not run as most of the sheet's text
     * @param overprints the texts in large type that are printed over these
     * @param meanings of the sheet's texts
     */
    Phrases(ArrayList<Phrase> all, List<Word> turned, List<Overprint> overprints, Meanings meanings) {
        this.all = all;
        this.turned = turned;
        this.overprints = overprints;
        this.meanings = meanings;
        all.sort(Phrase.ORDER);
        levels = new double[all.size()];
        double size = 0, height = 0;
        for (int i = 0; i < levels.length; i++) {
            Phrase p = all.get(i);
            levels[i] = p.centreY();
            size = Math.max(size, p.size());
            height = Math.max(height, p.box().h());
        }
        largest = size;
        tallest = height;
    }

    /**
     * Some of a sheet, in any order.
     *
     * @param meanings of the sheet's texts
     */
    public static Phrases of(List<Phrase> some, Meanings meanings) {
        return new Phrases(new ArrayList<>(some), List.of(), List.of(), meanings);
    }

    /** The largest size of type. */
    public double largest() {
        return largest;
    }

    /** The height of the tallest. */
    public double tallest() {
        return tallest;
    }

    /** The words that do not run as most of the sheet's text, and are in no phrase. */
    public List<Word> turned() {
        return turned;
    }

    /** The texts in large type that are printed over these, and are none of them. */
    public List<Overprint> overprints() {
        return overprints;
    }

    /** What they mean, each looked at once. */
    public Meanings meanings() {
        return meanings;
    }

    /** Those whose middles lie from one level to another. */
    public List<Phrase> between(double top, double bottom) {
        int from = first(top - HAIR, 0);
        return all.subList(from, first(bottom + HAIR, from));
    }

    /** Those whose middles lie no further from a level than a reach. */
    public List<Phrase> near(double level, double reach) {
        return between(level - reach, level + reach);
    }

    /** The first that lies on a level or below it, none before {@code from}. */
    private int first(double level, int from) {
        int low = from, high = levels.length;
        while (low < high) {
            int mid = (low + high) >>> 1;
            if (levels[mid] < level) low = mid + 1;
            else high = mid;
        }
        return low;
    }

    @Override
    public Iterator<Phrase> iterator() {
        return all.iterator();
    }

    @Override
    public Spliterator<Phrase> spliterator() {
        return all.spliterator();
    }

    @Override
    public Phrase get(int index) {
        return all.get(index);
    }

    @Override
    public int size() {
        return all.size();
    }
}
