package asfound.drawing.schedule.header;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import asfound.drawing.page.Word;
import asfound.drawing.schedule.phrase.HeaderLines;
import asfound.drawing.schedule.phrase.HeaderWords;
import asfound.drawing.schedule.phrase.Meanings;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.text.Field;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A value of a header that goes on in the next line of its cell. It does where the next line's first word had no room left
 * in the line before.
 */
final class Wrapped {

    /** A cell keeps so much of its width free, in sizes of its type. */
    private static final double FREE = 1.2;

    private static final double LINE = 1.5;
    /** The label of a cell, and the cell's foot, stand no further off, in sizes of type. */
    private static final double CELL = 2.2;

    /** A line that ends so goes on. */
    private static final Pattern OPEN =
            Pattern.compile("(?:[,&/-]|\\b(?:and|of|to|in|at|by))$", Pattern.CASE_INSENSITIVE);

    private final Sheet sheet;
    private final Phrases phrases;
    /** How far to the right the region reaches. */
    private final double limit;

    private Wrapped(Sheet sheet, Phrases phrases, double limit) {
        this.sheet = sheet;
        this.phrases = phrases;
        this.limit = limit;
    }

    /** The phrases, with those put together that begin with a label, or stand beside one, and go on below. */
    static List<Phrase> whole(Sheet sheet, List<Phrase> phrases, Meanings meanings, double limit) {
        Wrapped reader = new Wrapped(sheet, Phrases.of(phrases, meanings), limit);
        List<Phrase> out = new ArrayList<>();
        Set<Phrase> taken = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Phrase p : phrases) {
            if (taken.contains(p)) continue;
            Phrase whole = p;
            for (Optional<Phrase> q = reader.nextUnderLabel(p); q.isPresent(); q = reader.goesOnBelow(q.get(), false)) {
                taken.add(q.get());
                whole = joined(whole, q.get());
            }
            if (whole == p && reader.isValue(p)
                    || whole == p && Paragraphs.next(sheet, reader.phrases, p).isPresent())
                for (Optional<Phrase> q = reader.next(p); q.isPresent(); q = reader.next(q.get())) {
                    taken.add(q.get());
                    whole = joined(whole, q.get());
                }
            out.add(whole);
        }
        return out;
    }

    /** A place or a supply that stands under its label, and whose next line stands close under it. */
    private Optional<Phrase> nextUnderLabel(Phrase p) {
        Optional<Phrase> label =
                below(p, -1).stream().filter(this::isLabelOfPlace).findFirst();
        // where labels are set in a type of their own, what is set as the value is a value
        return label.flatMap(l -> goesOnBelow(p, !isOfOneSize(l, p))).or(() -> nextInCell(p));
    }

    private boolean isLabelOfPlace(Phrase o) {
        return phrases.meanings()
                .label(o)
                .filter(l -> l.field() == Field.LOCATION || l.field() == Field.FED_FROM)
                .filter(l -> l.end() == HeaderWords.of(o).size())
                .isPresent();
    }

    /** Two lines in the middle of a cell, under the cell of a label, are one value. */
    private Optional<Phrase> nextInCell(Phrase p) {
        double reach = CELL * p.size();
        List<Phrase> near = phrases.near(p.centreY(), reach).stream()
                .filter(o -> o != p && Math.abs(o.centreX() - p.centreX()) < 0.3 * p.size())
                .toList();
        if (near.size() < 2) return Optional.empty();
        boolean labelled = near.stream().anyMatch(o -> o.centreY() < p.centreY() && isLabelOfPlace(o));
        return near.stream()
                .filter(q -> labelled && q.centreY() > p.centreY() + 0.6 * p.size())
                .findFirst()
                .filter(q -> q.centreY() - p.centreY() < LINE * p.size() && isOfOneSize(p, q) && !isLabel(q))
                .filter(q -> isRuled(p.centreX(), p.centreY() - reach, p.centreY())
                        && !isRuled(p.centreX(), p.centreY(), q.centreY())
                        && isRuled(p.centreX(), q.centreY(), q.centreY() + reach));
    }

    private boolean isRuled(double x, double top, double bottom) {
        return sheet.across().between(top, bottom).stream().anyMatch(r -> r.passes(x));
    }

    /**
     * The next line, where it begins as no value does or its first word had no room beside what stands to the right.
     *
     * @param told apart from labels by its type
     */
    private Optional<Phrase> goesOnBelow(Phrase p, boolean told) {
        double edge = phrases.near(p.centreY(), 0.3 * p.size()).stream()
                .mapToDouble(Phrase::left)
                .filter(x -> x > p.right())
                .min()
                .orElse(limit);
        return below(p, 1).stream()
                .filter(q -> isOfOneSize(p, q) && !isLabel(q))
                .filter(q -> told
                        || Character.isLowerCase(q.text().charAt(0))
                        || OPEN.matcher(p.text()).find()
                        || p.right() + 0.3 * p.size() + q.words().get(0).box().w() > edge)
                .findFirst();
    }

    private static boolean isOfOneSize(Phrase a, Phrase b) {
        return Math.abs(a.size() - b.size()) < 0.1 * a.size();
    }

    /** Nothing but a label, or a label with its mark; {@code ground floor} only begins like one. */
    private boolean isLabel(Phrase q) {
        return q.words().stream().anyMatch(w -> w.text().endsWith(":"))
                || phrases.meanings()
                        .label(q)
                        .filter(l -> l.marked()
                                || l.field().isKept()
                                || l.end() == HeaderWords.of(q).size())
                        .isPresent();
    }

    /** What stands in the line above or below, and begins where a phrase does. */
    private List<Phrase> below(Phrase p, int side) {
        double far = p.centreY() + side * LINE * p.size();
        return phrases.between(Math.min(p.centreY(), far), Math.max(p.centreY(), far)).stream()
                .filter(q -> side * (q.centreY() - p.centreY()) > 0.6 * Math.min(p.size(), q.size()))
                .filter(q -> Math.abs(q.left() - p.left()) < 0.3 * p.size())
                .toList();
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
                .findFirst()
                // the frame of a page is no cell
                .or(() -> Paragraphs.next(sheet, phrases, p));
    }
}
