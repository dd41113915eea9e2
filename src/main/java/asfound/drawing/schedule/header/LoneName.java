package asfound.drawing.schedule.header;

import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.text.NameText;
import asfound.drawing.schedule.text.Value;
import asfound.model.Box;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A panel's name that stands by itself over its directory, without a word that says so: {@code L2A}. It counts only among
 * labels of a header, and only where one text alone looks like a name.
 */
final class LoneName {

    private static final int LABELS = 2;
    /** Letters and a figure in one word; neither a rating nor a voltage. */
    private static final Pattern NAME = Pattern.compile("(?=.*[A-Z])(?=.*\\d)[A-Z0-9][A-Z0-9./-]{1,9}");

    private static final Pattern FIGURE = Pattern.compile(
            "(?i)[\\d.,/Y-]+(?:A|AF|AT|V|W|P|PH|KA|KAIC|KVA|KW|HZ|FT|MM2?)?|#?\\d+(?:AWG)?|REV\\.?\\d+");

    /** {@code DB-MAIN}: its first letters are those of a board, and no labels need stand beside it. */
    private static final Pattern KIND = Pattern.compile("(?:SM|SUB|[A-Z])?DB-[A-Z]{1,8}");

    /** {@code HDP}, {@code MSB}: letters that every office reads as a board, among its labels. */
    private static final Pattern BOARD = Pattern.compile("[A-Z]{1,2}DP|[A-Z]?MSB|SWBD|S?MDB|MCC");

    private static final Pattern QUOTED = Pattern.compile("^[\"'“‘]([A-Z0-9./-]+)[\"'”’]$");

    /** {@code LC-1 (TYP. UNIT 1BR)}. */
    private static final Pattern REMARK = Pattern.compile("\\s+\\([^()]*\\)$");
    /** Of several the panel's is that in type larger by so much than all others'. */
    private static final double LARGER = 1.25;

    private LoneName() {}

    static Optional<Phrase> in(LabelReader.Labelled region) {
        Set<Box> values = region.values().stream().map(Value::box).collect(Collectors.toSet());
        List<Phrase> names = region.loose().stream()
                .filter(p -> !values.contains(p.box()))
                .filter(p -> isName(bare(p), region.values().size() >= LABELS))
                .sorted(Comparator.comparingDouble(p -> -p.size()))
                .toList();
        if (names.isEmpty()) return Optional.empty();
        Phrase first = names.get(0);
        boolean alone = names.stream().allMatch(p -> bare(p).equals(bare(first)) || first.size() > LARGER * p.size());
        return alone ? Optional.of(first) : Optional.empty();
    }

    /** Without what is said of it in brackets. */
    static String bare(Phrase p) {
        String text = p.text().endsWith(")") ? REMARK.matcher(p.text()).replaceFirst("") : p.text();
        return QUOTED.matcher(text).replaceFirst("$1");
    }

    private static boolean isName(String text, boolean amongLabels) {
        boolean may = KIND.matcher(text).matches()
                || amongLabels && BOARD.matcher(text).matches()
                || amongLabels
                        && NAME.matcher(text).matches()
                        && !FIGURE.matcher(text).matches();
        return may && NameText.isName(text);
    }
}
