package asfound.names;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a name says of the kind of its equipment. A word ({@code XFMR}) says it outright; a letter mark before a number
 * ({@code T-1}) only implies it. Panels and switchboards are one family: people write one for the other.
 */
enum Family {
    BOARD(
            Set.of(
                    "PANEL",
                    "PNL",
                    "PANELBOARD",
                    "PNLBD",
                    "PANELBD",
                    "BOARD",
                    "SUBPANEL",
                    "SUBPNL",
                    "LOADCENTER",
                    "LOADCENTRE",
                    "SWITCHBOARD",
                    "SWBD",
                    "SWBRD",
                    "SWITCHGEAR",
                    "SWGR"),
            Set.of(
                    "LP", "RP", "PP", "DP", "MDP", "SDP", "EDP", "LDP", "PDP", "HDP", "EMDP", "ELP", "ERP", "MSB",
                    "MCC", "MSWBD", "PNL", "SWBD", "SWGR")),
    TRANSFORMER(
            Set.of("TRANSFORMER", "XFMR", "XFRMR", "XFR", "XFORMER", "TRANSF", "TRANSFMR"),
            Set.of("T", "TR", "TX", "XF", "XFMR")),
    TRANSFER_SWITCH(Set.of("TRANSFERSWITCH"), Set.of("ATS", "MTS", "TS", "STS")),
    DISCONNECT(Set.of("DISCONNECT", "DISC", "DISCO", "SAFETYSWITCH"), Set.of("DS", "DISC")),
    GENERATOR(Set.of("GENERATOR", "GENSET", "GEN"), Set.of("GEN", "G", "EG")),
    UTILITY(Set.of("UTILITY", "UTIL", "GRID"), Set.of("UTIL")),
    INVERTER(Set.of("INVERTER", "INV"), Set.of("INV", "PVI")),
    UPS(Set.of("UPS"), Set.of("UPS")),
    BATTERY(Set.of("BATTERY", "BATTERIES", "BATT", "BESS"), Set.of("BATT", "BAT", "BESS"));

    private final Set<String> words;
    private final Set<String> marks;

    private static final Map<String, Family> BY_WORD = byWord();

    Family(Set<String> words, Set<String> marks) {
        this.words = words;
        this.marks = marks;
    }

    private static Map<String, Family> byWord() {
        var all = new java.util.HashMap<String, Family>();
        for (Family f : values()) for (String w : f.words) all.put(w, f);
        return Map.copyOf(all);
    }

    static Optional<Family> ofWord(String word) {
        return Optional.ofNullable(BY_WORD.get(word));
    }

    /** The words that say this family outright. */
    Set<String> words() {
        return words;
    }

    /** The letter marks under which a thing of this family may be numbered; sorted. */
    java.util.List<String> marks() {
        return marks.stream().sorted().toList();
    }

    /** What a letter mark implies. A single G may be a panel's letter as well, so it implies nothing. */
    static Optional<Family> ofMark(String mark) {
        if (mark.equals("G")) return Optional.empty();
        for (Family f : values()) if (f.marks.contains(mark)) return Optional.of(f);
        return Optional.empty();
    }

    String inWords() {
        return this == BOARD
                ? "panel"
                : name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }
}
