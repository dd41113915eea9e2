package asfound.drawing.schedule.header;

import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.text.NameText;
import asfound.drawing.schedule.text.Value;
import asfound.model.Box;
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

    private LoneName() {}

    static Optional<Phrase> in(LabelReader.Labelled region) {
        Set<Box> values = region.values().stream().map(Value::box).collect(Collectors.toSet());
        List<Phrase> names = region.loose().stream()
                .filter(p -> !values.contains(p.box()))
                .filter(p -> KIND.matcher(p.text()).matches()
                        || region.values().size() >= LABELS
                                && NAME.matcher(p.text()).matches()
                                && !FIGURE.matcher(p.text()).matches())
                .filter(p -> NameText.isName(p.text()))
                .toList();
        return names.stream().map(Phrase::text).distinct().count() == 1 ? Optional.of(names.get(0)) : Optional.empty();
    }
}
