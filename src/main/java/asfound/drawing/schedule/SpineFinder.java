package asfound.drawing.schedule;

import asfound.drawing.schedule.Spine.Token;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds the columns of position numbers on a sheet. */
final class SpineFinder {

    /** Without a heading that says so, this many rows must rise before they count as positions. */
    private static final int UNHEADED_ROWS = 4;

    private final List<Phrase> phrases;

    SpineFinder(List<Phrase> phrases) {
        this.phrases = phrases;
    }

    List<Spine> find() {
        List<List<Token>> columns = new ArrayList<>();
        for (Phrase p : phrases)
            PositionText.parse(p.text()).ifPresent(position -> place(new Token(position, p), columns));
        List<Spine> spines = new ArrayList<>();
        for (List<Token> column : columns)
            for (List<Token> run : runs(column)) accept(run).ifPresent(spines::add);
        spines.sort(Comparator.comparingDouble(Spine::firstY).thenComparingDouble(Spine::left));
        return spines;
    }

    /** Puts an entry under the column that it lines up with, or begins a new one. */
    private static void place(Token token, List<List<Token>> columns) {
        List<Token> best = null;
        double bestOff = Double.MAX_VALUE;
        for (List<Token> column : columns) {
            Token last = column.get(column.size() - 1);
            double size = Math.max(token.phrase().size(), last.phrase().size());
            double gap = token.y() - last.y();
            if (gap < 0.4 * size || gap > 16 * size) continue;
            double off = misalignment(last.phrase(), token.phrase());
            if (off < 0.6 * size && off + gap * 0.01 < bestOff) {
                bestOff = off + gap * 0.01;
                best = column;
            }
        }
        if (best != null) best.add(token);
        else columns.add(new ArrayList<>(List.of(token)));
    }

    private static double misalignment(Phrase a, Phrase b) {
        double off = Math.min(Math.abs(a.left() - b.left()), Math.abs(a.right() - b.right()));
        return Math.min(off, Math.abs(a.centreX() - b.centreX()));
    }

    /** Parts a column where the numbers begin again. */
    private static List<List<Token>> runs(List<Token> column) {
        List<List<Token>> out = new ArrayList<>();
        List<Token> open = new ArrayList<>();
        for (int i = 0; i < column.size(); i++) {
            if (!open.isEmpty() && beginsAgain(column, i)) {
                out.add(open);
                open = new ArrayList<>();
            }
            open.add(column.get(i));
        }
        out.add(open);
        return out;
    }

    private static boolean beginsAgain(List<Token> column, int i) {
        int before = column.get(i - 1).text().order(),
                here = column.get(i).text().order();
        double gap = column.get(i).y() - column.get(i - 1).y(), pitch = pitch(column, i);
        if (here > before) return here - before > 40 || gap > 7 * pitch;
        // without a gap the numbers go on in another order: odd ones first, then even ones, or the next panel of a list
        return gap > 2.2 * pitch;
    }

    /** The smallest step down to the entries around {@code i}. */
    private static double pitch(List<Token> column, int i) {
        double smallest = Double.MAX_VALUE;
        for (int k = Math.max(1, i - 4); k < Math.min(column.size(), i + 5); k++)
            if (k != i)
                smallest =
                        Math.min(smallest, column.get(k).y() - column.get(k - 1).y());
        return smallest == Double.MAX_VALUE ? 3 * column.get(i).phrase().size() : smallest;
    }

    private Optional<Spine> accept(List<Token> run) {
        Optional<Phrase> heading = headingOf(run);
        double weight =
                heading.map(h -> Headings.weight(h.text(), Role.POSITION)).orElse(0.0);
        Spine spine = new Spine(run, weight >= 0.8);
        if (run.size() == 1) return spine.headed() ? Optional.of(spine) : Optional.empty();
        if (spine.rising() < 0.7 || spine.regular() < 0.6) return Optional.empty();
        if (spine.headed()) return Optional.of(spine);
        boolean otherwise = heading.isPresent()
                && Headings.weigh(heading.get().text()).values().stream().anyMatch(w -> w >= 0.8);
        return !otherwise && run.size() >= UNHEADED_ROWS && spine.regular() >= 0.75
                ? Optional.of(spine)
                : Optional.empty();
    }

    /** The nearest phrase above the column's first entry, if it is near enough to head it. */
    private Optional<Phrase> headingOf(List<Token> run) {
        Phrase first = run.get(0).phrase();
        double left = first.left() - first.size(), right = first.right() + first.size();
        double reach = 7 * first.size() + 12;
        List<Phrase> above = phrases.stream()
                .filter(p -> p.centreY() < first.centreY() - 0.4 * first.size())
                .filter(p -> p.centreY() > first.centreY() - reach)
                .filter(p -> p.left() < right && p.right() > left)
                .sorted(Comparator.comparingDouble((Phrase p) -> -p.centreY()))
                .toList();
        if (above.isEmpty()) return Optional.empty();
        Phrase near = above.get(0);
        if (above.size() > 1 && Headings.weight(near.text(), Role.POSITION) < 0.8) {
            Phrase both =
                    Phrase.of(List.of(above.get(1).words().get(0), near.words().get(0)));
            String text = above.get(1).text() + " " + near.text();
            if (Headings.weight(text, Role.POSITION) >= 0.8)
                return Optional.of(new Phrase(near.words(), text, both.box()));
        }
        return Optional.of(near);
    }
}
