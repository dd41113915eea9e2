package asfound.drawing.schedule;

import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** How much the entries of a column, by themselves, look like what a role holds. */
final class Contents {

    private static final Pattern PHASES =
            Pattern.compile("(?:L?[123ABC]|[RYBØ]|[ABC]{2,3}|[-,/&+ ]|PH)+", Pattern.CASE_INSENSITIVE);
    private static final Pattern WIRE = Pattern.compile(
            ".*#\\s*\\d.*|.*\\b\\d+\\s*AWG.*|.*\\bMM.*|.*\\d/0.*|.*\\bKCMIL.*|.*\\d+\\s*[X×]\\s*\\d+.*|.*\\d[CT]\\b.*|\\d+(?:\\.5)?|.*\\bEMT\\b.*|.*\\d+/\\d+\"?C?.*|\\d+\\s*[/+]\\s*\\d+(\\.\\d)?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern FIGURE = Pattern.compile(
            "\\d{1,3}(?:[,' ]\\d{3})+(?:\\.\\d+)?|\\d+(?:\\.\\d+|,\\d{1,2})?(?:\\s*k?(?:VA|W))?",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern DIGITS = Pattern.compile("[\\d ]+");
    private static final Pattern SMALL = Pattern.compile("\\d{1,2}");
    private static final Pattern SHORT = Pattern.compile("\\d{1,3}");

    /** {@code RCBO type C}: what a device is, and nothing that it feeds. */
    private static final Pattern KIND_OF_DEVICE = Pattern.compile(
            "(?:(?:RCBO|RCD|RCCB|MCB|MCCB|ACB|GFCI|AFCI|GFEP|FUSE|BREAKER|CB|TYPE|CURVE|[ABCDK]|\\d+\\s?MA)[\\s,/-]*)+",
            Pattern.CASE_INSENSITIVE);

    private Contents() {}

    /** Whether the entries can speak against the role, whatever the heading says. */
    static boolean judges(Role role) {
        return role != Role.OTHER && role != Role.PANEL;
    }

    /** From 0 to 1. */
    static double weight(Role role, List<String> all) {
        List<String> texts = all.stream().filter(t -> !Texts.saysNothing(t)).toList();
        return switch (role) {
            case POSITION -> 0;
            case DESCRIPTION -> description(texts);
            case RATING -> rating(texts);
            case POLES -> share(texts, t -> DeviceText.polesOnly(t).isPresent());
            case DEVICE ->
                share(
                        texts,
                        t -> DeviceText.parse(t)
                                .filter(d ->
                                        d.poles().isPresent() && d.ratingA().isPresent())
                                .isPresent());
            case PHASE ->
                share(
                        texts,
                        t -> PHASES.matcher(t).matches() && !DIGITS.matcher(t).matches());
            case LOAD, LOAD_A, LOAD_B, LOAD_C -> load(texts);
            case WIRE -> 0.8 * share(texts, t -> WIRE.matcher(t).matches());
            case PANEL, OTHER -> 0;
        };
    }

    /** How much short entries under a heading that says 'description' can be one: {@code EF-1}, {@code P-3}. */
    static double tags(List<String> all) {
        List<String> texts = all.stream().filter(t -> !Texts.saysNothing(t)).toList();
        return 0.4
                * share(
                        texts,
                        t -> t.chars().anyMatch(Character::isLetter)
                                && DeviceText.parse(t).isEmpty()
                                && !PHASES.matcher(t).matches()
                                && !KIND_OF_DEVICE.matcher(t).matches());
    }

    private static double description(List<String> texts) {
        double letters = share(
                texts,
                t -> t.chars().filter(Character::isLetter).count() >= 3
                        && DeviceText.parse(t).isEmpty()
                        && !KIND_OF_DEVICE.matcher(t).matches()
                        && !t.contains(".5mm"));
        double length = texts.stream().mapToInt(String::length).average().orElse(0);
        return letters * Math.min(1, 0.4 + length / 20);
    }

    private static double rating(List<String> texts) {
        int good = 0;
        boolean above = false;
        for (String t : texts) {
            var device = DeviceText.parse(t);
            if (device.isEmpty()
                    || device.get().poles().isPresent()
                    || device.get().ratingA().isEmpty()) continue;
            int amperes = device.get().ratingA().get();
            if (DeviceText.isStandard(amperes)) good++;
            above |= amperes > 4;
        }
        double share = texts.isEmpty() ? 0 : good / (double) texts.size();
        return above ? share : 0.1 * share;
    }

    private static double load(List<String> texts) {
        double figures = share(texts, t -> FIGURE.matcher(t).matches());
        double ratings = share(texts, t -> SHORT.matcher(t).matches() && DeviceText.isStandard(Integer.parseInt(t)));
        return ratings > 0.75 ? 0.4 * figures : figures;
    }

    /** Whole numbers of one or two digits alone, too small for loads in VA: numbers of notes, of rooms, of poles. */
    static boolean areSmall(List<String> all) {
        return all.stream()
                .filter(t -> !Texts.saysNothing(t))
                .allMatch(t -> SMALL.matcher(t).matches());
    }

    private static double share(List<String> texts, Predicate<String> fits) {
        if (texts.isEmpty()) return 0;
        return texts.stream().filter(fits).count() / (double) texts.size();
    }
}
