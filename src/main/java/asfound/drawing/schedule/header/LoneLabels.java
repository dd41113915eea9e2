package asfound.drawing.schedule.header;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.phrase.HeaderWords;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.text.Field;
import asfound.drawing.schedule.text.Labels;
import asfound.drawing.schedule.text.RatingText;
import asfound.drawing.schedule.text.Texts;
import asfound.drawing.schedule.text.Value;
import asfound.drawing.schedule.text.Values;
import asfound.model.Box;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Labels whose value stands in a cell of its own: to the right, below, or on a line above as forms have it. Which of them
 * a form means is told by all its labels together, for a value of the next line fits many a label.
 */
final class LoneLabels {

    private static final int LEAST_ABOVE = 3;

    /** The weight of a value behind its label and a colon. */
    static final int MARKED = 3;
    /** That of a name whose label does not say of what: a title is believed first. */
    static final int UNSURE = 0;

    private static final Pattern ANYTHING =
            Pattern.compile("(?:equipment )?(?:mark|tag)|equipment", Pattern.CASE_INSENSITIVE);
    private static final Pattern TITLE = Pattern.compile("schedule|directory", Pattern.CASE_INSENSITIVE);
    /** {@code PANEL   L3}: behind the word for a panel it is the panel's name, and heads no sum of a phase. */
    private static final Pattern PHASE_OR_NAME = Pattern.compile("L[123]");
    /** What cannot be a value counts as written for its label only so near to it. */
    private static final double NEAR = 14;

    private final Phrases phrases;
    private final AroundLabel around;
    private final List<Lone> labels;
    private final boolean above;
    private final List<Beside> besides;
    /** For each label its value, where it has one. */
    private final List<Optional<Value>> found;

