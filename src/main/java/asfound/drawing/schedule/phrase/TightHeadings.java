package asfound.drawing.schedule.phrase;

import asfound.drawing.page.Word;
import asfound.drawing.schedule.text.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Headings that stand no further apart than words do: {@code CKT LOAD} over numbers and texts. The word over the numbers is a
 * heading of its own where they rise from row to row, and the rest heads what stands beside them.
 */
final class TightHeadings {

    private static final int LONGEST = 4;
    /** So much a word speaks for positions at least. */
    static final double HEADED = 0.8;
    /** So far below a heading its first rows stand, in sizes of its type. */
    private static final double REACH = 9;

    private final List<Phrase> phrases;
    private final Meanings meanings;
    /** Put in order only where a heading asks for them. */
    private Optional<Phrases> inOrder = Optional.empty();

    private TightHeadings(List<Phrase> phrases, Meanings meanings) {
        this.phrases = phrases;
        this.meanings = meanings;
    }

    private Phrases found() {
        if (inOrder.isEmpty()) inOrder = Optional.of(Phrases.of(phrases, meanings));
        return inOrder.get();
    }

    /** The phrases, with such headings parted; in any order. */
    static List<Phrase> parted(List<Phrase> phrases, Meanings meanings) {
        return new TightHeadings(phrases, meanings).parted();
    }

    private List<Phrase> parted() {
        List<Phrase> out = new ArrayList<>();
        for (Phrase p : phrases) {
            int cut = cut(p);
            if (cut == 0) out.add(p);
            else {
                out.add(Phrase.of(p.words().subList(0, cut)));
                out.add(Phrase.of(p.words().subList(cut, p.words().size())));
            }
        }
        return out;
    }

    /** How many of its words head the first of two columns; 0 where all head one. */
    private int cut(Phrase p) {
        int n = p.words().size();
        if (n < 2 || n > LONGEST || !meanings.headsPositions(p)) return 0;
        if (heads(
                p.words().subList(0, 1),
                p.words().subList(1, n),
                p.words().get(1).left(),
                true)) return 1;
        boolean last = heads(
                p.words().subList(n - 1, n),
                p.words().subList(0, n - 1),
                p.words().get(n - 2).right(),
                false);
        return last ? n - 1 : 0;
    }

    /** One word heads rising numbers that stay on its side of the others, and these are a heading as well. */
    private boolean heads(List<Word> number, List<Word> rest, double edge, boolean atLeft) {
        Word word = number.get(0);
        if (meanings.weight(word.text(), Role.POSITION) < HEADED) return false;
        Map<Role, Double> others = meanings.weigh(Phrase.of(rest).text());
        boolean headed = others.entrySet().stream()
                .anyMatch(e -> e.getValue() >= 0.8 && e.getKey() != Role.POSITION && e.getKey() != Role.OTHER);
        if (!headed || others.getOrDefault(Role.POSITION, 0.0) > 0.3) return false;
        List<Integer> below = new ArrayList<>();
        boolean beside = false;
        double size = word.size();
        for (Phrase p : found().between(word.centreY() + 0.6 * size, word.centreY() + REACH * size)) {
            boolean own = atLeft ? p.right() <= edge : p.left() >= edge;
            boolean under = p.right() > word.left() - size && p.left() < word.right() + size;
            Optional<PositionText> text =
                    own && under && p.words().size() == 1 ? PositionText.parse(p.text()) : Optional.empty();
            if (text.isPresent()) below.add(text.get().first());
            else if (p.right() > word.left() && p.left() < word.right()) return false;
            beside |= !own && p.text().chars().anyMatch(Character::isLetter);
        }
        return beside && areRising(below);
    }

    private static boolean areRising(List<Integer> numbers) {
        if (numbers.size() < 2) return false;
        for (int i = 1; i < numbers.size(); i++) {
            int up = numbers.get(i) - numbers.get(i - 1);
            if (up < 1 || up > 6) return false;
        }
        return numbers.get(1) - numbers.get(0) <= 2;
    }
}
