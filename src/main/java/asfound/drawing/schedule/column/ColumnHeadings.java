package asfound.drawing.schedule.column;

import asfound.drawing.page.Word;
import asfound.drawing.schedule.phrase.HeaderLines;
import asfound.drawing.schedule.phrase.Meanings;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.phrase.RunningText;
import asfound.drawing.schedule.phrase.SectionRows;
import asfound.drawing.schedule.phrase.Span;
import asfound.drawing.schedule.text.Role;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The headings above the columns of one table: of one line or several, upright or turned. */
final class ColumnHeadings {

    /**
     * What heads a column.
     *
     * @param text empty where nothing does
     * @param top where it begins; where the first row does unless it surely names what the column holds
     */
    record Heading(String text, double top) {}

    /** What weighs so much is a usual heading of a column. */
    private static final double USUAL = 0.6;

    private static final Pattern AMPERES = Pattern.compile("\\d[\\d,.]*\\s*k?K?A(?:IC)?");

    private final Phrases phrases;
    private final List<Phrase> above;
    /** Lines of a panel's header among them. */
    private final List<Phrase> said;

    private final double top;
    private final double size;
    private final double pitch;
    private final double headFoot;

    /** @param table from its left edge to its right edge */
    ColumnHeadings(Phrases phrases, Body body, Span table) {
        this.phrases = phrases;
        top = body.top();
        size = body.size();
        pitch = body.pitch();
        Map<Boolean, List<Phrase>> near = phrases.between(top - 9 * size - 2 * pitch, top).stream()
                .filter(p -> p.centreY() < top && p.centreY() >= top - 9 * size - 2 * pitch)
                .filter(p -> !SectionRows.isOne(p, phrases))
                .collect(Collectors.partitioningBy(p -> phrases.meanings().saysOfPanel(p)
                        || isAmperes(p.text())
                        || RunningText.isNote(p)
                        || HeaderLines.isBesideLabel(p, phrases)
                        || HeaderLines.isOnLineOfValues(p, phrases, table)));
        above = near.get(false);
        said = near.get(true).stream().filter(table::meets).toList();
        headFoot = above.stream()
                .filter(table::meets)
                .mapToDouble(p -> p.box().bottom())
                .max()
                .orElse(Double.NEGATIVE_INFINITY);
    }

    /** {@code 225 A}, {@code 10 kA}: a value in the last row of a header, over whose column nothing else may stand. */
    private static boolean isAmperes(String text) {
        char last = text.charAt(text.length() - 1);
        return (last == 'A' || last == 'C')
                && Character.isDigit(text.charAt(0))
                && AMPERES.matcher(text).matches();
    }

    /** The words above a column that best name what it holds: one line, or several lines together. */
    Heading of(double left, double right) {
        double headingTop = top;
        List<Line> lines = headingLines(left, right);
        String best = "", all = "";
        double bestWeight = 0;
        double lower = top, lowerSize = size;
        for (Line line : lines) {
            if (all.isEmpty() && line.bottom() < headFoot - 3.5 * size) break;
            double reach = all.isEmpty() ? 2.2 * pitch + 4 * size : 1.1 * Math.min(line.size(), lowerSize) + 0.5;
            if (lower - line.bottom() > reach) break;
            all = all.isEmpty() ? line.text() : line.text() + " " + all;
            lower = line.top();
            lowerSize = line.size();
            double weight = phrases.meanings().most(all);
            if (best.isEmpty() || weight > bestWeight || weight >= bestWeight && saysMore(all, best)) {
                best = all;
                bestWeight = weight;
                if (weight >= USUAL) headingTop = lower;
            } else if (weight >= 1)
                headingTop = lower; // both lines are one usual heading, of which the lower one says enough
        }
        return bestWeight < USUAL && isBelowHeader(lines) ? new Heading("", top) : new Heading(best, headingTop);
    }

    /** A line of the panel's header stands between the rows and what is over them. */
    private boolean isBelowHeader(List<Line> lines) {
        return !lines.isEmpty()
                && said.stream().anyMatch(p -> p.box().y() > lines.get(0).bottom());
    }

    /** {@code FRAME/TRIP} over {@code (A)}, {@code POINTS} over {@code SERVED}: the lower line alone says something else. */
    private boolean saysMore(String whole, String below) {
        return isPhaseOf(whole, below)
                || phrases.meanings().isFrameAndTrip(whole)
                || phrases.meanings().weight(whole, Role.OTHER) >= 1
                        && phrases.meanings().weight(below, Role.OTHER) == 0;
    }

    /** {@code A} over {@code (VA)}: the upper line says of which phase the load is. */
    private boolean isPhaseOf(String whole, String below) {
        Meanings meanings = phrases.meanings();
        return meanings.weight(below, Role.LOAD) >= 1
                && meanings.weigh(whole).entrySet().stream()
                        .anyMatch(e -> e.getKey().isPhaseLoad() && e.getValue() >= 0.8);
    }

    private record Line(String text, double top, double bottom, double size) {}

    /** Lines above the column, the lowest first; a turned heading counts as one line. */
    private List<Line> headingLines(double left, double right) {
        double reach = top - 9 * size - 2 * pitch;
        List<Line> out = new ArrayList<>();
        for (Phrase p : above) {
            String text = headingPiece(p, left, right);
            if (!text.isEmpty()) out.add(new Line(text, p.box().y(), p.box().bottom(), p.size()));
        }
        List<Word> turned = new ArrayList<>();
        for (Word w : phrases.turned())
            if (w.centreX() > left && w.centreX() < right && w.bottom() <= top + size && w.bottom() > reach)
                turned.add(w);
        if (!turned.isEmpty()) {
            // a turned text is read from its foot upwards, several of them from left to right
            turned.sort(Comparator.comparingDouble((Word w) -> Math.round(w.centreX() / (0.5 * w.size())))
                    .thenComparingDouble(w -> -w.bottom()));
            String text = String.join(" ", turned.stream().map(Word::text).toList());
            double low = turned.stream().mapToDouble(Word::bottom).max().orElse(top);
            out.add(new Line(text, turned.stream().mapToDouble(Word::top).min().orElse(top), low, size));
        }
        out.sort(Comparator.comparingDouble(Line::bottom).reversed().thenComparing(Line::text));
        return merged(out);
    }

    private static List<Line> merged(List<Line> lines) {
        List<Line> out = new ArrayList<>();
        for (Line line : lines) {
            Line last = out.isEmpty() ? null : out.get(out.size() - 1);
            if (last != null && Math.abs(last.bottom() - line.bottom()) < 0.3 * line.size())
                out.set(
                        out.size() - 1,
                        new Line(last.text() + " " + line.text(), last.top(), last.bottom(), last.size()));
            else out.add(line);
        }
        return Collections.unmodifiableList(out);
    }

    /** A phrase heads a column if it stands over it; one over several columns heads none of them, but word by word. */
    private static String headingPiece(Phrase p, double left, double right) {
        double width = right - left;
        double inside = Math.min(p.right(), right) - Math.max(p.left(), left);
        if (inside <= 0) return "";
        boolean centred = p.centreX() >= left && p.centreX() < right;
        if (centred && (p.box().w() <= 1.5 * width || inside > 0.6 * p.box().w())) return p.text();
        // only what is too wide for the column can be the fused headings of several
        boolean fused =
                p.words().size() > 1 && inside < 0.7 * p.box().w() && p.box().w() > 1.2 * width;
        return fused ? p.piece(left, right) : "";
    }
}
