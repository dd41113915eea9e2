package asfound.drawing.schedule;

import asfound.drawing.page.Sheet;
import asfound.model.Box;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds the labels among the phrases around a directory, and the value that each announces. */
final class LabelReader {

    private final Sheet sheet;
    private final List<Phrase> phrases;
    private final List<Value> values = new ArrayList<>();
    private final List<Phrase> loose = new ArrayList<>();

    private LabelReader(Sheet sheet, List<Phrase> phrases) {
        this.sheet = sheet;
        this.phrases = phrases;
    }

    /**
     * What a region says.
     *
     * @param values with their labels, in the order of the page
     * @param loose the other phrases
     */
    record Labelled(List<Value> values, List<Phrase> loose) {}

    static Labelled read(Sheet sheet, List<Phrase> phrases) {
        LabelReader reader = new LabelReader(sheet, phrases);
        for (Phrase p : phrases) reader.phrase(p);
        return new Labelled(List.copyOf(reader.values), List.copyOf(reader.loose));
    }

    private void phrase(Phrase p) {
        List<String> words = HeaderWords.of(p);
        boolean any = false;
        int i = 0;
        while (i < words.size()) {
            Optional<Labels.Label> label = labelAt(words, i);
            if (label.isEmpty()) {
                i++;
                continue;
            }
            int end = label.get().end(),
                    next = nextLabel(words, end, label.get().marked());
            String rest = strip(String.join(" ", words.subList(end, next)));
            if (rest.isEmpty() && next == words.size()) {
                if (i == 0 || label.get().marked()) {
                    value(p, label.get());
                    any = true;
                }
            } else if (!rest.isEmpty() && Values.fits(label.get().field(), rest)) {
                values.add(new Value(
                        label.get().field(), rest, p.box(), label.get().marked() ? 3 : 1));
                any = true;
            } else if (label.get().marked()) any = true;
            i = Math.max(next, end);
        }
        if (!any) loose.add(p);
    }

    /** A label begins a phrase, or it is marked as one; the words of a value are not taken for labels. */
    private static Optional<Labels.Label> labelAt(List<String> words, int i) {
        Optional<Labels.Label> label = Labels.at(words, i);
        if (i == 0) return label;
        return label.filter(l -> l.marked() || l.end() - i > 1 && strong(l.field()));
    }

    private static boolean strong(Field field) {
        return field == Field.FED_FROM || field == Field.BUS || field == Field.INTERRUPTING || field == Field.LOCATION;
    }

    private static int nextLabel(List<String> words, int from, boolean marked) {
        for (int j = from; j < words.size(); j++) {
            Optional<Labels.Label> label = Labels.at(words, j);
            if (label.isEmpty()) continue;
            if (label.get().marked()
                    || j > from
                            && label.get().end() - j > 1
                            && strong(label.get().field())) return j;
        }
        return words.size();
    }

    static String strip(String text) {
        return text.strip().replaceAll("^[-–—:=,;\\s]+(?=\\S)|[,;:\\s]+$", "").strip();
    }

    /** The value in the next cell to the right, or in the one below. */
    private void value(Phrase label, Labels.Label read) {
        Optional<Phrase> right = toTheRight(label), below = below(label);
        Field field = read.field();
        boolean rightFits = right.filter(r -> isValue(field, r)).isPresent();
        boolean belowFits = below.filter(b -> isValue(field, b)).isPresent();
        if (rightFits && belowFits && !read.marked()) {
            // a row of labels has its values below; a label with its value beside it has another label below
            boolean farRight = right.get().left() - label.right() > 14 * label.size();
            rightFits = !farRight;
        }
        Phrase value = rightFits ? right.get() : belowFits ? below.get() : null;
        if (value != null)
            values.add(new Value(field, strip(value.text()), value.box(), rightFits && read.marked() ? 3 : 2));
    }

    private boolean isValue(Field field, Phrase p) {
        List<String> words = HeaderWords.of(p);
        Optional<Labels.Label> label = Labels.at(words, 0);
        if (label.isPresent() && label.get().marked()) return false;
        if (label.isPresent() && label.get().end() == words.size() && !Values.isMainWord(p.text())) return false;
        return Values.fits(field, strip(p.text()));
    }

    private Optional<Phrase> toTheRight(Phrase label) {
        return phrases.stream()
                .filter(p -> p != label && p.left() >= label.right() - 0.5)
                .filter(p -> Math.abs(p.centreY() - label.centreY()) < 0.55 * Math.max(p.size(), label.size()))
                .filter(p -> p.left() - label.right() < 40 * label.size())
                .min(Comparator.comparingDouble(Phrase::left));
    }

    private Optional<Phrase> below(Phrase label) {
        Box b = label.box();
        return phrases.stream()
                .filter(p -> p != label && p.centreY() > label.centreY() + 0.6 * label.size())
                .filter(p -> p.box().y() - b.bottom() < 1.6 * Math.max(label.size(), p.size()))
                .filter(p -> p.left() < b.right() + label.size() && p.right() > b.x() - label.size())
                .filter(p -> !sheet.down()
                                .separates(
                                        Math.min(p.centreX(), label.centreX()),
                                        Math.max(p.centreX(), label.centreX()),
                                        label.centreY())
                        || Math.abs(p.left() - label.left()) < 2 * label.size())
                .min(Comparator.comparingDouble((Phrase p) -> p.box().y())
                        .thenComparingDouble(p -> Math.abs(p.left() - label.left())));
    }
}
