package asfound.drawing.schedule;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The names of panels that stand on a sheet, taken from before the positions of their own circuits: {@code LP1-7,9} on the
 * sheet of LP1 is 7 and 9. A tag of equipment looks the same, and no panel of the sheet has its name.
 */
final class OwnNames {

    private static final int LONGEST = 40;
    private static final Pattern PREFIXED =
            Pattern.compile("([A-Za-z0-9][A-Za-z0-9.#-]*?)\\s*[-–/:. ]\\s*(\\d{1,3}(?:[\\s,/&-]+\\d{1,3})*)");

    private final Set<String> names = new HashSet<>();

    OwnNames(Phrases phrases) {
        for (Phrase p : phrases) {
            phrases.meanings().name(p.text()).map(OwnNames::key).ifPresent(names::add);
            phrases.meanings()
                    .label(p)
                    .filter(l -> l.field() == Field.DESIGNATION)
                    .ifPresent(l -> behind(HeaderWords.of(p), l.end()));
        }
    }

    private void behind(List<String> words, int end) {
        if (end < words.size()) names.add(key(words.get(end)));
    }

    private static String key(String name) {
        return NameText.name(name).toUpperCase(Locale.ROOT);
    }

    /** The positions alone; empty where no name of a panel of this sheet stands before them. */
    Optional<PositionText> positions(String text) {
        if (names.isEmpty() || text.length() > LONGEST || !Texts.hasFigure(text)) return Optional.empty();
        Matcher m = PREFIXED.matcher(text);
        return m.matches() && names.contains(key(m.group(1))) ? PositionText.parse(m.group(2)) : Optional.empty();
    }
}
