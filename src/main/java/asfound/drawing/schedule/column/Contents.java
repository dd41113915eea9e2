package asfound.drawing.schedule.column;

import asfound.drawing.schedule.text.DeviceText;
import asfound.drawing.schedule.text.Look;
import asfound.drawing.schedule.text.Looks;
import asfound.drawing.schedule.text.Role;
import asfound.drawing.schedule.text.UseText;
import asfound.model.Directory;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** How much the entries of a column, by themselves, look like what a role holds. */
public final class Contents {

    /** So much more a column speaks for descriptions that says of some positions that they are spare; however short they are. */
    private static final double SPARE = 0.2;

    private Contents() {}

    /** Whether the entries can speak against the role, whatever the heading says. */
    static boolean judges(Role role) {
        return role != Role.OTHER && role != Role.PANEL;
    }

    /** From 0 to 1, or a little more where spares are written. */
    public static double weight(Role role, List<String> entries) {
        return of(role, new Looks().of(entries));
    }

    /**
     * From 0 to 1.
     *
     * @param entries those that say something
     */
    public static double of(Role role, List<Look> entries) {
        return switch (role) {
            case POSITION -> 0;
            case DESCRIPTION -> description(entries);
            case RATING -> rating(entries);
            case POLES -> share(entries, l -> l.poles().isPresent());
            case DEVICE -> device(entries);
            case PHASE -> share(entries, l -> l.phases() && !l.isNumbers());
            case LOAD, LOAD_A, LOAD_B, LOAD_C -> load(entries);
            case WIRE -> 0.8 * share(entries, Look::wire);
            case USE -> use(entries);
            case PANEL, OTHER -> 0;
        };
    }

    /** How much short entries under a heading that says 'description' can be one: {@code EF-1}, {@code P-3}. */
    public static double tags(List<Look> entries) {
        return 0.4 * share(entries, l -> l.letters() > 0 && l.device().isEmpty() && !l.phases() && !l.kind());
    }

    private static double description(List<Look> entries) {
        double letters = share(
                entries,
                l -> l.letters() >= 3
                        && l.device().isEmpty()
                        && !l.kind()
                        && !l.text().contains(".5mm"));
        double length =
                entries.stream().mapToInt(l -> l.text().length()).average().orElse(0);
        return saysSpare(entries) ? letters + SPARE : letters * Math.min(1, 0.4 + length / 20);
    }

    /** Where spares and spaces are written among texts that differ stands what those feed, and no notes or kinds of them. */
    private static boolean saysSpare(List<Look> entries) {
        Set<String> others = new HashSet<>();
        int spare = 0;
        for (Look l : entries)
            if (l.text().equalsIgnoreCase("SPARE") || l.text().equalsIgnoreCase("SPACE")) spare++;
            else others.add(l.text());
        return spare > 0 && others.size() * 2 > entries.size() - spare;
    }

    /** Nothing but words for what a position is used for, one for loads and one for what is free among them. */
    private static double use(List<Look> entries) {
        boolean load = false, free = false;
        for (Look l : entries) {
            boolean word = UseText.isWordForLoad(l.text());
            boolean own = UseText.of(l.text(), false) != Directory.Use.LOAD;
            if (!own && !word) return 0;
            load |= word;
            free |= own;
        }
        return load && free ? 1 : 0;
    }

    /** With its poles; where some have them, a rating alone is that of a device of one pole. */
    private static double device(List<Look> entries) {
        double both = share(
                entries,
                l -> l.device()
                        .filter(d -> d.poles().isPresent() && d.ratingA().isPresent())
                        .isPresent());
        double alone = share(entries, l -> l.rating() >= 10 && DeviceText.isStandard(l.rating()));
        return both < 0.1 || both + alone < 0.8 ? both : both + 0.9 * alone;
    }

    private static double rating(List<Look> entries) {
        int good = 0;
        boolean above = false;
        for (Look l : entries) {
            if (DeviceText.isStandard(l.rating())) good++;
            above |= l.rating() > 4;
        }
        double share = entries.isEmpty() ? 0 : good / (double) entries.size();
        return above ? share : 0.1 * share;
    }

    private static double load(List<Look> entries) {
        double figures = share(entries, Look::figure);
        double ratings = share(entries, Look::isUsualRating);
        return ratings > 0.75 ? 0.4 * figures : figures;
    }

    /** Whole numbers of one or two digits alone, too small for loads in VA: numbers of notes, of rooms, of poles. */
    static boolean areSmall(List<Look> entries) {
        return entries.stream().allMatch(Look::isSmall);
    }

    private static double share(List<Look> entries, Predicate<Look> fits) {
        if (entries.isEmpty()) return 0;
        int n = 0;
        for (Look l : entries) if (fits.test(l)) n++;
        return n / (double) entries.size();
    }
}
