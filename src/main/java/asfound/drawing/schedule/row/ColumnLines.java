package asfound.drawing.schedule.row;

import asfound.drawing.page.Sheet;
import asfound.drawing.page.Word;
import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.column.Contents;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.phrase.SectionRows;
import asfound.drawing.schedule.table.Side;
import asfound.drawing.schedule.text.Role;
import asfound.model.Box;
import asfound.recordset.Patience;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The lines of text in each column of a side. A word belongs to the column that it stands in; words of a description that
 * run on into the next column, to the description.
 */
final class ColumnLines {

    /**
     * Words of one column on one level.
     *
     * @param struck all of them have a line through them
     */
    record Line(String text, Box box, boolean struck) {
        double y() {
            return box.centreY();
        }
    }

    private static final Pattern FORM = Pattern.compile("_{3,}");

    private final Sheet sheet;
    private final Phrases phrases;
    private final Side side;
    private final double top;
    private final double bottom;
    private final double size;
    private final Set<Word> taken = new HashSet<>();

    /**
     * @param top where the first row begins
     * @param bottom where the last row ends
     */
    ColumnLines(Sheet sheet, Phrases phrases, Side side, double top, double bottom) {
        this.sheet = sheet;
        this.phrases = phrases;
        this.side = side;
        this.top = top;
        this.bottom = bottom;
        size = side.spine().size();
    }

    /** The lines of one column from top to bottom. */
    List<Line> in(Role role, Column column) {
        List<Word> own = new ArrayList<>();
        Patience.check();
        for (Phrase p : phrases.between(top, bottom + 0.2 * size)) {
            if (p.centreY() <= top || p.centreY() >= bottom + 0.2 * size) continue;
            if (p.right() < column.left() || p.left() > column.right()) continue;
            if (SectionRows.isOne(p, phrases)) {
                taken.addAll(p.words());
                continue;
            }
            for (Word w : p.words()) if (belongs(p, w, role, column)) own.add(w);
        }
        taken.addAll(own);
        return Phrase.lines(own).stream()
                .map(ColumnLines::written)
                .map(this::line)
                .toList();
    }

    /** Where a line was drawn through some of the words, the others are what it says. */
    private Line line(List<Word> words) {
        Phrase whole = Phrase.of(words);
        List<Word> struck =
                words.stream().filter(w -> Strikes.isStruck(sheet, w)).toList();
        if (struck.isEmpty() || !Strikes.arePlain(sheet, struck)) return new Line(whole.text(), whole.box(), false);
        List<Word> left = new ArrayList<>(words);
        left.removeIf(w -> Strikes.isRunThrough(sheet, w));
        boolean all = left.isEmpty();
        return new Line(all ? whole.text() : Phrase.of(left).text(), whole.box(), all);
    }

    /** What is written upon the line of a form, without the line. */
    private static List<Word> written(List<Word> line) {
        List<Word> said = new ArrayList<>(line.size());
        for (Word w : line) if (!isForm(w.text())) said.add(w);
        return said.isEmpty() ? line : said;
    }

    private static boolean isForm(String text) {
        return text.startsWith("_") && FORM.matcher(text).matches();
    }

    /** The words of the columns that were asked for. */
    Set<Word> taken() {
        return taken;
    }

    private boolean belongs(Phrase p, Word w, Role role, Column column) {
        boolean inside = standsIn(w, column);
        if (p.words().size() == 1) return inside;
        boolean runsOn = runsOn(p, w);
        if (role == Role.DESCRIPTION) return inside || runsOn && startsIn(p, column);
        return inside && !runsOn;
    }

    private static boolean standsIn(Word w, Column column) {
        return w.centreX() >= column.left() && w.centreX() < column.right();
    }

    private static boolean startsIn(Phrase p, Column column) {
        return standsIn(p.words().get(0), column);
    }

    /** The phrase is a description that began in its column, and the word, in the next, is no entry of that one. */
    private boolean runsOn(Phrase p, Word w) {
        Column description = side.roles().get(Role.DESCRIPTION);
        if (description == null || !startsIn(p, description) || w.centreX() < description.right()) return false;
        for (Map.Entry<Role, Column> e : side.roles().entrySet())
            if (e.getValue() != description && e.getValue().holds(w.centreX()))
                return Contents.of(e.getKey(), phrases.meanings().looks().of(List.of(w.text()))) < 0.3
                        || isTaken(e.getValue(), p);
        return true;
    }

    /** Another text stands in the column on the same level: the phrase has run into it. */
    private boolean isTaken(Column column, Phrase by) {
        return phrases.near(by.centreY(), 0.3 * size).stream()
                .anyMatch(o -> o != by
                        && Math.abs(o.centreY() - by.centreY()) < 0.3 * size
                        && column.holds(o.centreX())
                        && o.left() > by.right());
    }
}
