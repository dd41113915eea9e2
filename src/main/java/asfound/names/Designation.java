package asfound.names;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A designation's structure: its letters and digits in their order, apart from words that only say what kind of thing it
 * is or where it stands.
 *
 * <p>{@code LP-2A}, {@code Panel LP2A}, {@code LP 2-A} and {@code "Lp 2a" (2nd floor)} have one {@link #core}. Digits
 * count exactly: {@code LP-2} and {@code LP-12} differ, {@code LP-21} and {@code LP-2-1} differ, and so do {@code LP-02}
 * and {@code LP-2} (which the {@link NameBook} mentions to the user).
 *
 * @param raw the text as it stands
 * @param plain the text without words of kind and place, as written otherwise
 * @param core letters and digits, runs of digits that stand apart kept apart by a point; empty where there are only words
 *     of kind ({@code GENERATOR})
 * @param family the kind that a word says outright
 * @param implied the kind that the letter mark implies
 * @param floor the floor mark ({@code 2}, {@code B}); counts only where the core has no digit ({@code Panel A, 2nd floor})
 * @param expansions cores that the words could stand for: {@code LIGHTING PANEL 2A} may be {@code LP2A}
 * @param lookAlike the first character that may be taken for another, in words
 */
public record Designation(
        String raw,
        String plain,
        String core,
        Optional<Family> family,
        Optional<Family> implied,
        String floor,
        List<String> expansions,
        Optional<String> lookAlike) {

    private static final Pattern SWITCHBOARD =
            Pattern.compile("\\b(?:SWITCH ?BOARD|SWBD|SWBRD|SWITCH ?GEAR|SWGR)(?![A-Z])");
    private static final Pattern BARE = Pattern.compile("[A-Z]|[0-9]{1,2}|[0-9][A-Z]|[A-Z][0-9]");

    public Designation {
        expansions = List.copyOf(expansions);
    }

    /** Reads any text; one that is no designation gives a core that no name has. */
    public static Designation of(String raw) {
        return DesignationReader.read(raw);
    }

    /** Something is left that can be matched. */
    public boolean isEmpty() {
        return core.isEmpty() && family.isEmpty();
    }

    /** A word says switchboard or switchgear, which people write for a panel as well. */
    boolean saysSwitchboard() {
        return family.equals(Optional.of(Family.BOARD))
                && SWITCHBOARD.matcher(PlainText.of(raw)).find();
    }

    /** A bare letter or number: without its word it could be anything's, so the word is part of the name. */
    boolean isBare() {
        return BARE.matcher(core).matches();
    }

    boolean hasDigits() {
        return core.chars().anyMatch(c -> c >= '0' && c <= '9');
    }

    /** The core with its floor where that is part of the name. */
    String identity() {
        return hasDigits() || floor.isEmpty() ? core : core + "@" + floor;
    }

    /** The kind that the name itself says, by word first. */
    Optional<Family> kind() {
        return family.isPresent() ? family : implied;
    }
}
