package asfound.drawing.schedule.phrase;

import asfound.drawing.schedule.text.NameText;
import asfound.drawing.schedule.text.PlaceWords;
import asfound.drawing.schedule.text.Texts;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** A panel's name in a title or in running text: {@code PANEL "HP-1A"}, {@code LP-2 PANEL SCHEDULE}. */
public final class Titles {

    private static final String KIND =
            "(?:(?:EMERGENCY|NORMAL|CRITICAL|LIFE\\s+SAFETY|ESSENTIAL|STANDBY|ELECTRICAL|RECEPTACLE|MECHANICAL|EQUIPMENT|MAIN|BRANCH(?:\\s+CIRCUIT)?|LIGHTING\\s+(?:&|AND)\\s+(?:POWER|APPLIANCE)|SUB|EXISTING|NEW|SERVICE|LIGHTING|POWER|DISTRIBUTION|FEEDER|HOUSE|\\(E\\)|\\(N\\))[\\s-]+)?(?:(?:SUB-?\\s?)?DISTRIBUTION\\s+(?:BOARD|PANEL)|DIST\\.?\\s+BOARD|LIGHTING\\s+PANEL|POWER\\s+PANEL|FEED(?:ER)?\\s+PILLAR|PANEL\\s?BOARD|PANEL|PNL\\.?|LOAD\\s?CENT(?:ER|RE)|SWITCH\\s?(?:BOARD|GEAR)|MOTOR\\s+CONTROL\\s+CENT(?:ER|RE)|CONSUMER\\s+UNIT|BOARD|D\\.?B\\.?(?=\\s)|PANNEAU|TABLERO|UNTERVERTEILUNG|VERTEILER|VERDEELKAST|VERDELER|GROEPENKAST"
                    + "|(?:TABLEAU|COFFRET|CUADRO|QUADRO)(?=\\s+(?!DE\\b)\\S*[A-Z]))";
    private static final String SHEET =
            "(?:SCHEDULE|DIRECTORY|(?:LOAD|BREAKER)\\s+SCHEDULE|CIRCUITS|CIRCUIT\\s+DIRECTORY|CIRCUIT\\s+SCHEDULE|(?:CIRCUIT\\s+)?CHART|(?:BREAKER|CIRCUIT)\\s+LIST|CIRCUIT\\s+LEGEND|C[ÉE]DULE|(?:CUADRO|TABLA|PLANILLA)\\s+DE\\s+CARGAS)";
    private static final String OF = "(?:OF|FOR|IN|DU|DEL)";
    private static final String NAME = "[\"'“]?([A-Z0-9][A-Z0-9./_#&-]*(?:\\s[A-Z0-9./_#-]*\\d[A-Z0-9./_#-]*)?)[\"'”]?";
    private static final Pattern AFTER = Pattern.compile(
            "^(?:" + SHEET + "\\s+" + OF + "?\\s*[-–:]?\\s*)?" + KIND + "(?:\\s+(?:" + SHEET
                    + "(?:\\s+" + OF + ")?|NAME|NO\\.?|DESIGNATION))?(?:\\s+|\\s*[-–—:]+\\s*|(?=[\"'“]))" + NAME
                    + "(?=$|[\\s,;:(\\[-])",
            Pattern.CASE_INSENSITIVE);
    /** Other words of the kind before it: {@code COLUMN WIDTH PANEL CWP-1}; none that refer to a panel elsewhere. */
    private static final Pattern BEFORE_KIND = Pattern.compile(
            "^(?!(?:.*\\s)?(?:to|from|in|on|at|of|by|via|for|see|the|fed|feeds|serves?|served|refer|through|with|and|is|are|all|each|per|existing|no|provide|install|connect|circuits?)\\s)"
                    + "(?:(?:[A-Z]{2,}\\.?|\\d{3}(?:Y?/\\d{3})?\\s?V(?:OLTS?)?)[\\s-]+){1,3}?(?=" + KIND + ")",
            Pattern.CASE_INSENSITIVE);

