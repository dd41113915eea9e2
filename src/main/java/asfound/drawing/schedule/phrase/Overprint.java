package asfound.drawing.schedule.phrase;

import asfound.drawing.page.Word;
import asfound.model.Box;
import asfound.recordset.Patience;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A text in large type that is printed over others, level or askew, as a stamp is: {@code VOID},
 * {@code NOT FOR CONSTRUCTION}. It belongs to no entry that it runs over.
 *
 * @param text its words
 * @param words whose letters it consists of
 */
public record Overprint(String text, List<Word> words) {

    /** Times the size of most of the sheet's type. */
    private static final double LARGER = 2.5;
    /** A title's letters may reach into one word above or below it. */
    private static final int LEAST_COVERED = 2;

    private static final double SAME_SIZE = 0.05;
    private static final double SAME_LEVEL = 0.3;

    public Box box() {
        return words.stream().map(Word::box).reduce(Box::union).orElseThrow();
    }

    /**
     * Those of a sheet.
     *
     * @param askew the texts that run neither across nor along it
     */
    static List<Overprint> of(List<Word> all, List<Word> askew) {
        double usual = usual(all);
        List<List<Word>> texts = new ArrayList<>();
        large(all, usual).forEach(w -> {
            Patience.check();
            Optional<List<Word>> home = texts.stream()
                    .filter(text -> goesOn(text.get(text.size() - 1), w))
                    .findFirst();
            if (home.isPresent()) home.get().add(w);
            else texts.add(new ArrayList<>(List.of(w)));
        });
        large(askew, usual).forEach(w -> texts.add(List.of(w)));
        return texts.stream()
                .filter(text -> covers(text, all))
                .map(text -> new Overprint(text(text), List.copyOf(text)))
                .toList();
    }

    /** From left to right, and turned ones from their foot upwards. */
    private static List<Word> large(List<Word> words, double usual) {
        List<Word> large = new ArrayList<>();
        for (Word w : words) if (w.size() >= LARGER * usual) large.add(w);
        large.sort(Comparator.comparingDouble(w -> w.upright() ? w.left() : -w.bottom()));
        return large;
    }

    private static double usual(List<Word> words) {
        double[] sizes = words.stream().mapToDouble(Word::size).toArray();
        Arrays.sort(sizes);
        return sizes.length == 0 ? 0 : sizes[sizes.length / 2];
    }

    private static boolean goesOn(Word before, Word w) {
        boolean alike = before.upright() == w.upright() && Math.abs(before.size() - w.size()) < SAME_SIZE * w.size();
        return alike && (!w.upright() || Math.abs(before.centreY() - w.centreY()) < SAME_LEVEL * w.size());
    }

    private static boolean covers(List<Word> text, List<Word> all) {
        Patience.check();
        int covered = 0;
        for (Word w : all)
            if (w.size() < text.get(0).size() / 2
                    && text.stream().anyMatch(t -> t.box().contains(w.centreX(), w.centreY()))) covered++;
        return covered >= LEAST_COVERED;
    }

    private static String text(List<Word> words) {
        return String.join(" ", words.stream().map(Word::text).toList());
    }
}
