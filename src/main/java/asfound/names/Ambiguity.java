package asfound.names;

import java.util.List;
import java.util.Optional;

/** The sentences in which doubts about names are said: what is wrong, then what to do. */
final class Ambiguity {

    private static final String LOOK_ALIKES = "ΑΒΕΖΗΙΚΜΝΟΡΤΥΧАВЕКМНОРСТУХІЈЅ²³¹⁰⁴⁵⁶⁷⁸⁹";
    private static final String LATIN = "ABEZHIKMNOPTYXABEKMHOPCTYXIJS2310456789";

    private Ambiguity() {}

    static String[] several(String raw, List<String> meanings) {
        return new String[] {
            "'" + raw + "' could mean " + String.join(" or ", meanings) + ", and is taken for neither.",
            "Write the name in full, or name it under 'same' in record.yaml."
        };
    }

    static String[] taken(String raw, String name) {
        return new String[] {
            "'" + raw + "' is taken for " + name + ", the only one of its kind that is named.",
            "If it is another one, give it a name of its own or name the two under 'distinct' in record.yaml."
        };
    }

    static String[] zeros(String a, String b) {
        return new String[] {
            "'" + a + "' and '" + b + "' differ only in a leading zero, and are taken as two things.",
            "If they are one, name them under 'same' in record.yaml."
        };
    }

    /** A name with a look-alike letter; in a description only where the Latin letter would make a known name of it. */
    static Optional<String[]> lookAlike(Designation d, boolean names, NameIndex index) {
        if (d.lookAlike().isEmpty()) return Optional.empty();
        Optional<String> latin = index.find(Designation.of(latin(d.raw()))).name();
        if (latin.isEmpty() && !names) return Optional.empty();
        return Optional.of(new String[] {
            "'" + d.raw() + "' contains a " + d.lookAlike().get()
                    + latin.map(l -> ": it looks like " + l + " and was not taken for it.")
                            .orElse("."),
            "Type the name again with plain letters and digits, or name it under 'same' in record.yaml."
        });
    }

    private static String latin(String raw) {
        StringBuilder plain = new StringBuilder();
        PlainText.of(raw).codePoints().forEach(c -> {
            int at = LOOK_ALIKES.indexOf(c);
            if (at >= 0) plain.append(LATIN.charAt(at));
            else if (c < 0x200E || c > 0x2069) plain.appendCodePoint(c);
        });
        return plain.toString();
    }
}
