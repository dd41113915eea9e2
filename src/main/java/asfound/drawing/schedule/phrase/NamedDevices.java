package asfound.drawing.schedule.phrase;

import asfound.drawing.schedule.text.Texts;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Devices of a board that go by names with a number instead of positions: {@code CB1} on an Australian legend, {@code F1} and
 * {@code Q1} after IEC 81346 (letters from memory). Their number counts devices, whatever poles they have.
 */
public final class NamedDevices {

    private static final int FEWEST = 4;
    private static final int LONGEST = 8;
    private static final Pattern WRITTEN =
            Pattern.compile("[-–=]?(C/?B|MCB|MCCB|ACB|RCBO|QF|QS|FU|F|Q)[-. ]?(\\d{1,3})", Pattern.CASE_INSENSITIVE);
    /** Over such names these words say the same as {@code No.} over numbers. */
    private static final Pattern HEADING = Pattern.compile(
            "(?i).*\\b(?:device|tag|breaker|mcb|mccb|cb|fuse|item|switch|ref|id|circuit|way|name|designation|rep[eè]re)\\b.*");

    private final Set<String> letters = new HashSet<>();

    public NamedDevices(List<Phrase> phrases) {
        Map<String, Set<String>> numbers = new HashMap<>();
        for (Phrase p : phrases)
            written(p.text())
                    .ifPresent(m -> numbers.computeIfAbsent(letters(m), k -> new HashSet<>())
                            .add(m.group(2)));
        numbers.forEach((kind, all) -> {
            if (all.size() >= FEWEST) letters.add(kind);
        });
    }

    private static Optional<Matcher> written(String text) {
        if (text.length() > LONGEST || !Texts.hasFigure(text) || Texts.isFigures(text)) return Optional.empty();
        Matcher m = WRITTEN.matcher(text.strip());
        return m.matches() ? Optional.of(m) : Optional.empty();
    }

    private static String letters(Matcher m) {
        return m.group(1).toUpperCase(Locale.ROOT).replace("/", "");
    }

    /** The number, with the name as written; empty where the sheet names no devices so. */
    public Optional<PositionText> position(String text) {
        if (letters.isEmpty()) return Optional.empty();
        return written(text)
                .filter(m -> letters.contains(letters(m)) && Integer.parseInt(m.group(2)) > 0)
                .map(m -> new PositionText(List.of(Integer.parseInt(m.group(2))), List.of(), text.strip()));
    }

    static boolean isName(String raw) {
        return written(raw).isPresent();
    }

    /** Whether what stands over a column of such names can head them. */
    public static boolean mayHead(String text) {
        return HEADING.matcher(text).matches();
    }
}
