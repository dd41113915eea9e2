package asfound.finding;

import asfound.model.EquipmentKind;
import asfound.network.Equipment;
import java.util.List;
import java.util.Locale;

/** Small pieces of sentences. */
final class Words {

    private Words() {}

    /** {@code A}, {@code A and B}, {@code A, B and C}. */
    static String list(List<String> items) {
        if (items.size() < 2) return String.join("", items);
        return String.join(", ", items.subList(0, items.size() - 1)) + " and " + items.get(items.size() - 1);
    }

    /** {@code 1 row}, {@code 3 entries}. */
    static String count(int n, String thing) {
        if (n == 1) return "1 " + thing;
        return n + " " + (thing.endsWith("y") ? thing.substring(0, thing.length() - 1) + "ies" : thing + "s");
    }

    /** An equipment with its kind where the name does not say it: {@code panel LP-5}. */
    static String named(Equipment e) {
        String kind = e.kind() == EquipmentKind.UPS ? "UPS" : e.kind().word();
        boolean said = kind.isEmpty() || e.name().toLowerCase(Locale.ROOT).contains(kind.toLowerCase(Locale.ROOT));
        return said ? e.name() : kind + " " + e.name();
    }

    /** The same at the beginning of a sentence; a name keeps its writing. */
    static String namedFirst(Equipment e) {
        String named = named(e);
        return named.equals(e.name()) ? named : named.substring(0, 1).toUpperCase(Locale.ROOT) + named.substring(1);
    }

    /** What a directory's entry reads for equipment: {@code PANEL LP-5}, {@code T-3}. */
    static String entryFor(Facts facts, String equipment) {
        boolean panel = facts.kindOf(equipment) == EquipmentKind.PANEL;
        return panel && !equipment.toUpperCase(Locale.ROOT).matches(".*\\b(PANEL|PNL)\\b.*")
                ? "PANEL " + equipment
                : equipment;
    }
}
