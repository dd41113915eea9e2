package asfound.names;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Takes a circuit description apart. */
final class DescriptionParser {

    private record Token(String text, boolean gap, boolean hyphen) {

        boolean isDigits() {
            return text.charAt(0) >= '0' && text.charAt(0) <= '9';
        }

        boolean isLetters() {
            return Character.isLetter(text.codePointAt(0));
        }

        /** Joined to the token before by nothing or a hyphen. */
        boolean joined() {
            return !gap;
        }

        boolean glued() {
            return !gap && !hyphen;
        }
    }

    private static final Pattern TOKEN = Pattern.compile("([\\s]*)(-?)([\\s]*)(\\p{L}+|[0-9]+|[&+/,;()#:=x*])");
    static final Pattern REMARK = Pattern.compile("\\((?:E|N|R|X|EX|ETR|NEW|EXIST|EXISTING)\\)");
    static final Pattern QUANTITY = Pattern.compile(
            "\\(\\s*([0-9]{1,2})\\s*\\)|\\bQTY[ .:]*([0-9]{1,2})\\b|\\b([0-9]{1,2})\\s*EA\\b|\\bX\\s?([0-9]{1,2})\\b");
    static final Pattern RATING = Pattern.compile(
            "\\b(?:[0-9]{2,3}Y/)?[0-9]{2,3}(?:/[0-9]{3})?\\s?(?:V|VAC|VOLTS?)\\b|\\b[0-9]{1,3}(?:[.,/][0-9]+)?\\s?-?(?:KVA|KW|VA|WATTS?|AMPS?|PHASE|PH|POLE|HZ|BTU|GAL)\\b"
                    + "|(?<!\\b(?:RM|RMS|ROOM|ROOMS|PANEL|PNL|[A-Z]P|[LPRH])\\s)(?<![-/\\p{L}0-9])[0-9]{2}\\s?A\\b(?!-)|\\b[123]P\\b|\\b[0-9]{1,2}(?:[./][0-9]+)?\\s?HP\\b(?!-)|\\b[0-9]{2,4}W\\b");
    /** {@code 101-105}, {@code 101 THRU 105}: these rooms and all between. */
    static final Pattern ROOMS_THROUGH =
            Pattern.compile("(?<![-\\p{L}0-9])([0-9]{3,4})\\s?(?:-|THRU|THROUGH|TO)\\s?([0-9]{3,4})(?![-\\p{L}0-9])");

    private static final int MOST_ROOMS = 40;
    static final Pattern FLOOR = Pattern.compile(
            "\\b(?:([0-9]{1,2})(?:ST|ND|RD|TH)(?:[ -]?(?:FLOOR|FLR|FL|LEVEL|LVL))?|(FIRST|SECOND|THIRD|FOURTH|FIFTH|SIXTH|SEVENTH|EIGHTH|NINTH|TENTH|GROUND)[ -](?:FLOOR|FLR|FL|LEVEL|LVL)"
                    + "|(?:FLOOR|FLR|LEVEL|LVL|FL)[ .#-]{0,2}([0-9]{1,2}|[BG]))\\b(?! BOX)");
    private static final List<String> ORDINALS =
            List.of("FIRST", "SECOND", "THIRD", "FOURTH", "FIFTH", "SIXTH", "SEVENTH", "EIGHTH", "NINTH", "TENTH");
    private static final Set<String> ROOM = Set.of("RM", "ROOM", "RMS", "ROOMS");
    private static final Set<String> NUMBERED_PLACE = Set.of("NO", "NUM", "NUMBER", "CKT", "CIRCUIT", "BAY", "ZONE");
    private static final Set<String> NAMED_BY_LETTERS = Set.of("PANEL", "TRANSFORMER", "SWITCHBOARD");

    private final Vocabulary vocabulary;
    private final Set<Description.Tag> tags = new LinkedHashSet<>();
    private final Set<String> numbers = new LinkedHashSet<>();
    private final Set<String> floors = new LinkedHashSet<>();
    private final Set<String> quantities = new LinkedHashSet<>();
    private final Set<String> loads = new LinkedHashSet<>();
    private final Set<String> places = new LinkedHashSet<>();
    private final Set<String> directions = new LinkedHashSet<>();
    private final Set<String> details = new LinkedHashSet<>();
    private final Set<String> words = new LinkedHashSet<>();
    private final Set<String> roomWords = new LinkedHashSet<>();
    /** Unknown words just read: a room or place that follows makes them its name. */
    private final List<String> pending = new ArrayList<>();

