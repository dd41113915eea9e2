package asfound.drawing.schedule.row;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import asfound.drawing.page.Word;
import java.util.List;

/** Lines that whoever corrects a directory by hand draws through words that no longer hold. */
public final class Strikes {

    /** The line runs so near to the middle of the letters, in sizes of type. */
    private static final double MIDDLE = 0.22;
    /** It covers so much of each word. */
    private static final double COVERED = 0.85;
    /** So many lines as long as it, one above the other, are the rulings of a table. */
    private static final int RULINGS = 3;
    /** A line that ends so near to the words that it runs through, in sizes of type, was drawn for them. */
    private static final double CLOSE = 0.7;

    private Strikes() {}

    /** How far from the middle of a word of some size a line may run that strikes it through. */
    public static double reach(double size) {
        return MIDDLE * size;
    }

    /** A line runs through a word that is no ruling of a table. */
    public static boolean isStruck(Sheet sheet, Word w) {
        // hardly a word has a line through it: what it says is looked at last
        return isRunThrough(sheet, w) && w.text().chars().anyMatch(Character::isLetterOrDigit);
    }

    /** The same of marks as well. */
    static boolean isRunThrough(Sheet sheet, Word w) {
        double reach = MIDDLE * w.size(), width = w.box().w();
        for (Rule r : sheet.across().between(w.centreY() - reach, w.centreY() + reach))
            if (r.covers(w.left(), w.right()) > COVERED * width
                    && (r.length() < width + 2 * CLOSE * w.size() || !isRuling(sheet, r))) return true;
        return false;
    }

    /** The lines through some of the words of a line were drawn for just these, and end with them. */
    static boolean arePlain(Sheet sheet, List<Word> struck) {
        double first = Double.MAX_VALUE,
                last = -Double.MAX_VALUE,
                size = struck.get(0).size();
        for (Word w : struck) {
            first = Math.min(first, w.left());
            last = Math.max(last, w.right());
        }
        for (Word w : struck)
            for (Rule r : sheet.across().between(w.centreY() - MIDDLE * size, w.centreY() + MIDDLE * size))
                if (r.covers(w.left(), w.right()) > 0
                        && (r.from() < first - CLOSE * size || r.to() > last + CLOSE * size)) return false;
        return true;
    }

    /** Several lines of the sheet begin and end with it. */
    private static boolean isRuling(Sheet sheet, Rule rule) {
        return sheet.across().all().stream()
                        .filter(r -> Math.abs(r.from() - rule.from()) < 1 && Math.abs(r.to() - rule.to()) < 1)
                        .count()
                > RULINGS;
    }
}
