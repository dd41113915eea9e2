package asfound.drawing.schedule.header;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.phrase.HeaderWords;
import asfound.drawing.schedule.phrase.HeaderWords.Piece;
import asfound.drawing.schedule.phrase.Meanings;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.text.Abbreviations;
import asfound.drawing.schedule.text.Field;
import asfound.drawing.schedule.text.Labels;
import asfound.drawing.schedule.text.Texts;
import asfound.drawing.schedule.text.Value;
import asfound.drawing.schedule.text.Values;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Finds the labels among the phrases around a directory, and the value that each announces. */
final class LabelReader {

    private static final Pattern BOARD = Pattern.compile(
            "main\\s+(?:S?M?DB|MSB|panel(?:board)?|switch\\s?(?:board|gear|room)|(?:distribution|electrical)\\s+\\S+|board)\\b(?![\\s:]*(?:breaker|main)s?\\b)",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern RUN_INTO = Pattern.compile("^(?:from|by)(?=\\p{Lu})");
    private static final Pattern OF = Pattern.compile("for|of|to", Pattern.CASE_INSENSITIVE);
    private static final Pattern OWN_NAME = Pattern.compile("S?M?DB\\s\\d", Pattern.CASE_INSENSITIVE);
    private static final Pattern BRANCH = Pattern.compile("equipment\\s+branch\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern KEY = Pattern.compile("\\babbreviations?\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern ROOM = Pattern.compile("(?i)rm\\.?|room");

    private final List<Value> values = new ArrayList<>();
    private final List<Phrase> labels = new ArrayList<>();
    private final List<Phrase> loose = new ArrayList<>();
    private final List<Value> unfit = new ArrayList<>();
    private final List<LoneLabels.Lone> lone = new ArrayList<>();
    private final List<NamedLine> lines = new ArrayList<>();

    private final Meanings meanings;

    private LabelReader(Meanings meanings) {
        this.meanings = meanings;
    }

    /**
     * What a region says.
     *
     * @param values with their labels, in the order of the page
     * @param labels the phrases that are labels, or hold them
     * @param unfit what stands behind a label and cannot be its value
     * @param loose the other phrases, and what stands before or between labels in running text
     * @param lines that say of what they are, and tell of nothing else
     */
    record Labelled(
            List<Value> values, List<Value> unfit, List<Phrase> labels, List<Phrase> loose, List<NamedLine> lines) {

        /** The phrases, labels and others. */
        List<Phrase> said() {
            List<Phrase> all = new ArrayList<>(loose);
            all.addAll(labels);
            return all;
        }
    }

    /** @param limit how far to the right the region reaches */
    static Labelled read(Sheet sheet, List<Phrase> phrases, Meanings meanings, double limit) {
        List<NamedLine> lines = NamedLine.in(phrases);
        List<Phrase> others = new ArrayList<>(phrases);
        lines.forEach(line -> others.removeAll(line.phrases()));
        List<Phrase> parted =
                Wrapped.whole(sheet, HeaderWords.parted(Ticks.chosen(withoutKey(others, meanings))), meanings, limit);
        LabelReader reader = new LabelReader(meanings);
        reader.lines.addAll(lines);
        for (Phrase p : parted) reader.phrase(p);
        LoneLabels lone = new LoneLabels(sheet, Phrases.of(parted, meanings), reader.lone);
        reader.values.addAll(lone.values());
        reader.lugsAlone();
        reader.unfit.addAll(lone.unfit());
        return new Labelled(
                List.copyOf(reader.values),
                List.copyOf(reader.unfit),
                List.copyOf(reader.labels),
                List.copyOf(reader.loose),
                List.copyOf(reader.lines));
    }

    /** Without a key to abbreviations; {@code MDP - MAIN DISTRIBUTION PANEL} by itself is a title. */
    private static List<Phrase> withoutKey(List<Phrase> phrases, Meanings meanings) {
        List<Phrase> key = phrases.stream()
                .filter(p -> Abbreviations.isExplained(p.text()))
                .toList();
        boolean title = key.size() == 1
                && meanings.name(key.get(0)).isPresent()
                && phrases.stream().noneMatch(p -> KEY.matcher(p.text()).find());
        return key.isEmpty() || title
                ? phrases
                : phrases.stream().filter(p -> !key.contains(p)).toList();
    }

    private void phrase(Phrase p) {
        List<Piece> pieces = HeaderWords.pieces(p);
        List<String> words = HeaderWords.texts(pieces);
        List<InTurn.Pair> pairs = InTurn.of(words);
        if (!pairs.isEmpty()) {
            for (InTurn.Pair pair : pairs) {
                Phrase own = HeaderWords.phrase(pieces.subList(pair.from(), pair.to()));
                values.add(new Value(pair.field(), Texts.bare(own.text()), own.box(), 2));
            }
            labels.add(p);
            return;
        }
        boolean any = false;
        int i = 0, told = 0;
        while (i < words.size()) {
            Optional<Labels.Label> label = labelAt(words, i);
            if (label.isEmpty() || isKindInTitle(p, label.get())) {
                i++;
                continue;
            }
            int end = label.get().end(),
                    next = nextLabel(words, end, label.get().marked());
            // 'Room 12' by itself is a place as it stands
            int from = !label.get().marked() && ROOM.matcher(words.get(end - 1)).matches() ? end - 1 : end;
            String rest = end == next ? "" : value(label.get().field(), words.subList(from, next));
            if (rest.isEmpty() && next == words.size()) {
                if (i == 0 || label.get().marked()) {
                    lone.add(new LoneLabels.Lone(p, label.get()));
                    loose(pieces.subList(told, i));
                    any = true;
                    told = next;
                }
            } else if (!rest.isEmpty()
                    && Values.fits(Values.announced(label.get().field(), rest), rest)) {
                announced(
                        p,
                        i,
                        new Value(
                                Values.announced(label.get().field(), rest),
                                Values.inUnitOf(
                                        String.join(" ", words.subList(i, end)),
                                        label.get().field(),
                                        rest),
                                p.box(),
                                label.get().marked() ? 3 : 1));
                loose(pieces.subList(told, i));
                any = true;
                // what stands behind the sentence of a place says more of the panel
                told = isPlace(label.get().field()) ? Math.min(next, from + rest.split(" ").length) : next;
            } else if (label.get().marked()) {
                any |= rest.isEmpty();
                if (!rest.isEmpty()) unfit.add(new Value(label.get().field(), rest, p.box(), 3));
            }
            i = Math.max(next, end);
        }
        if (!any) loose.add(p);
        else {
            labels.add(p);
            loose(pieces.subList(told, pieces.size()));
        }
    }

    /** {@code Panel RP-9 is fed from circuit 5}: what stands behind a panel's name on one line is said of that panel. */
    private void announced(Phrase p, int at, Value value) {
        Optional<String> name =
                at > 0 && isPlace(value.field()) && value.weight() < 3 ? meanings.name(p) : Optional.empty();
        if (name.isEmpty()) values.add(value);
        else lines.add(NamedLine.ofTitle(name.get(), value, p));
    }

    /** {@code MOTOR CONTROL CENTER MCC-2}: its first word alone would be a label of another thing. */
    private boolean isKindInTitle(Phrase p, Labels.Label label) {
        // 'DB 5': the letters of its kind are a part of the name
        if (label.field() == Field.DESIGNATION
                && !label.marked()
                && OWN_NAME.matcher(p.text()).lookingAt()) return true;
        // 'EQUIPMENT BRANCH - PANEL EQ-1'
        if (label.field() == Field.DESIGNATION
                && !label.marked()
                && BRANCH.matcher(p.text()).lookingAt()) return true;
        // 'Main DB CB 22', 'Main switchboard': what feeds the panel
        if (label.field() == Field.MAIN
                && !label.marked()
                && BOARD.matcher(p.text()).lookingAt()) return true;
        return !label.field().isKept() && !label.marked() && meanings.name(p).isPresent();
    }

    /** {@code M.L.O.} with nothing behind it says by itself what the mains are. */
    private void lugsAlone() {
        if (values.stream().anyMatch(v -> v.field() == Field.MAIN_LUGS || v.field() == Field.MAIN)) return;
        for (LoneLabels.Lone l : lone)
            if (l.field() == Field.MAIN_LUGS && !l.label().marked()) loose.add(l.phrase());
    }

    private void loose(List<Piece> pieces) {
        if (pieces.stream().anyMatch(p -> p.text().length() > 1)) loose.add(HeaderWords.phrase(pieces));
    }

    /** What follows a label; a place ends with its sentence. */
    private static String value(Field field, List<String> words) {
        String rest = Texts.bare(String.join(" ", words));
        // a narrow cell lets the label run into its value
        if (field == Field.FED_FROM) rest = RUN_INTO.matcher(rest).replaceFirst("");
        return isPlace(field) ? Texts.bare(Values.sentence(rest)) : rest;
    }

    private static boolean isPlace(Field field) {
        return field == Field.LOCATION || field == Field.FED_FROM;
    }

    /** A label begins a phrase, or it is marked as one; the words of a value are not taken for labels. */
    private static Optional<Labels.Label> labelAt(List<String> words, int i) {
        Optional<Labels.Label> label = TwoLanguages.at(words, i);
        if (i == 0) return label;
        // 'Overcurrent device for DB:' announces a device
        boolean ofAnother = OF.matcher(words.get(i - 1)).matches();
        return label.filter(l -> l.marked() || isOfWords(words, i, l.end()) && strong(l.field()))
                .filter(l -> !ofAnother || l.field() != Field.DESIGNATION);
    }

    /** It is of two words at least; the dash behind {@code 400A BUS -} is none. */
    private static boolean isOfWords(List<String> words, int from, int to) {
        return to - from > 1
                && words.subList(from, to).stream()
                                .filter(w -> w.chars().anyMatch(Character::isLetterOrDigit))
                                .count()
                        > 1;
    }

    private static boolean strong(Field field) {
        return field == Field.FED_FROM || field == Field.BUS || field == Field.INTERRUPTING || field == Field.LOCATION;
    }

    private static int nextLabel(List<String> words, int from, boolean marked) {
        for (int j = from; j < words.size(); j++) {
            Optional<Labels.Label> label = Labels.at(words, j);
            if (label.isEmpty()) continue;
            if (label.get().marked()
                    || j > from && Values.isNothing(String.join("", words.subList(from, j)))
                    || j > from
                            && isOfWords(words, j, label.get().end())
                            && strong(label.get().field())) return j;
        }
        return words.size();
    }
}