    private String vacancy = "";
    private List<Token> tokens = List.of();
    /** The meaning just read, for the number that may follow it. */
    private String last = "";

    private boolean afterRoom;

    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern SIGNS = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final Pattern VACANT = Pattern.compile(
            "SPARES?|SPACES?|SPARE BREAKER|SPARE BKR|EMPTY SPACE|BUSSED SPACE|SPACE ONLY|SPARE CB|SPARE CIRCUIT");

    private DescriptionParser(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    static Description parse(String raw, Vocabulary vocabulary) {
        return new DescriptionParser(vocabulary).parse(raw);
    }

    private Description parse(String raw) {
        String text = PlainText.of(raw).replace(".", " ");
        text = BLANKS.matcher(text).replaceAll(" ").replace("A/C", "AC").replace("W/", "WITH ");
        String key = SIGNS.matcher(text).replaceAll(" ").strip();
        if (text.indexOf('(') >= 0) text = REMARK.matcher(text).replaceAll(" ");
        if (MayHold.floor(text)) text = take(text, FLOOR, this::floor);
        if (MayHold.digit(text)) {
            if (MayHold.quantity(text)) text = take(text, QUANTITY, m -> quantities.add(group(m)));
            if (MayHold.rating(text)) text = RATING.matcher(text).replaceAll(" ");
            if (MayHold.range(text)) text = ROOMS_THROUGH.matcher(text).replaceAll(DescriptionParser::each);
        }
        tokens = tokens(text);
        for (int i = 0; i < tokens.size(); ) i = Math.max(read(i), i + 1);
        words.addAll(pending);
        if (VACANT.matcher(key).matches()) vacancy = key.contains("SPACE") ? "SPACE" : "SPARE";
        return new Description(
                key,
                Set.copyOf(tags),
                Set.copyOf(numbers),
                Set.copyOf(floors),
                Set.copyOf(quantities),
                Set.copyOf(loads),
                Set.copyOf(places),
                Set.copyOf(directions),
                Set.copyOf(details),
                Set.copyOf(words),
                Set.copyOf(roomWords),
                vacancy);
    }

    private static String take(String text, Pattern pattern, java.util.function.Consumer<Matcher> what) {
        Matcher m = pattern.matcher(text);
        StringBuilder rest = new StringBuilder();
        while (m.find()) {
            what.accept(m);
            m.appendReplacement(rest, " , ");
        }
        return m.appendTail(rest).toString();
    }

    private static String group(Matcher m) {
        for (int g = 1; g <= m.groupCount(); g++) if (m.group(g) != null) return m.group(g);
        return "";
    }

    private static String each(MatchResult range) {
        int from = Integer.parseInt(range.group(1)), to = Integer.parseInt(range.group(2));
        boolean rooms = to > from && to - from <= MOST_ROOMS;
        if (!rooms) return range.group();
        return IntStream.rangeClosed(from, to).mapToObj(Integer::toString).collect(Collectors.joining(","));
    }

    private void floor(Matcher m) {
        String f = group(m);
        int at = ORDINALS.indexOf(f);
        floors.add(at >= 0 ? Integer.toString(at + 1) : f.equals("GROUND") ? "G" : f);
    }

    private static List<Token> tokens(String text) {
        List<Token> tokens = new ArrayList<>();
        Matcher m = TOKEN.matcher(text);
        while (m.find()) {
            boolean gap =
                    tokens.isEmpty() || !m.group(1).isEmpty() || !m.group(3).isEmpty() || skipped(text, m, tokens);
            tokens.add(new Token(m.group(4), gap, !m.group(2).isEmpty()));
        }
        return tokens;
    }

    /** Signs that are no token stand between this token and the one before. */
    private static boolean skipped(String text, Matcher m, List<Token> before) {
        return m.start() > 0 && !before.isEmpty() && !isOfToken(text.charAt(m.start() - 1));
    }

    private static boolean isOfToken(char c) {
        return Character.isLetter(c) || c >= '0' && c <= '9' || "&+/,;()#:=*".indexOf(c) >= 0;
    }

    /** Reads what begins at a token; gives the token after it. */
    private int read(int i) {
        Token t = tokens.get(i);
        if (t.isDigits()) return number(i);
        if (!t.isLetters()) {
            if (!t.text().equals("#")) last = ",;(".contains(t.text()) ? "" : last;
            return i + 1;
        }
        if (ROOM.contains(t.text())) {
            nameRoom();
            afterRoom = true;
            return room(i + 1);
        }
        int end = tag(i);
        if (end > i) return end;
        return phrase(i);
    }

    /** Room numbers after RM: {@code 204}, {@code A-101}, {@code 204A}, {@code 210/212}. */
    private int room(int i) {
        int at = i;
        while (at < tokens.size()) {
            Token t = tokens.get(at);
            boolean number = t.isDigits()
                    || (t.text().length() <= 2
                            && t.isLetters()
                            && at + 1 < tokens.size()
                            && tokens.get(at + 1).isDigits()
                            && tokens.get(at + 1).joined());
            if ("#&+/,:".contains(t.text())
                    && at + 1 < tokens.size()
                    && tokens.get(at + 1).isDigits()) at++;
            else if (!number) break;
            else {
                StringBuilder room = new StringBuilder(t.text());
                at++;
                while (at < tokens.size()
                        && (tokens.get(at).isDigits()
                                || tokens.get(at).text().length() == 1
                                        && tokens.get(at).isLetters())
                        && (room.length() <= 2 && Character.isLetter(room.charAt(0)) || isSuffix(at)
                                ? tokens.get(at).joined()
                                : tokens.get(at).glued()))
                    room.append(tokens.get(at++).text());
                numbers.add(room.toString());
                last = "";
            }
        }
        afterRoom = at > i;
        return at;
    }

    /** The letter of {@code 204-A}. */
    private boolean isSuffix(int at) {
        Token t = tokens.get(at);
        boolean more = at + 1 < tokens.size() && tokens.get(at + 1).joined();
        return t.isLetters()
                && t.text().length() == 1
                && !more
                && tokens.get(at - 1).text().length() >= 3;
    }

    private void nameRoom() {
        roomWords.addAll(pending);
        pending.clear();
    }

    /** A number on its own: of the thing before it, of a room, or a tag that begins with a digit. */
    private int number(int i) {
        Token t = tokens.get(i);
        int next = i + 1;
        if (next < tokens.size()
                && tokens.get(next).isLetters()
                && (tokens.get(next).glued() || tokens.get(next).joined() && isSuffix(next))) {
            String letters = tokens.get(next).text();
            boolean tag = letters.length() > 1
                    || (next + 1 < tokens.size()
                            && tokens.get(next + 1).isDigits()
                            && tokens.get(next + 1).joined());
            if (tag) return rest(i, next, "", true);
            numbers.add(t.text() + letters);
            nameRoom();
            return next + 1;
        }
        if (next < tokens.size()
                && tokens.get(next).isLetters()
                && tokens.get(next).joined()
                && tokens.get(next).text().length() > 2) {
            pending.add(t.text() + "-" + tokens.get(next).text()); // 3-DOOR, 4-BURNER
            return next + 1;
        }
        boolean named = !last.isEmpty() && t.text().length() <= 2 && !afterRoom;
        if (named && vocabulary.kindOf(last).isLoad() && vocabulary.kindOf(last) != Vocabulary.Kind.PART) {
            tags.add(new Description.Tag("", "", Set.of(last + "#" + t.text())));
        } else {
            numbers.add(t.text());
            nameRoom();
        }
        return next;
    }

    /** A tag: letters and digits joined, or the letters of a known mark with a small number after them. */
    private int tag(int i) {
        Token letters = tokens.get(i);
        if (i + 1 >= tokens.size() || !tokens.get(i + 1).isDigits()) return named(i);
        Token digits = tokens.get(i + 1);
        Optional<Vocabulary.Meaning> word = vocabulary.meaning(letters.text());
        boolean mark = !vocabulary.ofMark(letters.text()).isEmpty()
                || Family.ofMark(letters.text()).isPresent();
        if (NUMBERED_PLACE.contains(letters.text())) return i;
        if (digits.joined()) {
            boolean single = letters.text().length() == 1;
            if (word.isPresent() && !mark && !single) return i;
            if (letters.text().length() > 6) return i;
        } else {
            boolean small = digits.text().length() <= 2;
            if (!mark || !small || letters.text().length() < 2 && !NAMED_BY_LETTERS.contains(last)) return i;
            if (word.filter(w -> w.kind() == Vocabulary.Kind.PART).isPresent()) return i;
        }
        int end = rest(i, i + 1, letters.text(), false);
        return more(end, letters.text());
    }

    /** {@code PANEL KP}, {@code PANEL A}: letters alone name a panel. */
    private int named(int i) {
        String text = tokens.get(i).text();
        boolean names = NAMED_BY_LETTERS.contains(last)
                && text.length() <= 4
                && (text.length() == 1 || vocabulary.meaning(text).isEmpty());
        if (!names || !tokens.get(i).gap()) return i;
        tags.add(new Description.Tag(text, text, Set.of()));
        last = "";
        return i + 1;
    }

    /** Takes the rest of a tag: digits, a letter, and further parts after hyphens. */
    private int rest(int from, int i, String letters, boolean digitsFirst) {
        StringBuilder text = new StringBuilder(tokens.get(from).text());
        boolean digits = tokens.get(from).isDigits();
        int at = from + 1;
        String number = "";
        while (at < tokens.size()) {
            Token t = tokens.get(at);
            boolean takes = t.isDigits()
                    ? (t.joined() || at == i)
                    : t.isLetters()
                            && (t.glued() || t.joined() && t.text().length() == 1 && !digitsAfterGap(at))
                            && (t.text().length() <= 2 || digitsFirst && at == i);
            if (!takes) break;
            if (t.isDigits() && digits) text.append('.');
            text.append(t.text());
            if (number.isEmpty() && t.isDigits()) number = t.text();
            digits = t.isDigits();
            at++;
        }
        addTag(text.toString(), letters, text.substring(Math.min(letters.length(), text.length())));
        return at;
    }

    private boolean digitsAfterGap(int at) {
        return at + 1 < tokens.size()
                && tokens.get(at + 1).isDigits()
                && tokens.get(at + 1).gap();
    }

    private void addTag(String text, String letters, String number) {
        Set<String> meanings = new LinkedHashSet<>();
        for (String m : vocabulary.ofMark(letters)) meanings.add(m + "#" + number);
        tags.add(new Description.Tag(text, letters, Set.copyOf(meanings)));
        words.addAll(pending);
        pending.clear();
        last = "";
    }

    /** {@code EF-1/2}, {@code FCU-5 & 12}, {@code VAV-1,2,3}: further numbers of the same letters. */
    private int more(int from, String letters) {
        int at = from;
        while (at + 1 < tokens.size()
                && "/,&+".contains(tokens.get(at).text())
                && tokens.get(at + 1).isDigits()
                && tokens.get(at + 1).text().length() <= 2) {
            addTag(
                    letters + tokens.get(at + 1).text(),
                    letters,
                    tokens.get(at + 1).text());
            at += 2;
        }
        return at;
    }

    /** The longest known way of writing that begins here, else a word that is not known. */
    private int phrase(int i) {
        List<String> run = new ArrayList<>();
        for (int k = i;
                k < tokens.size()
                        && run.size() < vocabulary.longest()
                        && tokens.get(k).isLetters();
                k++) run.add(tokens.get(k).text());
        for (int n = run.size(); n > 0; n--) {
            Optional<Vocabulary.Meaning> meaning = vocabulary.meaning(String.join(" ", run.subList(0, n)));
            if (meaning.isPresent()) {
                add(meaning.get());
                return i + n;
            }
        }
        String word = run.get(0);
        Optional<Vocabulary.Meaning> slip = vocabulary.slip(word);
        if (slip.isPresent()) add(slip.get());
        else {
            pending.add(word.length() > 3 && word.endsWith("S") ? word.substring(0, word.length() - 1) : word);
            last = "";
            afterRoom = false;
        }
        return i + 1;
    }

    private void add(Vocabulary.Meaning meaning) {
        afterRoom = false;
        switch (meaning.kind()) {
            case PLACE, AREA -> {
                places.add(meaning.name());
                nameRoom();
                last = meaning.name();
            }
            case DIRECTION -> directions.add(meaning.name());
            case DETAIL -> details.add(meaning.name());
            case NOISE, GENERIC -> {}
            default -> {
                loads.add(meaning.area().isEmpty() ? meaning.name() : meaning.wider());
                if (!meaning.area().isEmpty()) places.add(meaning.area());
                words.addAll(pending);
                pending.clear();
                last = meaning.name();
            }
        }
    }
}
