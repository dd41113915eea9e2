package asfound.drawing.schedule.spine;

import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.spine.Spine.Token;
import asfound.drawing.schedule.text.Role;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** The numbered lists that any sheet has, its notes and its revisions, under titles of their own: their numbers are no positions. */
final class SheetLists {

    private static final Pattern TITLE =
            Pattern.compile("(?:[A-Z&/.-]+\\s+){0,4}(?:KEY)?NOTES?\\s*[:.]?", Pattern.CASE_INSENSITIVE);
    private static final Pattern REVISIONS = Pattern.compile(
            "(?:(?:DRAWING|SHEET|ISSUE)\\s+)?REVISIONS?(?:\\s+(?:HISTORY|TABLE|BLOCK|RECORD))?\\s*:?",
            Pattern.CASE_INSENSITIVE);
    /** Lines between the title and the first note. */
    private static final double ABOVE = 5;
    /** The title begins no further left or right of the numbers, in sizes of its type. */
    private static final double BESIDE = 6;
    /** Headings of the same table stand no further away, in sizes of type. */
    private static final double NEAR = 40;

    private static final double HEADED = 0.8;
    private static final Set<Role> OF_DEVICES = EnumSet.of(Role.DESCRIPTION, Role.RATING, Role.DEVICE, Role.LOAD);

    /** A note begins no further behind its number, in sizes of its type. */
    private static final double BEHIND = 8;
    /** Letters of a note: an entry of a directory is mostly shorter, and no note is as short as a rating. */
    private static final int SHORTEST = 10;

    private final Phrases phrases;

    SheetLists(Phrases phrases) {
        this.phrases = phrases;
    }

    /**
     * Whether numbers stand under a title of revisions, or under one of notes, most of them with nothing beside them but a
     * text.
     */
    boolean areThese(List<Token> numbers) {
        Phrase first = numbers.get(0).phrase();
        List<Phrase> above = above(first);
        if (above.stream().anyMatch(p -> REVISIONS.matcher(p.text()).matches())) return true;
        if (above.isEmpty() || !isTitleOfNotes(above.get(above.size() - 1))) return false;
        long notes = numbers.stream().filter(t -> isNote(t.phrase())).count();
        return notes * 4 >= numbers.size() * 3L;
    }

    /** What stands over the first number, from top to bottom. */
    private List<Phrase> above(Phrase first) {
        return phrases
                .between(first.box().y() - ABOVE * first.size(), first.box().y())
                .stream()
                .filter(p -> p != first
                        && p.left() < first.right() + BESIDE * p.size()
                        && p.right() > first.left() - BESIDE * p.size())
                .toList();
    }

    private boolean isTitleOfNotes(Phrase title) {
        return TITLE.matcher(title.text()).matches() && !isHeading(title);
    }

    /** Notes can be a column of a directory too. */
    private boolean isHeading(Phrase title) {
        List<Phrase> line = phrases.near(title.centreY(), 0.5 * title.size());
        return isAmongHeadings(title, line)
                || line.stream()
                        .anyMatch(p -> phrases.meanings().weight(p, Role.POSITION) > 0
                                && p.right() > title.left() - BESIDE * p.size()
                                && p.left() < title.right() + BESIDE * p.size());
    }

    /** Of several things that devices have, as {@code A/P} and {@code (VA)}, the headings stand on its line. */
    private boolean isAmongHeadings(Phrase title, List<Phrase> line) {
        return line.stream()
                        .filter(p -> Math.abs(p.centreX() - title.centreX()) < NEAR * title.size())
                        .filter(p -> OF_DEVICES.stream()
                                .anyMatch(role -> phrases.meanings().weight(p, role) >= HEADED))
                        .count()
                >= 2;
    }

    private boolean isNote(Phrase number) {
        List<Phrase> behind = phrases.near(number.centreY(), 0.5 * number.size()).stream()
                .filter(p -> p.left() >= number.right() && p.left() < number.right() + BEHIND * number.size())
                .toList();
        return behind.size() == 1
                && behind.get(0).text().chars().filter(Character::isLetter).count() >= SHORTEST;
    }
}
