package asfound.sample.kestrel;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** How a surveyor writes down what a drafter lettered: other case, other abbreviations, another order, the same thing. */
final class FieldWords {

    private static final Map<String, String> LONG_FORMS =
            Map.of("RECEPT", "Receptacles", "LTG", "Lighting", "RM", "room", "ELEC", "electrical");
    private static final Map<String, String> SHORT_FORMS = Map.of("RECEPT", "Plugs", "LTG", "Lts", "RM", "rm");

    private FieldWords() {}

    /** The long forms: {@code RECEPT RM 204 NORTH WALL} becomes {@code Receptacles room 204 north wall}. */
    static String inFull(String lettered) {
        return write(lettered, LONG_FORMS);
    }

    /** As jotted: {@code RECEPT RM 204 NORTH WALL} becomes {@code Plugs rm 204 north wall}. */
    static String jotted(String lettered) {
        return write(lettered, SHORT_FORMS);
    }

    private static String write(String lettered, Map<String, String> forms) {
        String words = Arrays.stream(lettered.split(" "))
                .map(w -> forms.getOrDefault(w, isTag(w) ? w : w.toLowerCase(Locale.ROOT)))
                .collect(Collectors.joining(" "));
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static boolean isTag(String word) {
        return word.matches(".*\\d.*|FACP|GFCI|AV|BAS|EV|CNC");
    }
}