    LoneLabels(Sheet sheet, Phrases phrases, List<Lone> labels) {
        this.phrases = phrases;
        around = new AroundLabel(sheet, phrases);
        ListHeadings headings = new ListHeadings(phrases);
        this.labels = labels.stream()
                .filter(l -> l.label().marked() || !headings.isOne(l.phrase()))
                .toList();
        besides = withSupplies(this.labels.stream().map(this::around).toList());
        above = areBelowTheirValues();
        List<Optional<Value>> all = new ArrayList<>();
        for (int i = 0; i < this.labels.size(); i++) {
            Lone l = this.labels.get(i);
            all.add(above ? above(l, besides.get(i)) : beside(l, besides.get(i)));
        }
        // 'Mains Type: MCB' over 'Mains Rating: 225 A': what is a value itself announces none
        Set<Box> values = new HashSet<>();
        for (Optional<Value> v : all)
            v.filter(value -> value.weight() == MARKED).map(Value::box).ifPresent(values::add);
        Set<Box> supplies = new HashSet<>();
        for (int i = 0; i < all.size(); i++)
            if (this.labels.get(i).field() == Field.FED_FROM)
                all.get(i).map(Value::box).ifPresent(supplies::add);
        found = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Lone l = this.labels.get(i);
            Box box = l.phrase().box();
            boolean value =
                    !l.label().marked() && (values.contains(box) || l.field() == Field.MAIN && supplies.contains(box));
            found.add(value ? Optional.empty() : all.get(i).filter(v -> !isAnothers(v, l, all)));
        }
    }

    /** Under a title stands, to the right of its own label, the value of another. */
    private boolean isAnothers(Value name, Lone label, List<Optional<Value>> all) {
        if (label.field() != Field.DESIGNATION
                || name.box().y() < label.phrase().box().bottom()) return false;
        for (int i = 0; i < labels.size(); i++) {
            Optional<Phrase> right = besides.get(i).right();
            if (labels.get(i) != label
                    && all.get(i).filter(v -> v.box().equals(name.box())).isPresent()
                    && right.filter(p -> p.box().equals(name.box())).isPresent()) return true;
        }
        return false;
    }

    /** A label with nothing behind it in its phrase. */
    record Lone(Phrase phrase, Labels.Label label) {

        Field field() {
            return label.field();
        }
    }

    /** What stands above, below and to the right of a label, and which of it can be its value. */
    private record Beside(
            Optional<Phrase> above,
            Optional<Phrase> below,
            Optional<Phrase> right,
            boolean aboveFits,
            boolean belowFits,
            boolean rightFits) {}

    private Beside around(Lone l) {
        Optional<Phrase> over = around.above(l.phrase()),
                under = around.below(l.phrase()),
                right = around.toTheRight(l.phrase());
        return new Beside(over, under, right, isValue(l, over), isValue(l, under), isValue(l, right));
    }

    /** With what feeds the panel in the words of a label, once the other labels tell on which side values stand. */
    private List<Beside> withSupplies(List<Beside> plain) {
        long right = plain.stream().filter(Beside::rightFits).count();
        boolean sideways = right > plain.stream().filter(Beside::belowFits).count();
        List<Beside> out = new ArrayList<>(plain);
        for (int i = 0; i < out.size(); i++) {
            Lone l = labels.get(i);
            if (l.field() != Field.FED_FROM) continue;
            Beside b = plain.get(i);
            boolean beside = (sideways || l.label().marked()) && isSupply(b.right(), true, !sideways);
            boolean below = !sideways && isSupply(b.below(), false, true);
            out.set(
                    i,
                    new Beside(
                            b.above(),
                            b.below(),
                            b.right(),
                            b.aboveFits(),
                            b.belowFits() || below,
                            b.rightFits() || beside));
        }
        return out;
    }

    /** Words that announce the panel's own main where a value stands beside them, or below in a row of labels. */
    private boolean isSupply(Optional<Phrase> near, boolean beside, boolean below) {
        if (near.isEmpty() || !SupplyInWords.isOne(near.get(), phrases.meanings())) return false;
        Phrase p = near.get();
        return !(beside
                        && around.toTheRight(p)
                                .filter(v -> isValue(Field.MAIN, v))
                                .isPresent())
                && !(below
                        && around.below(p).filter(v -> isValue(Field.MAIN, v)).isPresent());
    }

    List<Value> values() {
        return found.stream().flatMap(Optional::stream).toList();
    }

    /** What stands in the cell to the right of a label that has its value nowhere, and cannot be that value. */
    List<Value> unfit() {
        List<Value> out = new ArrayList<>();
        for (int i = 0; i < labels.size() && !above; i++) {
            Lone l = labels.get(i);
            if (found.get(i).isPresent()) continue;
            besides.get(i)
                    .right()
                    .filter(p ->
                            p.left() - l.phrase().right() < NEAR * l.phrase().size())
                    .filter(p -> l.label().marked() || p.text().chars().anyMatch(Character::isDigit))
                    .filter(p -> phrases.meanings().label(p).isEmpty())
                    .ifPresent(p -> out.add(new Value(l.field(), Texts.bare(p.text()), p.box(), 2)));
        }
        return out;
    }

    /** More values fit from above than from anywhere else, or as many and they stand nearer. */
    private boolean areBelowTheirValues() {
        int up = 0, down = 0, right = 0;
        double upGap = 0, downGap = 0;
        for (int i = 0; i < labels.size(); i++) {
            Lone l = labels.get(i);
            Beside b = besides.get(i);
            if (l.label().marked()) continue;
            if (b.aboveFits()) {
                up++;
                upGap += l.phrase().box().y() - b.above().get().box().bottom();
            }
            if (b.belowFits()) {
                down++;
                downGap += b.below().get().box().y() - l.phrase().box().bottom();
            }
            if (b.rightFits()) right++;
        }
        if (up < LEAST_ABOVE || up <= right || up < down) return false;
        return up > down || upGap < downGap;
    }

    private static Optional<Value> above(Lone l, Beside b) {
        return b.above().filter(p -> b.aboveFits()).map(p -> value(l, p, 2));
    }

    private static Value value(Lone label, Phrase p, int weight) {
        String text = Values.inUnitOf(label.phrase().text(), label.field(), Texts.bare(p.text()));
        return new Value(Values.announced(label.field(), text), text, p.box(), weight);
    }

    /** The value in the next cell to the right, or in the one below. */
    private Optional<Value> beside(Lone lone, Beside b) {
        Phrase label = lone.phrase();
        Field field = lone.field();
        Optional<Phrase> right = b.right(), below = b.below();
        boolean rightFits = b.rightFits(), belowFits = b.belowFits();
        boolean marked = lone.label().marked();
        if (rightFits && belowFits && !marked) {
            // a row of labels has its values below; a label with its value beside it has another label below
            boolean farRight =
                    right.get().left() - label.right() > 14 * label.size() && !around.isNextCell(label, right.get());
            rightFits = !farRight;
        }
        Optional<Phrase> value = rightFits ? right : belowFits ? below : Optional.empty();
        // the sums of several columns stand behind one label: none of them is the whole
        if (field == Field.LOAD_TOTAL
                && rightFits
                && around.toTheRight(right.get()).filter(LoneLabels::isFigure).isPresent()) value = Optional.empty();
        // a sheet's title announces a name as well, but less surely than a label does
        boolean title = TITLE.matcher(label.text()).find();
        int weight = title ? 1 : rightFits && marked ? MARKED : 2;
        return value.map(p -> value(lone, p, isOfAnything(lone) ? UNSURE : weight));
    }

    /** {@code MARK}, {@code TAG}: panels have such names, and so has whatever a list counts. */
    private static boolean isOfAnything(Lone lone) {
        return lone.field() == Field.DESIGNATION
                && !lone.label().marked()
                && ANYTHING.matcher(lone.phrase().text().strip()).matches();
    }

    private boolean isValue(Lone lone, Optional<Phrase> near) {
        return near.filter(p -> isValue(lone.field(), p)).isPresent();
    }

    private boolean isValue(Field field, Phrase p) {
        if (p.text().endsWith(":") || TwoLanguages.isLabel(p)) return false;
        Optional<Labels.Label> label = phrases.meanings().label(p);
        if (label.isPresent() && label.get().marked()) return false;
        if (label.isPresent()
                && label.get().end() == HeaderWords.of(p).size()
                && !(isMain(field) && RatingText.isMainWord(p.text()))
                && !(field == Field.DESIGNATION
                        && PHASE_OR_NAME.matcher(p.text()).matches())) return false;
        if (SupplyInWords.isOwnMain(field, p, phrases.meanings())) return false;
        String text = Texts.bare(p.text());
        return Values.fits(Values.announced(field, text), text);
    }

    private static boolean isFigure(Phrase p) {
        return Values.figure(p.text()).isPresent();
    }

    /** What mains there are is told in the words of a label: {@code MAIN LUGS}. */
    private static boolean isMain(Field field) {
        return field == Field.MAIN || field == Field.MAIN_LUGS;
    }
}