    /** {@code 2ND FLOOR PANEL X}, {@code BLDG. 4 PANEL X}: where it stands. */
    private static final Pattern PLACE_BEFORE = Pattern.compile(
            "^(?:\\d+(?:ST|ND|RD|TH)\\s+)?(?:FLOOR|FL\\.?|LEVEL|LVL\\.?|BLDG\\.?|BUILDING|RM\\.?|ROOM|WING|SUITE)\\s*#?[A-Z]?\\d{0,4}[A-Z]?\\s*[-–—,:]?\\s*(?="
                    + KIND + ")",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern CAPITALS = Pattern.compile("[A-Z]{1,3}(?:-[A-Z]{1,3})?");

    /** {@code DIRECTORY OF CIRCUITS, PANEL X}. */
    private static final Pattern OF_SHEET = Pattern.compile(SHEET + "\\b", Pattern.CASE_INSENSITIVE);

    private static final Pattern CIRCUITS = Pattern.compile("CIRCUITS\\b", Pattern.CASE_INSENSITIVE);

    private static final Pattern OF_LOADS =
            Pattern.compile("\\b(?:LOAD|BREAKER)\\s+SCHEDULE\\b", Pattern.CASE_INSENSITIVE);

    private static final Pattern OTHER_PANEL = Pattern.compile(
            "\\b(?:control|fire|alarm|annunciator|patch|access|solar|door|relay|front|rear|back|side|top|end|wall|ceiling|wood|glass)\\b",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern KIND_FIRST = Pattern.compile(KIND + "\\s", Pattern.CASE_INSENSITIVE);
    private static final Pattern BEFORE = Pattern.compile(
            "^" + NAME + "\\s*[-–—:]*\\s*" + KIND + "?\\s*(?:UNIT\\s+)?" + SHEET + "\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern NAMED =
            Pattern.compile("^" + SHEET + "\\s*(?:OF|FOR)?\\s*[-–—:]*\\s*" + NAME + "$", Pattern.CASE_INSENSITIVE);

    /** {@code 2HA - Electrical panel}, {@code L5A panel}: nothing else stands in the line. */
    private static final Pattern NAME_OF_KIND =
            Pattern.compile("^" + NAME + "\\s*[-–—:]*\\s*(?:ELECTRICAL\\s+)?" + KIND + "$", Pattern.CASE_INSENSITIVE);

    /** {@code DB4 – Workshop}: a board's own name begins with the letters of its kind, and what it serves follows. */
    private static final Pattern OWN_KIND = Pattern.compile(
            "^((?:SM|SUB|[A-Z])?DB[-/. ]?(?=[A-Z0-9./-]*\\d)[A-Z0-9./-]{1,12})(?=\\s+[-–—(/|·•]|,|\\s+(?i:at|in|on|near|located|situated)\\s|:|$)");

    /** {@code RPP-14A - SECTION 1 OF 2}: which part of the board the table below shows. */
    private static final Pattern SECTION_OF = Pattern.compile(
            "^(?=\\S*[A-Z])" + NAME + "\\s*[-–—,(]\\s*(?:SECTION|SECT\\.?|SEC\\.?|TUB)\\s+\\d\\s+OF\\s+\\d\\)?$",
            Pattern.CASE_INSENSITIVE);

    /** {@code BUSWAY BD-1 PLUG-IN UNITS}. */
    private static final Pattern BUSWAY =
            Pattern.compile("^BUS\\s?(?:WAY|DUCT)\\s+" + NAME + "(?=$|[\\s,;:(\\[-])", Pattern.CASE_INSENSITIVE);

    /** The kind of a board, and no name of one: {@code DB SCHEDULE}. */
    private static final Pattern KIND_ALONE = Pattern.compile("S?M?DB|MCC|MCCB?", Pattern.CASE_INSENSITIVE);

    private static final String[] WORDS = {
        "panel",
        "board",
        "pnl",
        "cent",
        "consumer",
        "schedule",
        "directory",
        "circuit",
        "pillar",
        "sect",
        "sec.",
        "tub",
        "db",
        "bus",
        "panneau",
        "coffret",
        "tabl",
        "cuadro",
        "quadro",
        "vert",
        "unterv",
        "verde",
        "groepen"
    };

    private static final int LETTERS = 26;

    /** Whether one of them begins with these two letters: hardly any place in a text does. */
    private static final boolean[] BEGINNINGS = new boolean[LETTERS * LETTERS];

    static {
        for (String word : WORDS) BEGINNINGS[letter(word.charAt(0)) * LETTERS + letter(word.charAt(1))] = true;
    }

    /** Those that begin with each letter, from a to z. */
    private static final List<List<String>> BY_FIRST_LETTER = IntStream.rangeClosed('a', 'z')
            .mapToObj(first ->
                    Arrays.stream(WORDS).filter(word -> word.charAt(0) == first).toList())
            .toList();

    private static final Pattern NO_NAME = Pattern.compile(
            "panel|panelboard|board|branch|circuit|electrical|lighting|power|main|the|motor|fan|pump|door|cable|fixture|load"
                    + "|relay|device|feeder|keyed|note|notes|id|no|name|ref|tag|mark|number|schedule|directory|data",
            Pattern.CASE_INSENSITIVE);

    /** {@code DB-6 workshop}. */
    private static final Pattern WITH_PLACE =
            Pattern.compile("^((?:SM|SUB|[A-Z])?DB[-/. ]?(?=[A-Z0-9./-]*\\d)[A-Z0-9./-]{1,12})\\s+(\\p{L}.{2,30})$");

    /** {@code SUBPANEL}, as one word. */
    private static final Pattern RUN_TOGETHER = Pattern.compile("^SUB(?=PANEL)", Pattern.CASE_INSENSITIVE);

    /** {@code 4. Panel directory}: the number of a section of a report. */
    private static final Pattern NUMBER_OF_SECTION = Pattern.compile("\\d+\\.(?:\\d+\\.?)*");

    /** {@code DISTRIBUTION BOARD 12 WAY}: how large it is. */
    private static final Pattern SIZE =
            Pattern.compile("\\d{1,3}\\s*-?\\s*(?:WAYS?|POLES?|CIRCUITS?|CKTS?|SPACES?)\\b", Pattern.CASE_INSENSITIVE);

    private Titles() {}

    /** The name that a phrase gives; empty where it gives none. */
    public static Optional<String> nameIn(String text) {
        String t = text.strip();
        Optional<String> whole = nameOf(t);
        if (whole.isPresent()) return whole;
        // behind the building's name, or the sheet's: 'ST. ORAN HOSPITAL - PANELBOARD R2D', 'Board record. Panel KX-4'
        int dash = Math.max(t.lastIndexOf(" - "), Math.max(t.lastIndexOf(" – "), t.lastIndexOf(" — ")));
        return behind(t, dash, 3)
                .or(() -> behind(t, t.indexOf(". "), 2))
                .or(() -> OF_SHEET.matcher(t).lookingAt() ? behind(t, t.indexOf(", "), 2) : Optional.empty());
    }

    /** The name in what follows a sign, where that begins with the word for a panel. */
    private static Optional<String> behind(String text, int sign, int length) {
        if (sign < 0) return Optional.empty();
        String rest = text.substring(sign + length).strip();
        return KIND_FIRST.matcher(rest).lookingAt() ? nameOf(rest) : Optional.empty();
    }

    /** Whether it has a word without which nothing is a title. */
    public static boolean mayBeTitle(String text) {
        int last = -1;
        for (int i = 0; i < text.length(); i++) {
            int letter = letter(text.charAt(i));
            if (last >= 0 && letter >= 0 && BEGINNINGS[last * LETTERS + letter] && isWordAt(text, i - 1)) return true;
            last = letter;
        }
        return false;
    }

    /** From 0 for a or A; -1 for what is none of the plain letters. */
    private static int letter(char c) {
        int letter = (c | ' ') - 'a';
        return letter >= 0 && letter < LETTERS ? letter : -1;
    }

    private static boolean isWordAt(String text, int i) {
        for (String word : BY_FIRST_LETTER.get((text.charAt(i) | ' ') - 'a'))
            if (text.regionMatches(true, i, word, 0, word.length())) return true;
        return false;
    }

    private static Optional<String> nameOf(String text) {
        if (!mayBeTitle(text)) return Optional.empty();
        String t = RUN_TOGETHER.matcher(text).replaceFirst("SUB-");
        Optional<String> plain = nameBy(t);
        if (plain.isPresent()) return plain;
        Matcher placed = WITH_PLACE.matcher(t);
        if (placed.matches() && PlaceWords.isPlace(placed.group(2))) return Optional.of(placed.group(1));
        Matcher place = PLACE_BEFORE.matcher(t);
        if (place.lookingAt()) return nameBy(t.substring(place.end()));
        Matcher kind = BEFORE_KIND.matcher(t);
        return kind.lookingAt()
                ? nameBy(t.substring(kind.end())).filter(name -> Texts.hasFigure(name) || isNameAtEnd(name, t))
                : Optional.empty();
    }

    /** {@code KITCHEN PANEL HP}; what has a panel to control it, or to see through, is no board. */
    private static boolean isNameAtEnd(String name, String title) {
        return title.endsWith(name)
                && CAPITALS.matcher(name).matches()
                && !OTHER_PANEL.matcher(title).find();
    }

    private static Optional<String> nameBy(String t) {
        for (Pattern p : new Pattern[] {OWN_KIND, AFTER, BEFORE, NAMED, NAME_OF_KIND, SECTION_OF, BUSWAY}) {
            Matcher m = p.matcher(t);
            if (!m.find()) continue;
            String name = NameText.name(m.group(1));
            if (p == BEFORE && NUMBER_OF_SECTION.matcher(m.group(1)).matches()) continue;
            if (p == AFTER && SIZE.matcher(t).region(m.start(1), t.length()).lookingAt()) continue;
            // 'CIRCUITS IN PANEL X ARE EXISTING' is a note
            if (p == AFTER && m.end() < t.length() && CIRCUITS.matcher(t).lookingAt()) continue;
            // 'HVAC LOAD SCHEDULE' is another list
            if (p == BEFORE && !Texts.hasFigure(name) && OF_LOADS.matcher(t).find()) continue;
            // 'MEMO: Panel directory as posted' is running text
            if (p == BEFORE && !Texts.hasFigure(name) && !m.hitEnd()) continue;
            boolean telling = name.chars().anyMatch(Character::isDigit)
                    || name.length() <= 6 && name.equals(name.toUpperCase(java.util.Locale.ROOT));
            if (p == BEFORE && KIND_ALONE.matcher(name).matches()) continue;
            if (telling
                    && NameText.isNameBehindItsWord(name)
                    && !NO_NAME.matcher(name).matches()) return Optional.of(name);
        }
        return Optional.empty();
    }
}
