package asfound.names;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Words of kind that are written in two, and marks that stand for the words before them. */
final class Words {

    private static final List<String[]> JOINED = List.of(
            new String[] {"AUTOMATIC TRANSFER (SWITCH|SW)", "ATS"},
            new String[] {"AUTO TRANSFER (SWITCH|SW)", "ATS"},
            new String[] {"MANUAL TRANSFER (SWITCH|SW)", "MTS"},
            new String[] {"STATIC TRANSFER (SWITCH|SW)", "STS"},
            new String[] {"TRANSFER (SWITCH|SW)", "TRANSFERSWITCH"},
            new String[] {"XFER (SWITCH|SW)", "TRANSFERSWITCH"},
            new String[] {"UNINTERRUPTIBLE POWER (SUPPLY|SYSTEM)", "UPS"},
            new String[] {"MOTOR CONTROL CENT(ER|RE)", "MCC"},
            new String[] {"SAFETY (SWITCH|SW)", "DISCONNECT"},
            new String[] {"(DISCONNECT|DISC) (SWITCH|SW)", "DISCONNECT"},
            new String[] {"LOAD CENT(ER|RE)", "LOADCENTER"},
            new String[] {"PANEL BOARD", "PANELBOARD"},
            new String[] {"SUB[ -](PANEL|PNL)", "SUBPANEL"},
            new String[] {"SWITCH BOARD", "SWITCHBOARD"},
            new String[] {"SWITCH GEAR", "SWITCHGEAR"},
            new String[] {"ENGINE GENERATOR", "GENERATOR"});

    /** Marks that are not made of the initials of what they stand for. */
    private static final Map<String, Set<String>> OWN_MARKS = Map.of(
            "AHU", Set.of("AIR HANDLER", "AIRHANDLER"),
            "AH", Set.of("AIR HANDLER", "AIRHANDLER"),
            "RTU", Set.of("ROOFTOP", "ROOF TOP"),
            "VAV", Set.of("VARIABLE AIR VOLUME BOX", "VAV BOX"),
            "HWH", Set.of("WATER HEATER"),
            "EWH", Set.of("WATER HEATER"),
            "MSB", Set.of("SWITCHBOARD", "MAIN SWITCHBOARD"));

    /** Words that stand for one, compiled once. */
    private record Joint(java.util.regex.Pattern words, String one) {}

    private static final List<Joint> JOINTS = JOINED.stream()
            .map(pair -> new Joint(java.util.regex.Pattern.compile("\\b" + pair[0] + "\\b"), pair[1]))
            .toList();

    private Words() {}

    static String joined(String plain) {
        String text = plain;
        if (text.indexOf(' ') < 0 && !text.contains("SUB-")) return text;
        for (Joint joint : JOINTS) text = joint.words().matcher(text).replaceAll(joint.one());
        return text;
    }

    /** The mark stands for the words: their initials, the beginning of one, or letters of each in their order. */
    static boolean abbreviates(List<String> words, String mark) {
        String phrase = String.join(" ", words);
        if (phrase.equals(mark)) return true;
        if (OWN_MARKS.getOrDefault(mark, Set.of()).contains(phrase)) return true;
        if (words.stream().allMatch(w -> w.length() < 3)) return false;
        return uses(words, 0, mark, 0);
    }

    /** Every word gives its initial and perhaps some of its further letters, in order, and the mark is used up. */
    private static boolean uses(List<String> words, int w, String mark, int m) {
        if (w == words.size()) return m == mark.length();
        String word = words.get(w);
        if (m >= mark.length() || mark.charAt(m) != word.charAt(0)) return false;
        int at = 0, used = m + 1;
        if (uses(words, w + 1, mark, used)) return true;
        while (used < mark.length() && (at = word.indexOf(mark.charAt(used), at + 1)) > 0)
            if (uses(words, w + 1, mark, ++used)) return true;
        return false;
    }

    /** The marks that some words may be shortened to. */
    static List<String> initials(List<String> words) {
        Set<String> marks = new LinkedHashSet<>(List.of(""));
        for (String word : words) {
            Set<String> longer = new LinkedHashSet<>();
            for (String mark : marks) for (String i : initials(word)) longer.add(mark + i);
            marks = longer;
        }
        return List.copyOf(marks);
    }

    private static List<String> initials(String word) {
        if (word.equals("SWITCHBOARD") || word.equals("SWBD")) return List.of("S", "SB", "SWBD");
        return word.equals("SWITCHGEAR") || word.equals("SWGR")
                ? List.of("S", "SG", "SWGR")
                : List.of(word.substring(0, 1));
    }
}
