package asfound.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Devices of a board with ways, as people write them: {@code 9L1/9L2/9L3}, {@code 9 L1-L3}, {@code 9TP}, {@code way 9}. */
final class WayNames {

    private static final Pattern POLE = Pattern.compile("(\\d{1,2})?[-. ]?(L[123]|[RYB]|TPN?)[-,/&+; ]*");

    private static final Pattern WHOLE = Pattern.compile("WAYS?[ .:#]*(?:NO\\.? ?)?(\\d{1,2})");

    private WayNames() {}

    /** The number of a way without a phase: {@code way 9}; empty for anything else. */
    static OptionalInt way(String text) {
        Matcher m = WHOLE.matcher(text.toUpperCase(Locale.ROOT).strip());
        return m.matches() ? OptionalInt.of(Integer.parseInt(m.group(1))) : OptionalInt.empty();
    }

    /** The positions of a way on a board of three phases. */
    static List<Integer> positions(int way) {
        return List.of(way * 3 - 2, way * 3 - 1, way * 3);
    }

    /** The positions, counted across the ways (way 1 is 1, 2, 3); none where the text names no ways and phases. */
    static List<Integer> positions(String text) {
        String t = text.toUpperCase(Locale.ROOT)
                .replaceAll("^WAYS?[ .:#]*(?=\\d)", "")
                .strip();
        List<Integer> positions = new ArrayList<>();
        Matcher m = POLE.matcher(t);
        int way = 0, at = 0;
        while (m.find() && m.start() == at) {
            at = m.end();
            if (m.group(1) != null) way = Integer.parseInt(m.group(1));
            if (way < 1) return List.of();
            if (m.group(2).startsWith("TP")) positions.addAll(positions(way));
            else positions.add(way * 3 - 3 + phase(m.group(2)));
        }
        return at == t.length() ? positions : List.of();
    }

    private static int phase(String mark) {
        return switch (mark) {
            case "L1", "R" -> 1;
            case "L2", "Y" -> 2;
            default -> 3;
        };
    }
}
