package asfound.drawing.schedule.doubt;

import asfound.drawing.page.Sheet;
import asfound.drawing.page.Word;
import asfound.drawing.schedule.device.Draft;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.row.Strikes;
import asfound.model.Box;
import asfound.model.Directory;
import asfound.model.Place;
import asfound.model.Problem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.StringJoiner;
import java.util.TreeSet;

/**
 * Texts that a line was drawn through on the sheet, as whoever corrects a directory by hand does. Whether such an entry is gone,
 * moved or only noted so is for a person to say: it is read as it stands, or left out where other words stand beside it, told,
 * and the circuit counts as not read in full.
 *
 * @param positions of the circuits that hold such a text
 * @param ofHeader what is said of the panel holds one
 * @param problems one for each circuit, and one for the header
 */
public record StruckThrough(Set<Integer> positions, boolean ofHeader, List<Problem> problems) {

    private static final String REMEDY = "Look whether the entry still holds.";
    /** A word's middle lies no further from that of its phrase, in sizes of type. */
    private static final double LEVEL = 0.35;

    /** The confidence of a reading in which such texts stand. */
    public double confidence(double of) {
        return ofHeader ? Math.min(of, Directory.DOUBTFUL - 0.05) : of;
    }

    /** The positions with those already not read in full. */
    public List<Integer> with(List<Integer> unread) {
        Set<Integer> all = new TreeSet<>(unread);
        all.addAll(positions);
        return List.copyOf(all);
    }

    /** @param said where values of the panel stand around the table */
    public static StruckThrough of(Sheet sheet, Phrases phrases, List<Draft> drafts, Collection<Box> said) {
        Set<Integer> positions = new TreeSet<>();
        List<Problem> problems = new ArrayList<>();
        for (Draft d : drafts) {
            String text = in(sheet, phrases, d.box());
            if (text.isEmpty()) continue;
            int position = d.positions().get(0);
            positions.add(position);
            problems.add(problem(sheet.place(d.box()), "Position " + position + " holds", text, isRead(d, text)));
        }
        boolean ofHeader = false;
        for (Box box : said) {
            String text = in(sheet, phrases, box);
            if (text.isEmpty()) continue;
            ofHeader = true;
            problems.add(problem(sheet.place(box), "The header holds", text, true));
        }
        return new StruckThrough(positions, ofHeader, List.copyOf(problems));
    }

    private static Problem problem(Place place, String where, String text, boolean read) {
        String what = read ? "it was read as it stands." : "what stands beside it was read.";
        return new Problem(place, where + " text that is struck through: '" + text + "'; " + what, REMEDY);
    }

    /** It is part of what was read of a circuit, as where nothing else stands beside it. */
    private static boolean isRead(Draft d, String struck) {
        String read = " " + d.description() + " " + d.ratingA().raw() + " ";
        return read.contains(" " + struck + " ");
    }

    /** The words of an area that a line runs through; empty where there are none. */
    private static String in(Sheet sheet, Phrases phrases, Box box) {
        StringJoiner struck = new StringJoiner(" ");
        List<Phrase> own = phrases.between(box.y(), box.bottom());
        if (own.isEmpty() || isClear(sheet, own)) return "";
        for (Phrase p : own)
            if (box.contains(p.centreX(), p.centreY()))
                for (Word w : p.words()) if (Strikes.isStruck(sheet, w)) struck.add(w.text());
        return struck.toString();
    }

    /** No line at all runs where it could run through a word of them, as nearly everywhere. */
    private static boolean isClear(Sheet sheet, List<Phrase> fromTheTop) {
        double size = 0;
        for (Phrase p : fromTheTop) for (Word w : p.words()) size = Math.max(size, w.size());
        double first = fromTheTop.get(0).centreY(),
                last = fromTheTop.get(fromTheTop.size() - 1).centreY();
        double reach = LEVEL * size + Strikes.reach(size);
        return sheet.across().between(first - reach, last + reach).isEmpty();
    }
}
