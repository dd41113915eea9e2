package asfound.names;

import asfound.model.CircuitRef;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Parts a 'fed from' text into equipment and device. */
final class SupplyReader {

    private static final String NUMBERS = "\\d{1,3}(?:\\s*(?:[-,/&+;]|\\s|AND)\\s*\\d{1,3})*";
    private static final Pattern LEAD = Pattern.compile(
            "^(?:FED|FEED|SUPPLIED|SUPPLY|SERVED)?\\s*(?:FROM|BY)?\\s*[:=]?\\s*", Pattern.CASE_INSENSITIVE);
    private static final Pattern VIA = Pattern.compile("\\s+(?:VIA|THRU|THROUGH)\\s+", Pattern.CASE_INSENSITIVE);
    private static final String DEVICE_WORD =
            "(?:CIRCUITS?|CKTS?|CCTS?|CCT|BREAKERS?|BKRS?|BRKR|CB|POLES?|POS(?:ITIONS?)?|SPACES?|SWITCH|SW|FUSE)";
    /** {@code MDP CKT 7}, {@code MDP, BKR #7,9,11}, {@code MDP (CIRCUIT 7)}, {@code MDP CB M1}. */
    private static final Pattern WITH_WORD = Pattern.compile(
            "^(.*?)[\\s,;:/(\\-]+" + DEVICE_WORD + "[\\s.:#\\-]*(?:NOS?[.\\s:#]*)?(" + NUMBERS
                    + "|[A-Z]{0,3}\\d{1,3}|MAIN)\\s*\\)?$",
            Pattern.CASE_INSENSITIVE);
    /** {@code DB-1 WAY 8}: of a board with phases the way's number is none of its positions'. */
    private static final Pattern WITH_WAY = Pattern.compile(
            "^(.*?)[\\s,;:/(\\-]+(WAY\\s*(?:NO\\.?\\s*)?#?\\d{1,3}(?:\\s*(?:L[123]|[RYB]|TPN?))?)\\s*\\)?$",
            Pattern.CASE_INSENSITIVE);
    /** {@code CKT 7 OF MDP}, {@code BREAKER 7 IN PANEL MDP}. */
    private static final Pattern WORD_FIRST = Pattern.compile(
            "^" + DEVICE_WORD + "[\\s.:#\\-]*(?:NOS?[.\\s:#]*)?(" + NUMBERS + ")[\\s,]+(?:OF|IN|AT|FROM|ON)\\s+(.*)$",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern IN_BRACKETS =
            Pattern.compile("\\s*[(\\[]\\s*#?(" + NUMBERS + ")\\s*[)\\]]$", Pattern.CASE_INSENSITIVE);
    /** A rating at the end: {@code 100A/3P}, {@code 225 AMP}. */
    private static final Pattern RATING = Pattern.compile(
            "[\\s,(]+\\d{2,4}\\s*A(?:MPS?|T|F)?(?:\\s*[/,-]?\\s*[123]\\s*P(?:OLE)?)?\\s*\\)?$",
            Pattern.CASE_INSENSITIVE);

    private final NameBook names;

    SupplyReader(NameBook names) {
        this.names = names;
    }

    SupplyText read(String raw) {
        String text = tidy(raw);
        List<SupplyText.Step> steps = new ArrayList<>();
        for (String part : VIA.split(text)) if (!part.isBlank()) steps.add(0, step(part.strip()));
        if (steps.size() > 1 && isTransformer(steps.get(steps.size() - 1)) && !isTransformer(steps.get(0)))
            steps.add(0, steps.remove(steps.size() - 1));
        return new SupplyText(raw, steps);
    }

    private static String tidy(String raw) {
        String text = raw.strip().replaceAll("\\s+", " ").replaceAll("[\\u2010-\\u2015\\u2212]", "-");
        return LEAD.matcher(text).replaceFirst("");
    }

    private static boolean isTransformer(SupplyText.Step step) {
        return step.device().isEmpty() && Designation.of(step.text()).kind().equals(Optional.of(Family.TRANSFORMER));
    }

    private SupplyText.Step step(String text) {
        Optional<SupplyText.Step> outright = withWord(IN_BRACKETS.matcher(text).replaceFirst(" CKT $1"));
        if (outright.isPresent()) return outright.get();
        Optional<String> whole = names.nameOf(text);
        if (whole.isPresent())
            return new SupplyText.Step(text, whole.filter(n -> !isOtherwise(text, n)), Optional.empty());
        Matcher rated = RATING.matcher(text);
        if (rated.find() && rated.start() > 0) {
            SupplyText.Step plain = step(text.substring(0, rated.start()));
            if (plain.name().isPresent()) return plain;
        }
        return apart(text).orElse(new SupplyText.Step(text, Optional.empty(), Optional.empty()));
    }

    /** Whether a text that is not a name's own letters could as well be another equipment's with a device: {@code G 1}. */
    private boolean isOtherwise(String text, String name) {
        return !letters(text).endsWith(letters(name))
                && apart(text)
                        .filter(way ->
                                letters(text).startsWith(letters(way.name().orElseThrow())))
                        .isPresent();
    }

    private static String letters(String text) {
        return text.toUpperCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    /** A word such as CKT says outright where the device begins, whether or not the equipment is known. */
    private Optional<SupplyText.Step> withWord(String text) {
        Matcher first = WORD_FIRST.matcher(text);
        if (first.matches()) return Optional.of(step(first.group(2), first.group(1)));
        Matcher way = WITH_WAY.matcher(text);
        if (way.matches() && !way.group(1).isBlank()) return Optional.of(step(way.group(1), way.group(2)));
        Matcher m = WITH_WORD.matcher(text);
        return m.matches() && !m.group(1).isBlank() ? Optional.of(step(m.group(1), m.group(2))) : Optional.empty();
    }

    private SupplyText.Step step(String equipment, String device) {
        String tidy = equipment.strip().replaceAll("[\\s,;:/(\\-]+$", "");
        return new SupplyText.Step(tidy, names.nameOf(tidy), CircuitRef.parse(device));
    }

    /** A known name, a joint, and a device: the longest known name, and only where no shorter one is known as well. */
    private Optional<SupplyText.Step> apart(String text) {
        List<SupplyText.Step> ways = new ArrayList<>();
        for (int i = text.length() - 1; i > 0; i--) {
            if (!isJoint(text.charAt(i)) || isJoint(text.charAt(i - 1))) continue;
            String device = text.substring(i).replaceAll("^[\\s,;:/#(.\\-]+|[\\s)]+$", "");
            boolean named = "/:".indexOf(text.charAt(i)) >= 0 && device.matches("(?i)[A-Z]{0,4}-?\\d{0,3}");
            if (!device.matches("(?i)" + NUMBERS) && !named || device.isEmpty()) continue;
            SupplyText.Step way = step(text.substring(0, i), device);
            if (way.name().isPresent()) ways.add(way);
        }
        return ways.size() == 1 ? Optional.of(ways.get(0)) : Optional.empty();
    }

    private static boolean isJoint(char c) {
        return " ,;:/#(.-".indexOf(c) >= 0;
    }
}
