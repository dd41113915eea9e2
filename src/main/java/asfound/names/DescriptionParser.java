package asfound.names;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Takes a circuit description apart. */
final class DescriptionParser {

    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern SIGNS = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final Pattern VACANT = Pattern.compile(
            "SPARES?|SPACES?|SPARE BREAKER|SPARE BKR|EMPTY SPACE|BUSSED SPACE|SPACE ONLY|SPARE CB|SPARE CIRCUIT");

    private static final Set<String> ROOM = Set.of("RM", "ROOM", "RMS", "ROOMS");
    private static final Set<String> NUMBERED_PLACE = Set.of("NO", "NUM", "NUMBER", "CKT", "CIRCUIT", "BAY", "ZONE");
    private static final Set<String> NAMED_BY_LETTERS = Set.of("PANEL", "TRANSFORMER", "SWITCHBOARD");

    private final Vocabulary vocabulary;
    private final DescriptionTokens tokens;
    private final DescriptionDraft read;
    /** The meaning just read, for the number that may follow it. */
    private String last = "";

    private boolean afterRoom;

    private DescriptionParser(DescriptionTokens tokens, Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
        this.tokens = tokens;
        read = new DescriptionDraft(vocabulary);
    }

    static Description parse(String raw, Vocabulary vocabulary) {
        String text = PlainText.of(raw).replace(".", " ");
        text = BLANKS.matcher(text).replaceAll(" ").replace("A/C", "AC").replace("W/", "WITH ");
        String key = SIGNS.matcher(text).replaceAll(" ").strip();
        String vacancy = !VACANT.matcher(key).matches() ? "" : key.contains("SPACE") ? "SPACE" : "SPARE";
        FixedForms fixed = FixedForms.of(text);
        DescriptionTokens tokens = new DescriptionTokens(fixed.rest());
        return new DescriptionParser(tokens, vocabulary).all().done(key, fixed, vacancy);
    }

    private DescriptionDraft all() {
        for (int i = 0; i < tokens.size(); ) i = Math.max(next(i), i + 1);
        return read;
    }

    /** Reads what begins at a token; gives the token after it. */
    private int next(int i) {
        if (tokens.isNumber(i)) return number(i);
        if (!tokens.isWord(i)) {
            if (tokens.isOneOf(",;(", i)) last = "";
            return i + 1;
        }
        if (ROOM.contains(tokens.text(i))) return room(i + 1);
        int end = tag(i);
        if (end == i) end = named(i);
        return end > i ? end : phrase(i);
    }

    private int room(int i) {
        read.nameRoom();
        int end = RoomNumbers.read(tokens, i, read::roomNumber);
        afterRoom = end > i;
        if (afterRoom) last = "";
        return end;
    }

    /** A number on its own: of the thing before it, of a room, or a tag that begins with a digit. */
    private int number(int i) {
        String number = tokens.text(i);
        int next = i + 1;
        if (tokens.isWord(next) && (tokens.isGlued(next) || tokens.isJoined(next) && tokens.isSuffix(next))) {
            boolean tag = !tokens.isLetter(next) || tokens.isNumber(next + 1) && tokens.isJoined(next + 1);
            if (tag) return tagText(i, "");
            read.number(number + tokens.text(next));
            return next + 1;
        }
        // 3-DOOR, 4-BURNER
        if (tokens.isWord(next) && tokens.isJoined(next) && tokens.text(next).length() > 2) {
            read.word(number + "-" + tokens.text(next));
            return next + 1;
        }
        boolean ofThing = !last.isEmpty() && number.length() <= 2 && !afterRoom;
        if (ofThing && vocabulary.kindOf(last).isLoad() && vocabulary.kindOf(last) != Vocabulary.Kind.PART)
            read.numbered(last, number);
        else read.number(number);
        return next;
    }

    /** A tag: letters and digits joined, or the letters of a known mark with a small number after them. */
    private int tag(int i) {
        if (!tokens.isNumber(i + 1)) return i;
        String letters = tokens.text(i);
        if (NUMBERED_PLACE.contains(letters)) return i;
        Optional<Vocabulary.Meaning> word = vocabulary.meaning(letters);
        boolean mark =
                !vocabulary.ofMark(letters).isEmpty() || Family.ofMark(letters).isPresent();
        if (tokens.isJoined(i + 1)) {
            if (word.isPresent() && !mark && letters.length() > 1) return i;
            if (letters.length() > 6) return i;
        } else {
            boolean small = tokens.text(i + 1).length() <= 2;
            if (!mark || !small || letters.length() < 2 && !NAMED_BY_LETTERS.contains(last)) return i;
            if (word.filter(w -> w.kind() == Vocabulary.Kind.PART).isPresent()) return i;
        }
        return furtherTags(tagText(i, letters), letters);
    }

    private int tagText(int i, String letters) {
        TagText tag = TagText.from(tokens, i);
        addTag(tag.text(), letters);
        return tag.end();
    }

    private void addTag(String text, String letters) {
        read.tag(text, letters);
        last = "";
    }

    /** {@code EF-1/2}, {@code FCU-5 & 12}, {@code VAV-1,2,3}: further numbers of the same letters. */
    private int furtherTags(int from, String letters) {
        int at = from;
        while (tokens.isOneOf("/,&+", at)
                && tokens.isNumber(at + 1)
                && tokens.text(at + 1).length() <= 2) {
            addTag(letters + tokens.text(at + 1), letters);
            at += 2;
        }
        return at;
    }

    /** {@code PANEL KP}, {@code PANEL A}: letters alone name a panel. */
    private int named(int i) {
        String text = tokens.text(i);
        boolean names = !tokens.isNumber(i + 1)
                && NAMED_BY_LETTERS.contains(last)
                && text.length() <= 4
                && (text.length() == 1 || vocabulary.meaning(text).isEmpty());
        if (!names || tokens.isJoined(i)) return i;
        read.named(text);
        last = "";
        return i + 1;
    }

    /** The longest known way of writing that begins here, else a word that is not known. */
    private int phrase(int i) {
        List<String> run = new ArrayList<>();
        for (int k = i; run.size() < vocabulary.longest() && tokens.isWord(k); k++) run.add(tokens.text(k));
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
            read.word(word.length() > 3 && word.endsWith("S") ? word.substring(0, word.length() - 1) : word);
            last = "";
            afterRoom = false;
        }
        return i + 1;
    }

    private void add(Vocabulary.Meaning meaning) {
        afterRoom = false;
        switch (meaning.kind()) {
            case PLACE, AREA -> {
                read.place(meaning.name());
                last = meaning.name();
            }
            case DIRECTION -> read.direction(meaning.name());
            case DETAIL -> read.detail(meaning.name());
            case NOISE, GENERIC -> {}
            default -> {
                read.load(meaning);
                last = meaning.name();
            }
        }
    }
}
