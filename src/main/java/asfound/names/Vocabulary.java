package asfound.names;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the words of circuit descriptions mean: the table {@code descriptions.txt}, and what a record set adds to it.
 */
final class Vocabulary {

    /** What a meaning is there for; the table's head explains each. */
    enum Kind {
        LOAD,
        CORD,
        WIDE,
        PART,
        PLACE,
        AREA,
        DIRECTION,
        DETAIL,
        NOISE,
        GENERIC;

        boolean isLoad() {
            return this == LOAD || this == CORD || this == WIDE || this == PART;
        }
    }

    record Meaning(String name, Kind kind, String wider, String area) {}

    private static final Pattern LINE =
            Pattern.compile("(\\w+)\\s+([^:\\[<]*)(?:\\[([^]]*)])?\\s*(?:<([^:@]*))?(?:@([^:]*))?:(.*)");
    private static final Pattern NOTHING_BUT_KIND = Pattern.compile("(\\w+):(.*)");
    /** Words shorter than this are not searched for slips: too many of them differ by one letter. */
    private static final int LONG_WORD = 6;

    private final Map<String, Meaning> phrases = new HashMap<>();
    private final Map<String, Set<String>> marks = new HashMap<>();
    private final Map<String, Meaning> byName = new HashMap<>();
    private final List<String> longWords = new ArrayList<>();
    private int longest;

    private Vocabulary() {}

    /** The table, extended by a record set's abbreviations: short form to long form. */
    static Vocabulary with(Map<String, String> abbreviations) {
        Vocabulary v = new Vocabulary();
        try (InputStream in = Vocabulary.class.getResourceAsStream("descriptions.txt");
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            lines.lines()
                    .map(String::strip)
                    .filter(l -> !l.isEmpty() && !l.startsWith("#"))
                    .forEach(v::line);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        abbreviations.forEach(v::abbreviation);
        v.phrases.keySet().stream()
                .filter(p -> p.length() >= LONG_WORD && p.indexOf(' ') < 0)
                .sorted()
                .forEach(v.longWords::add);
        return v;
    }

    private void line(String line) {
        Matcher plain = NOTHING_BUT_KIND.matcher(line);
        if (plain.matches()) {
            Kind kind = kind(plain.group(1));
            add(new Meaning(kind.name(), kind, "", ""), plain.group(2));
            return;
        }
        Matcher m = LINE.matcher(line);
        if (!m.matches()) throw new IllegalStateException("the table of descriptions has a line that is none: " + line);
        Meaning meaning = new Meaning(m.group(2).strip(), kind(m.group(1)), text(m, 4), text(m, 5));
        add(meaning, m.group(6));
        if (m.group(3) != null) for (String mark : m.group(3).strip().split("\\s+")) mark(mark, meaning);
    }

    private static String text(Matcher m, int group) {
        return m.group(group) == null ? "" : m.group(group).strip();
    }

    private static Kind kind(String word) {
        return Kind.valueOf(word.toUpperCase(Locale.ROOT));
    }

    private void add(Meaning meaning, String ways) {
        byName.put(meaning.name(), meaning);
        for (String way : ways.split(",")) {
            String phrase = phrase(way);
            Meaning before = phrases.putIfAbsent(phrase, meaning);
            if (before != null && !before.equals(meaning))
                throw new IllegalStateException(
                        "'" + phrase + "' means both " + before.name() + " and " + meaning.name());
            longest = Math.max(longest, phrase.split(" ").length);
        }
    }

    private void mark(String mark, Meaning meaning) {
        marks.computeIfAbsent(mark, k -> new HashSet<>()).add(meaning.name());
    }

    private void abbreviation(String shortForm, String longForm) {
        String brief = phrase(shortForm), full = phrase(longForm);
        if (brief.isEmpty() || full.isEmpty()) return;
        Meaning meaning = phrases.computeIfAbsent(full, f -> new Meaning(f, Kind.LOAD, "", ""));
        byName.putIfAbsent(meaning.name(), meaning);
        phrases.put(brief, meaning);
        longest = Math.max(longest, Math.max(brief.split(" ").length, full.split(" ").length));
        if (brief.matches("[A-Z]{1,6}")) marks.put(brief, new HashSet<>(Set.of(meaning.name())));
    }

    private static String phrase(String way) {
        return PlainText.of(way).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }

    /** The most words of one way of writing. */
    int longest() {
        return longest;
    }

    Optional<Meaning> meaning(String phrase) {
        Meaning exact = phrases.get(phrase);
        if (exact != null) return Optional.of(exact);
        if (phrase.length() > 3 && phrase.endsWith("S"))
            return Optional.ofNullable(phrases.get(phrase.substring(0, phrase.length() - 1)));
        return Optional.empty();
    }

    /** The one long word that a word was meant to be, one slip away; empty where there is none or more than one. */
    Optional<Meaning> slip(String word) {
        if (word.length() < LONG_WORD) return Optional.empty();
        Set<Meaning> near = new HashSet<>();
        for (String known : longWords) if (isOneSlip(word, known)) near.add(phrases.get(known));
        return near.size() == 1 ? Optional.of(near.iterator().next()) : Optional.empty();
    }

    /** One letter too many, missing, wrong, or two exchanged. */
    static boolean isOneSlip(String a, String b) {
        if (Math.abs(a.length() - b.length()) > 1) return false;
        int i = 0;
        while (i < a.length() && i < b.length() && a.charAt(i) == b.charAt(i)) i++;
        String ra = a.substring(i), rb = b.substring(i);
        if (ra.isEmpty() || rb.isEmpty()) return true;
        if (ra.length() == rb.length()) {
            boolean exchanged = ra.length() > 1
                    && ra.charAt(0) == rb.charAt(1)
                    && ra.charAt(1) == rb.charAt(0)
                    && ra.substring(2).equals(rb.substring(2));
            return exchanged || ra.substring(1).equals(rb.substring(1));
        }
        return ra.length() > rb.length() ? ra.substring(1).equals(rb) : ra.equals(rb.substring(1));
    }

    /** What a tag's letters may stand for; empty where they are not known. */
    Set<String> ofMark(String letters) {
        return marks.getOrDefault(letters, Set.of());
    }

    Kind kindOf(String name) {
        Meaning m = byName.get(name);
        return m == null ? Kind.LOAD : m.kind();
    }

    /** A meaning is another, or is included by it. */
    boolean isWithin(String name, String wider) {
        String at = name;
        while (!at.isEmpty()) {
            if (at.equals(wider)) return true;
            Meaning m = byName.get(at);
            at = m == null ? "" : m.wider();
        }
        return false;
    }
}
