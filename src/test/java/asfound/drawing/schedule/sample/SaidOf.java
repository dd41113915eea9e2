package asfound.drawing.schedule.sample;

import asfound.model.Problem;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a problem is about: the whole page, the whole table, some positions, or a value of the header. */
public final class SaidOf {

    private static final Pattern PAGE = Pattern.compile(".*(no readable text|drawn as outlines|picture covers"
            + "|was not read: the file|content is damaged|looks like a schedule and could not be explained"
            + "|No panel schedule was recognised).*");
    private static final Pattern TABLE = Pattern.compile("(Only (odd|even) positions|No column of|One side ends"
            + "|A column was not understood|A second column of the kind|No designation was found|Two directories|The directory '|Most circuits"
            + "|\\d+ positions between).*");
    private static final Pattern NAMED =
            Pattern.compile("(?i)positions? (\\d+(?:(?:, | and | to )\\d+)*)|\\[([\\d, ]+)]");
    private static final Pattern QUOTED = Pattern.compile("'(.*)'");

    private SaidOf() {}

    public static boolean wholePage(Problem p) {
        return PAGE.matcher(p.message()).matches();
    }

    public static boolean wholeTable(Problem p) {
        return TABLE.matcher(p.message()).matches();
    }

    /**
     * Whether a problem names one of these positions, or quotes a text that belongs to what is drawn there.
     *
     * @param drawn what is drawn there
     */
    public static boolean positions(Problem p, Set<Integer> positions, String drawn) {
        if (p.message().startsWith("Lugs without")) return false;
        Matcher m = NAMED.matcher(p.message());
        while (m.find()) {
            String numbers = m.group(1) != null ? m.group(1) : m.group(2);
            if (numbers.contains(" to ")) {
                String[] ends = numbers.split(" to ");
                int low = Integer.parseInt(ends[0]), high = Integer.parseInt(ends[1]);
                if (positions.stream().anyMatch(q -> q >= low && q <= high)) return true;
            }
            for (String n : numbers.split("\\D+"))
                if (!n.isEmpty() && positions.contains(Integer.valueOf(n))) return true;
        }
        Matcher q = QUOTED.matcher(p.message());
        if (!q.find() || q.group(1).isBlank()) return false;
        String quoted = " " + q.group(1).toUpperCase(Locale.ROOT) + " ";
        return positions.stream().anyMatch(n -> quoted.contains(" " + n + " "))
                || q.group(1).length() > 2 && drawn.contains(q.group(1).toUpperCase(Locale.ROOT));
    }

    /** Whether a problem says that this panel is named on the sheet and was not read. */
    public static boolean title(Problem p, String name) {
        return p.message().startsWith("The title '") && p.message().contains(name);
    }

    /** Whether a problem quotes the value of a header that was read. */
    public static boolean header(Problem p, String raw) {
        return p.message().startsWith("The header") && p.message().contains("'" + raw + "'");
    }
}
