package asfound.names;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a designation's structure from text: what is noise, what says the kind, what says the place, and the core. */
final class DesignationReader {

    private static final Pattern BRACKETS = Pattern.compile("[(\\[{]([^()\\[\\]{}]*)[)\\]}]?");
    private static final Pattern SECTION = Pattern.compile("\\b(?:SECTION|SECT|SEC|TUB)[\\s.\\-#]*([0-9A-Z]{1,2})\\b");
    private static final Set<String> LEAD = Set.of(
            "FEEDER",
            "FDR",
            "FEED",
            "FEEDS",
            "SUPPLY",
            "SUPPLIES",
            "SERVES",
            "SERVING",
            "TO",
            "FOR",
            "THE",
            "NEW",
            "EXISTING",
            "EXIST");
    private static final Set<String> TAIL = Set.of("FEEDER", "FDR", "FEED");
    private static final Set<String> MAINS = Set.of("MAIN", "MAINS", "MLO", "MCB", "LUGS", "BREAKER");
    private static final Set<String> UTILITY = Set.of(
            "UTILITY",
            "UTIL",
            "SERVICE",
            "GRID",
            "COMPANY",
            "CO",
            "POWER",
            "ELECTRIC",
            "INCOMING",
            "MAIN",
            "ENTRANCE",
            "SUPPLY",
            "SOURCE");
    private static final Set<String> UTILITY_HEADS = Set.of("UTILITY", "UTIL", "SERVICE", "GRID");
    private static final Set<String> ADJECTIVES =
            Set.of("EMERGENCY", "STANDBY", "DIESEL", "BACKUP", "ENGINE", "SOLAR", "PV", "AUTOMATIC", "AUTO", "MANUAL");
    private static final Set<Family> WITH_ADJECTIVES =
            Set.of(Family.GENERATOR, Family.INVERTER, Family.TRANSFER_SWITCH, Family.BATTERY);

    private final String raw;
    private final List<DesignationToken> tokens;
    private String floor;
    private String section = "";
    private Optional<Family> family = Optional.empty();
    private boolean kindAtTheEdge;
    private List<String> expansions = List.of();

    private DesignationReader(String raw) {
        this.raw = raw;
        Remark remark = new Remark();
        String text = withoutBrackets(PlainText.of(raw), remark);
        Matcher s = SECTION.matcher(text);
        if (s.find() && s.start() > 0) {
            section = s.group(1);
            text = text.substring(0, s.start()) + text.substring(s.end());
        }
        this.tokens = new ArrayList<>(DesignationToken.all(Words.joined(text)));
        remark.cutFrom(tokens);
        this.floor = remark.floor();
    }

    static Designation read(String raw) {
        return new DesignationReader(raw).designation();
    }

    private Designation designation() {
        strip();
        if (isUtility()) {
            family = Optional.of(Family.UTILITY);
            tokens.removeIf(DesignationToken::isLetters);
        } else {
            dropSpelledOutMark();
            takeKind();
        }
        String core = core(tokens);
        return new Designation(raw, plain(core), core, family, implied(), floor, expansions, PlainText.lookAlike(raw));
    }

    /** A remark in brackets goes; a section stays; a short mark in brackets after bare letters stays: {@code LP (2A)}. */
    private String withoutBrackets(String text, Remark remark) {
        String outside = BRACKETS.matcher(text).replaceAll(" ").strip();
        if (outside.isEmpty()) return text.replaceAll("[(\\[{)\\]}]", " ").strip();
        StringBuilder kept = new StringBuilder(outside);
        Matcher m = BRACKETS.matcher(text);
        while (m.find()) {
            String inside = m.group(1).strip();
            boolean mark = inside.matches("[0-9]{1,2}[A-Z]?|[A-Z]?[0-9]{1,2}") && !outside.matches(".*[0-9].*");
            if (SECTION.matcher(inside).matches()) kept.append(' ').append(inside);
            else if (mark) kept.append('-').append(inside);
            else remark.note(inside);
        }
        return kept.toString();
    }

    private void strip() {
        while (tokens.size() > 1
                && LEAD.contains(tokens.get(0).text())
                && tokens.get(1).standsApart()) tokens.remove(0);
        while (tokens.size() > 1 && isTail(last()) && last().standsApart()) tokens.remove(tokens.size() - 1);
    }

    private boolean isTail(DesignationToken t) {
        boolean named = tokens.stream().anyMatch(DesignationToken::isDigits)
                || (tokens.size() > 2 && Family.ofWord(tokens.get(0).text()).isPresent());
        return TAIL.contains(t.text()) || (MAINS.contains(t.text()) && named);
    }

    private DesignationToken last() {
        return tokens.get(tokens.size() - 1);
    }

