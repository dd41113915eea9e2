package asfound.model;

import java.util.Locale;
import java.util.Optional;

/** What a piece of equipment is, as the survey's and the one-line's {@code kind} column names it. */
public enum EquipmentKind {
    PANEL("panel"),
    SWITCHBOARD("switchboard"),
    TRANSFORMER("transformer"),
    TRANSFER_SWITCH("transfer switch"),
    DISCONNECT("disconnect"),
    UTILITY("utility"),
    GENERATOR("generator"),
    INVERTER("inverter"),
    UPS("ups"),
    BATTERY("battery"),
    MOTOR("motor"),
    LOAD("load"),
    UNKNOWN("");

    private final String word;

    EquipmentKind(String word) {
        this.word = word;
    }

    /** The word of the record set's format; empty for {@link #UNKNOWN}. */
    public String word() {
        return word;
    }

    /** Can supply on its own account. A UPS is a source besides being fed (stored energy). */
    public boolean isSource() {
        return isPureSource() || this == UPS;
    }

    /** A source that is not itself fed: no isolation verdict is given for it. */
    public boolean isPureSource() {
        return this == UTILITY || this == GENERATOR || this == INVERTER || this == BATTERY;
    }

    /** Distribution equipment, that others are fed from. */
    public boolean isDistribution() {
        return this == PANEL
                || this == SWITCHBOARD
                || this == TRANSFORMER
                || this == TRANSFER_SWITCH
                || this == DISCONNECT
                || this == UPS;
    }

    /** The kind that a word names, with the trade's usual other words; empty where the word is not known. */
    public static Optional<EquipmentKind> of(String text) {
        String t =
                text.strip().toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", " ").strip();
        return Optional.ofNullable(
                switch (t) {
                    case "panel",
                            "panelboard",
                            "pnl",
                            "distribution panel",
                            "distribution board",
                            "load center",
                            "loadcentre",
                            "load centre",
                            "loadcenter",
                            "board" -> PANEL;
                    case "switchboard",
                            "swbd",
                            "switchgear",
                            "swgr",
                            "main switchboard",
                            "mcc",
                            "motor control center",
                            "motor control centre",
                            "busway",
                            "bus duct" -> SWITCHBOARD;
                    case "transformer", "xfmr", "xfr", "tx", "transf" -> TRANSFORMER;
                    case "transfer switch", "ats", "mts", "automatic transfer switch", "manual transfer switch" ->
                        TRANSFER_SWITCH;
                    case "disconnect",
                            "disconnect switch",
                            "disc",
                            "safety switch",
                            "switch",
                            "isolator",
                            "fused disconnect" -> DISCONNECT;
                    case "utility", "service", "utility service", "grid", "util" -> UTILITY;
                    case "generator", "gen", "genset", "engine generator" -> GENERATOR;
                    case "inverter", "pv inverter", "solar inverter", "pv", "solar", "solar array" -> INVERTER;
                    case "ups", "uninterruptible power supply" -> UPS;
                    case "battery", "batteries", "battery system", "bess", "energy storage" -> BATTERY;
                    case "motor", "mtr" -> MOTOR;
                    case "load", "loads", "equipment", "receptacle", "lighting" -> LOAD;
                    default -> null;
                });
    }
}
