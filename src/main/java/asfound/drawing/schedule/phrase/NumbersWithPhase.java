package asfound.drawing.schedule.phrase;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Positions with the letter of their phase behind them: {@code 1-A}, {@code 3/B}, {@code 5 C}. Each number has one letter
 * throughout; where a number comes with several letters, it counts ways.
 */
public final class NumbersWithPhase {

    private static final int FEWEST = 4;
    private static final Pattern WRITTEN = Pattern.compile("(\\d{1,3})\\s*[-–/ ]?\\s*([ABC])");

    private static final String LETTERS = "ABC";

    private final boolean used;

    public NumbersWithPhase(List<Phrase> phrases) {
        Map<String, String> letters = new HashMap<>();
        Set<String> seen = new HashSet<>();
        boolean once = true;
        for (Phrase p : phrases) {
            if (!mayBe(p.text())) continue;
            Matcher m = WRITTEN.matcher(p.text());
            if (!m.matches()) continue;
            String before = letters.putIfAbsent(m.group(1), m.group(2));
            once &= before == null || before.equals(m.group(2));
            seen.add(m.group(2));
        }
        used = once && letters.size() >= FEWEST && seen.size() == 3;
    }

    /** Most texts are longer, or end with no letter of a phase. */
    private static boolean mayBe(String text) {
        int length = text.length();
        return length > 1 && length <= 7 && LETTERS.indexOf(text.charAt(length - 1)) >= 0;
    }

    /** The position alone; empty where the sheet does not write them so. */
    public Optional<PositionText> position(String text) {
        if (!used || !mayBe(text)) return Optional.empty();
        Matcher m = WRITTEN.matcher(text);
        return m.matches() ? PositionText.parse(m.group(1)) : Optional.empty();
    }
}
