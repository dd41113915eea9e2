package asfound.drawing.schedule.table;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.column.Margin;
import asfound.drawing.schedule.phrase.Gutter;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.phrase.Span;
import asfound.drawing.schedule.spine.BandParts;
import asfound.drawing.schedule.spine.Spine;
import asfound.model.Box;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Columns of positions whose rows lie side by side, and where among the cells of a spreadsheet another table begins beside
 * one.
 */
final class Bands {

    private final Sheet sheet;
    private final Phrases phrases;

    Bands(Sheet sheet, Phrases phrases) {
        this.sheet = sheet;
        this.phrases = phrases;
    }

    /** Spines whose rows lie side by side, each band from left to right. */
    static List<List<Spine>> of(List<Spine> spines) {
        List<List<Spine>> bands = new ArrayList<>();
        for (Spine s : spines) {
            List<Spine> home = null;
            for (List<Spine> band : bands) if (band.stream().anyMatch(o -> sideBySide(o, s))) home = band;
            if (home == null) bands.add(home = new ArrayList<>());
            home.add(s);
        }
        for (List<Spine> band : bands)
            if (band.stream().anyMatch(s -> s.tokens().size() > 2))
                band.removeIf(s -> s.tokens().size() == 1 && !isHeadedLike(s, band));
        for (List<Spine> band : bands) band.sort(Comparator.comparingDouble(Spine::centreX));
        return bands;
    }

    /** Its heading stands in one line with that of a longer column: the side has a single device left on this page. */
    private static boolean isHeadedLike(Spine lone, List<Spine> band) {
        return band.stream()
                .filter(s -> s.tokens().size() > 1 && s.headed() && lone.headed())
                .anyMatch(s -> Math.abs(s.heading().orElseThrow().y()
                                - lone.heading().orElseThrow().y())
                        < 0.3 * lone.size());
    }

    /** A band parted where another table begins beside it, each part with the space up to where its neighbours begin. */
    List<BandParts.Part> parted(List<Spine> band) {
        List<List<Spine>> parts = new ArrayList<>();
        for (Spine s : band) {
            List<Spine> before = parts.isEmpty() ? List.of() : parts.get(parts.size() - 1);
            if (before.isEmpty() || !isAnothers(before, s)) {
                if (before.isEmpty()) parts.add(before = new ArrayList<>());
                before.add(s);
            } else parts.add(new ArrayList<>(List.of(s)));
        }
        List<BandParts.Part> out = new ArrayList<>();
        double left = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < parts.size(); i++) {
            boolean last = i == parts.size() - 1;
            double right = last ? Double.POSITIVE_INFINITY : between(parts.get(i), parts.get(i + 1));
            out.add(new BandParts.Part(parts.get(i), new Span(left, right)));
            left = right;
        }
        return out;
    }

    /** Its positions begin anew, below a heading on another level, or within rules of their own. */
    private boolean isAnothers(List<Spine> before, Spine next) {
        if (next.everyNumber().stream().noneMatch(n -> n == 1)) return false;
        Optional<Box> last = before.get(before.size() - 1).heading(), own = next.heading();
        boolean level = last.isEmpty()
                || own.isEmpty()
                || Math.abs(last.get().centreY() - own.get().centreY()) < next.size();
        return !level || isRuledApart(before, next);
    }

    private boolean isRuledApart(List<Spine> before, Spine next) {
        Optional<Span> own = Margin.ruled(sheet, next);
        return own.isPresent()
                && before.stream()
                        .map(s -> Margin.ruled(sheet, s))
                        .allMatch(
                                r -> r.filter(b -> b.right() < own.get().left()).isPresent());
    }

    /** Where the one table ends and the next begins: at a blank column of cells between their positions. */
    private double between(List<Spine> left, List<Spine> right) {
        Box a = left.stream().map(Spine::box).reduce(Box::union).orElseThrow();
        Box b = right.stream().map(Spine::box).reduce(Box::union).orElseThrow();
        return Gutter.ofCells(sheet, phrases, a, b);
    }

    private static boolean sideBySide(Spine a, Spine b) {
        double overlap = Math.min(a.lastY(), b.lastY()) - Math.max(a.firstY(), b.firstY());
        double shorter = Math.min(a.lastY() - a.firstY(), b.lastY() - b.firstY());
        boolean apart = a.right() < b.left() || b.right() < a.left();
        return apart && (overlap > 0.5 * shorter && overlap > 0 || Math.abs(a.firstY() - b.firstY()) < a.size());
    }
}