    private boolean isUtility() {
        List<String> words = tokens.stream()
                .filter(DesignationToken::isLetters)
                .map(DesignationToken::text)
                .toList();
        return !words.isEmpty()
                && UTILITY.containsAll(words)
                && words.stream().anyMatch(UTILITY_HEADS::contains)
                && tokens.stream().allMatch(DesignationToken::isWordOrNumber);
    }

    /** {@code DISTRIBUTION PANEL DP-1}, {@code EXHAUST FAN EF-1}: words that the mark after them stands for go. */
    private void dropSpelledOutMark() {
        for (int m = 1;
                m < tokens.size() && tokens.get(m).isLetters() && tokens.get(m).standsApart();
                m++) {
            boolean ends = m + 1 == tokens.size() || tokens.get(m + 1).isDigits();
            List<String> words =
                    tokens.subList(0, m).stream().map(DesignationToken::text).toList();
            if (!tokens.get(0).isLetters()) return;
            if (ends && Words.abbreviates(words, tokens.get(m).text())) {
                family = words.stream()
                        .map(Family::ofWord)
                        .flatMap(Optional::stream)
                        .reduce((a, b) -> b);
                tokens.subList(0, m).clear();
                return;
            }
        }
    }

    /** The last word of kind is the head; a panel word beats others: {@code UPS PANEL}, {@code PANEL UPS} are panels. */
    private void takeKind() {
        List<Family> kinds = new ArrayList<>();
        for (DesignationToken t : tokens) Family.ofWord(t.text()).ifPresent(kinds::add);
        if (kinds.isEmpty()) return;
        Family head = kinds.contains(Family.BOARD) ? Family.BOARD : kinds.get(kinds.size() - 1);
        family = Optional.of(head);
        kindAtTheEdge = isKind(tokens.get(0), head) || isKind(last(), head);
        expandWords();
        tokens.removeIf(t -> isKind(t, head));
        if (WITH_ADJECTIVES.contains(head)) tokens.removeIf(t -> ADJECTIVES.contains(t.text()));
    }

    private static boolean isKind(DesignationToken t, Family head) {
        return Family.ofWord(t.text()).filter(head::equals).isPresent();
    }

    /** {@code XFMR 1} may be written {@code T-1} elsewhere, {@code LIGHTING PANEL 2A} {@code LP-2A}. */
    private void expandWords() {
        int n = 0;
        while (n < tokens.size()
                && tokens.get(n).isLetters()
                && (n == 0 || tokens.get(n).standsApart())) n++;
        List<String> words =
                tokens.subList(0, n).stream().map(DesignationToken::text).toList();
        String rest = core(tokens.subList(n, tokens.size()));
        boolean headLast = n > 0 && Family.ofWord(words.get(n - 1)).isPresent();
        if (n == 1 && family.orElseThrow() == Family.BOARD) return;
        List<String> marks = n == 1 ? family.orElseThrow().marks() : headLast ? Words.initials(words) : List.of();
        boolean number = tokens.size() > n && tokens.get(n).isDigits();
        if (n > 1 || number) expansions = marks.stream().map(m -> m + rest).toList();
    }

    private String core(List<DesignationToken> run) {
        StringBuilder core = new StringBuilder();
        boolean digits = false;
        for (DesignationToken t : run) {
            if (digits && t.isDigits()) core.append('.');
            core.append(t.text());
            digits = t.isDigits();
        }
        return section.isEmpty() ? core.toString() : core + "/S" + section;
    }

    private Optional<Family> implied() {
        if (tokens.isEmpty() || !tokens.get(0).isLetters()) return Optional.empty();
        String mark = tokens.get(0).text();
        boolean numbered = tokens.size() > 1 && tokens.get(1).isDigits();
        return mark.length() > 1 || numbered ? Family.ofMark(mark) : Optional.empty();
    }

    private String plain(String core) {
        String tidy = raw.strip().replaceAll("\\s+", " ").replaceAll("^[\"']+|[\"']+$", "");
        if (core.length() < 2 || !speaksForItself(core)) return tidy;
        StringBuilder plain = new StringBuilder();
        for (DesignationToken t : tokens)
            plain.append(plain.isEmpty() ? "" : t.before().replaceAll("\\s+", " "))
                    .append(t.text());
        if (!section.isEmpty()) plain.append(" SEC ").append(section);
        return plain.toString();
    }

    /** A mark needs no word beside it; a word of kind stays where the mark alone could mean another thing. */
    private boolean speaksForItself(String core) {
        boolean mark = !tokens.isEmpty() && tokens.get(0).isLetters();
        boolean numbered = tokens.stream().anyMatch(DesignationToken::isDigits);
        if (!mark || !(numbered || core.matches("\\p{L}{2,5}"))) return false;
        if (family.isEmpty() || family.equals(implied())) return true;
        return family.get() == Family.BOARD && numbered && implied().isEmpty() && kindAtTheEdge;
    }
}
