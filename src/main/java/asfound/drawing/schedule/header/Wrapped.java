package asfound.drawing.schedule.header;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import asfound.drawing.page.Word;
import asfound.drawing.schedule.phrase.HeaderLines;
import asfound.drawing.schedule.phrase.HeaderWords;
import asfound.drawing.schedule.phrase.Meanings;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A value of a header that goes on in the next line of its cell. It does where the next line's first word had no room left
 * in the line before.
 */
final class Wrapped {

    /** A cell keeps so much of its width free, in sizes of its type. */
    private static final double FREE = 1.2;

    private static final double LINE = 1.5;

    private final Sheet sheet;
    private final Phrases phrases;

    private Wrapped(Sheet sheet, Phrases phrases) {
        this.sheet = sheet;
        this.phrases = phrases;
    }

    /** The phrases, with those put together that begin with a label, or stand beside one, and go on below. */
    static List<Phrase> whole(Sheet sheet, List<Phrase> phrases, Meanings meanings) {
        Wrapped reader = new Wrapped(sheet, Phrases.of(phrases, meanings));
        List<Phrase> out = new ArrayList<>();
        Set<Phrase> taken = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Phrase p : phrases) {
            if (taken.contains(p)) continue;
            Phrase whole = p;
            if (reader.isValue(p) || Paragraphs.next(sheet, reader.phrases, p).isPresent())
                for (Optional<Phrase> q = reader.next(p); q.isPresent(); q = reader.next(q.get())) {
                    taken.add(q.get());
                    whole = joined(whole, q.get());
                }
            out.add(whole);
        }
        return out;
    }

    private boolean isValue(Phrase p) {
        boolean labelled = phrases.meanings()
                .label(p)
                .filter(l -> l.marked() && l.end() < HeaderWords.of(p).size())
                .isPresent();
        return labelled || HeaderLines.isBesideLabel(p, phrases);
    }

    private static Phrase joined(Phrase a, Phrase b) {
        List<Word> words = new ArrayList<>(a.words()), more = new ArrayList<>(b.words());
        Word last = words.get(words.size() - 1);
        if (last.text().endsWith("-")) {
            Word first = more.remove(0);
            words.set(
                    words.size() - 1,
                    new Word(last.text() + first.text(), last.box().union(first.box()), last.size(), last.upright()));
        }
        words.addAll(more);
        return Phrase.of(words);
    }

    /** Where the label of a value begins, under which its next line may begin as well. */
    private double begin(Phrase value) {
        if (!HeaderLines.isBesideLabel(value, phrases)) return value.left();
        return phrases.near(value.centreY(), 0.3 * value.size()).stream()
                .filter(o -> o.right() <= value.left() + 0.5)
                .mapToDouble(Phrase::left)
                .max()
                .orElse(value.left());
    }

    /** The line below in the same cell, where its first word had no room in this one. */
    private Optional<Phrase> next(Phrase p) {
        double left = Double.NEGATIVE_INFINITY, right = Double.POSITIVE_INFINITY;
        for (Rule r : sheet.down().all()) {
            if (!r.passes(p.centreY())) continue;
            if (r.at() <= p.left() + 0.5) left = Math.max(left, r.at());
            if (r.at() >= p.right() - 0.5) right = Math.min(right, r.at());
        }
        if (Double.isInfinite(left) || Double.isInfinite(right)) return Paragraphs.next(sheet, phrases, p);
        double from = left, to = right, begin = begin(p);
        return phrases.between(p.centreY(), p.centreY() + LINE * p.size()).stream()
                .filter(q -> q.centreY() - p.centreY() > 0.6 * p.size() && q.centreY() - p.centreY() < LINE * p.size())
                .filter(q -> q.left() > from && q.right() < to)
                // below another label's value in an open grid stands another value
                .filter(q -> q.left() > begin - q.size() && !HeaderLines.isBesideLabel(q, phrases))
                .filter(q -> q.words().stream().noneMatch(w -> w.text().endsWith(":")))
                .filter(q -> sheet.across().between(p.centreY(), q.centreY()).stream()
                        .noneMatch(r -> r.passes(q.centreX())))
                .filter(q -> phrases.meanings().label(q).isEmpty())
                .filter(q -> p.right() + 0.3 * p.size() + q.words().get(0).box().w() > to - FREE * p.size())
                .findFirst();
    }
}
