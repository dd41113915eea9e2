package asfound.drawing.schedule.phrase;

import asfound.drawing.page.Sheet;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;

/**
 * The figures and letters along the border of a drawing sheet that name its zones, a grid reference as ISO 5457 has it (from
 * memory). They run 1, 2, 3 down the sheet as positions do, and are none.
 */
final class BorderZones {

    private static final Pattern MARK = Pattern.compile("\\d{1,2}|[A-Z]");
    /** The marks stand no further from the edge, as a share of the sheet's longer side. */
    private static final double EDGE = 0.04;

    private static final int FEWEST = 3;
    /** A zone is longer than so many sizes of its mark; no row of a directory is so deep. */
    private static final double LONG = 6;

    private static final double UNEVEN = 0.15;
    /** Nothing stands nearer beside a mark, in sizes of its type, than what a directory has beside its positions. */
    private static final double ALONE = 10;
    /** The zones of an edge take up most of it. */
    private static final double SPAN = 0.5;

    private final List<Phrase> all;
    private final double width;
    private final double height;
    private final Set<Phrase> marks = Collections.newSetFromMap(new IdentityHashMap<>());

    private BorderZones(List<Phrase> all, Sheet sheet) {
        this.all = all;
        width = sheet.width();
        height = sheet.height();
    }

    /** The phrases of a sheet that are no marks of zones; cells have no border with marks. */
    static List<Phrase> without(List<Phrase> all, Sheet sheet) {
        if (sheet.hasCells()) return all;
        BorderZones zones = new BorderZones(all, sheet);
        zones.find();
        if (zones.marks.isEmpty()) return all;
        return all.stream().filter(p -> !zones.marks.contains(p)).toList();
    }

    private void find() {
        double edge = EDGE * Math.max(width, height);
        List<Phrase> left = new ArrayList<>(), right = new ArrayList<>();
        List<Phrase> top = new ArrayList<>(), bottom = new ArrayList<>();
        for (Phrase p : all) {
            if (p.text().length() > 2 || !MARK.matcher(p.text()).matches()) continue;
            if (p.centreX() < edge) left.add(p);
            if (p.centreX() > width - edge) right.add(p);
            if (p.centreY() < edge) top.add(p);
            if (p.centreY() > height - edge) bottom.add(p);
        }
        along(left, Phrase::centreX, Phrase::centreY, height);
        along(right, Phrase::centreX, Phrase::centreY, height);
        along(top, Phrase::centreY, Phrase::centreX, width);
        along(bottom, Phrase::centreY, Phrase::centreX, width);
    }

    /** Looks at each line of marks that runs along an edge so long. */
    private void along(List<Phrase> edge, ToDoubleFunction<Phrase> across, ToDoubleFunction<Phrase> down, double side) {
        edge.sort(Comparator.comparingDouble(across).thenComparingDouble(down));
        List<Phrase> line = new ArrayList<>();
        for (Phrase p : edge) {
            boolean apart = !line.isEmpty()
                    && across.applyAsDouble(p) - across.applyAsDouble(line.get(line.size() - 1)) > p.size();
            if (apart) {
                take(line, down, side);
                line.clear();
            }
            line.add(p);
        }
        take(line, down, side);
    }

    private void take(List<Phrase> line, ToDoubleFunction<Phrase> down, double side) {
        if (line.size() < FEWEST) return;
        line.sort(Comparator.comparingDouble(down));
        double span = down.applyAsDouble(line.get(line.size() - 1)) - down.applyAsDouble(line.get(0));
        double pitch = span / (line.size() - 1);
        int turn = step(line.get(0), line.get(1));
        boolean zones = turn != 0 && span > SPAN * side;
        for (int i = 0; zones && i + 1 < line.size(); i++) {
            double here = down.applyAsDouble(line.get(i + 1)) - down.applyAsDouble(line.get(i));
            zones = Math.abs(here - pitch) < UNEVEN * pitch
                    && pitch > LONG * line.get(i).size()
                    && step(line.get(i), line.get(i + 1)) == turn;
        }
        if (zones && line.stream().filter(this::isAlone).count() * 2 > line.size()) marks.addAll(line);
    }

    private boolean isAlone(Phrase mark) {
        double reach = ALONE * mark.size();
        return all.stream()
                .noneMatch(p -> p != mark
                        && Math.abs(p.centreY() - mark.centreY()) < 0.5 * mark.size()
                        && p.left() < mark.right() + reach
                        && p.right() > mark.left() - reach);
    }

    /** 1 or -1 where one mark follows the other in either direction, I and O being left out; else 0. */
    private static int step(Phrase a, Phrase b) {
        int from = order(a.text()), to = order(b.text());
        return from < 0 || to < 0 || Math.abs(to - from) != 1 ? 0 : to - from;
    }

    private static int order(String mark) {
        char c = mark.charAt(0);
        if (Character.isDigit(c)) return Integer.parseInt(mark);
        int letters = c == 'I' || c == 'O' ? -1 : c > 'O' ? c - 2 : c > 'I' ? c - 1 : c;
        return letters < 0 ? -1 : 1000 + letters;
    }
}
