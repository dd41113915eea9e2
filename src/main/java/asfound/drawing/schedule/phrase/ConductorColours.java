package asfound.drawing.schedule.phrase;

import asfound.drawing.schedule.text.Texts;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Ways whose phases are named by the colours of their conductors: {@code 1 Br}, {@code 1 Bl}, {@code 1 Gr}, or
 * {@code R1}, {@code W1}, {@code B1}. Which phase a colour means, and whether {@code Bl} is black or blue, only all the colours of the sheet tell; where they fit no sequence in use, or
 * more than one that disagree, no position is made of them.
 */
public final class ConductorColours {

    private static final int FEWEST = 3;
    private static final int LONGEST = 24;

    private enum Colour {
        BROWN("BROWN|BRN|BR|BN"),
        BLACK("BLACK|BLK|BK"),
        BLUE("BLUE|BLU|BU|B"),
        GREY("GREY|GRAY|GRY|GR|GY"),
        RED("RED|R"),
        YELLOW("YELLOW|YEL|Y"),
        WHITE("WHITE|WHT|W"),
        /** Black or blue. */
        BL("BL");

        private final Pattern written;

        Colour(String written) {
            this.written = Pattern.compile(written);
        }
    }

    /**
     * First to third phase: IEC 60445 with the grey of HD 308; the former British and Indian one; the Australian one; the North
     * American one for 208Y/120. All from memory, common practice.
     */
    private static final List<List<Colour>> SEQUENCES = List.of(
            List.of(Colour.BROWN, Colour.BLACK, Colour.GREY),
            List.of(Colour.RED, Colour.YELLOW, Colour.BLUE),
            List.of(Colour.RED, Colour.WHITE, Colour.BLUE),
            List.of(Colour.BLACK, Colour.RED, Colour.BLUE));

    private static final String ANY =
            "(?:BROWN|BRN|BR|BN|BLACK|BLK|BLUE|BLU|BL|BK|BU|GREY|GRAY|GRY|GR|GY|RED|YELLOW|YEL|WHITE" + "|WHT|[RYBW])";
    private static final Pattern WAY = Pattern.compile(
            "(\\d{1,2})\\s*[-./ ]?\\s*(" + ANY + "(?:\\s*[-,/&+ ]\\s*" + ANY + "){0,2})", Pattern.CASE_INSENSITIVE);
    private static final Pattern COLOUR_FIRST = Pattern.compile(
            "(" + ANY + ")\\s*[-./ ]?\\s*(\\d{1,2})((?:\\s*[,/&+ ]?\\s*" + ANY + "\\s*[-./ ]?\\s*\\2(?!\\d)){0,2})",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern WORD = Pattern.compile("[A-Z]+");

    /** With what a colour begins. */
    private static final String LETTERS = "BGRYWbgryw";

    private final List<Colour> sequence;

    public ConductorColours(List<Phrase> phrases) {
        Set<Colour> used = EnumSet.noneOf(Colour.class);
        for (Phrase p : phrases) written(p.text()).ifPresent(way -> used.addAll(way.colours()));
        // a letter alone is left to those who read R, Y and B
        List<List<Colour>> fitting =
                SEQUENCES.stream().filter(s -> fits(s, used)).toList();
        sequence = used.size() >= FEWEST && fitting.size() == 1 ? fitting.get(0) : List.of();
    }

    private record Way(int number, List<Colour> colours) {}

    private static Optional<Way> written(String text) {
        if (text.length() > LONGEST || text.isEmpty()) return Optional.empty();
        if (LETTERS.indexOf(text.charAt(0)) >= 0) return colourFirst(text.strip());
        if (!Character.isDigit(text.charAt(0))) return Optional.empty();
        // it ends with a colour's word or letter
        if (!Character.isLetter(text.strip().charAt(text.strip().length() - 1))) return Optional.empty();
        Matcher m = WAY.matcher(text.strip());
        if (!m.matches()) return Optional.empty();
        return Optional.of(new Way(Integer.parseInt(m.group(1)), colours(m.group(2))));
    }

    /** {@code W1}; most words that begin with such a letter end with no figure. */
    private static Optional<Way> colourFirst(String text) {
        if (!Character.isDigit(text.charAt(text.length() - 1))) return Optional.empty();
        Matcher m = COLOUR_FIRST.matcher(text);
        if (!m.matches()) return Optional.empty();
        return Optional.of(new Way(Integer.parseInt(m.group(2)), colours(m.group(1) + " " + m.group(3))));
    }

    private static List<Colour> colours(String written) {
        List<Colour> colours = new ArrayList<>();
        Matcher word = WORD.matcher(written.toUpperCase(Locale.ROOT));
        while (word.find()) colours.add(colour(word.group()));
        return colours;
    }

    private static Colour colour(String word) {
        for (Colour c : Colour.values()) if (c.written.matcher(word).matches()) return c;
        throw new IllegalArgumentException(word);
    }

    /** Which phase each of a column's entries means, by its text in upper case; empty where they are not the colours of three. */
    public static Map<String, Integer> phases(List<String> entries) {
        Map<String, Colour> named = new HashMap<>();
        for (String entry : entries) {
            String text = entry.strip().toUpperCase(Locale.ROOT);
            if (Texts.hasFigure(text)) continue;
            for (Colour c : Colour.values()) if (c.written.matcher(text).matches()) named.put(text, c);
        }
        List<List<Colour>> fitting =
                SEQUENCES.stream().filter(s -> fits(s, named.values())).toList();
        if (Set.copyOf(named.values()).size() < FEWEST || fitting.size() != 1) return Map.of();
        Map<String, Integer> out = new HashMap<>();
        named.forEach((text, colour) -> out.put(text, phase(fitting.get(0), colour)));
        return out;
    }

    private static boolean fits(List<Colour> sequence, Collection<Colour> used) {
        return used.stream().allMatch(c -> phase(sequence, c) > 0);
    }

    /** 1 to 3; 0 where the colour is none of the sequence. */
    private static int phase(List<Colour> sequence, Colour colour) {
        if (colour != Colour.BL) return sequence.indexOf(colour) + 1;
        boolean black = sequence.contains(Colour.BLACK), blue = sequence.contains(Colour.BLUE);
        if (black == blue) return 0;
        return sequence.indexOf(black ? Colour.BLACK : Colour.BLUE) + 1;
    }

    /** The way with its phases; empty where the sheet names none by colours, or the text does not. */
    public Optional<PositionText> position(String text) {
        if (sequence.isEmpty()) return Optional.empty();
        return written(text)
                .filter(way -> way.number() > 0)
                .map(way -> new PositionText(
                        List.of(way.number()),
                        way.colours().stream()
                                .map(c -> phase(sequence, c))
                                .sorted()
                                .toList(),
                        text));
    }
}
