package asfound.drawing.schedule.row;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.table.Side;
import asfound.drawing.schedule.text.DeviceText;
import asfound.drawing.schedule.text.LoadText;
import asfound.drawing.schedule.text.Look;
import asfound.drawing.schedule.text.Role;
import asfound.drawing.schedule.text.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What stands on each level of a side, and on which levels rows can be that have no number. */
final class Levels {

    private final Sheet sheet;
    private final Phrases phrases;
    private final Side side;
    private final Optional<Column> polesColumn;
    private final Optional<Column> deviceColumn;
    private final double size;
    private final double left;
    private final double right;

    Levels(Sheet sheet, Phrases phrases, Side side) {
        this.sheet = sheet;
        this.phrases = phrases;
        this.side = side;
        polesColumn = side.column(Role.POLES);
        // under a heading of ratings alone a device may be written with its poles: 70A 3P
        deviceColumn = side.column(Role.DEVICE).or(() -> side.column(Role.RATING));
        size = side.spine().size();
        left = side.left();
        right = side.right();
    }

    /** Where rows stand between two levels: in ruled cells, or on the level of what the narrow columns hold. */
    List<Double> between(double from, double to) {
        List<Rule> rules = new ArrayList<>();
        for (Rule r : sheet.across().between(from, to))
            if (r.passes(side.spine().centreX())
                    && (rules.isEmpty() || r.at() - rules.get(rules.size() - 1).at() > 0.7 * size)) rules.add(r);
        List<Double> out = new ArrayList<>();
        for (int i = 1; i < rules.size(); i++)
            out.add((rules.get(i - 1).at() + rules.get(i).at()) / 2);
        if (!out.isEmpty()) return out;
        for (Phrase p : phrases.between(from, to)) {
            if (p.centreY() < from + 0.5 * size || p.centreY() > to - 0.5 * size || !isNarrow(p)) continue;
            if (out.isEmpty() || p.centreY() - out.get(out.size() - 1) > 0.5 * size) out.add(p.centreY());
        }
        return out;
    }

    /** It stands in a column whose entries never run over a second line. */
    private boolean isNarrow(Phrase p) {
        return side.roles().entrySet().stream()
                .anyMatch(e -> e.getKey() != Role.DESCRIPTION
                        && e.getKey() != Role.OTHER
                        && e.getValue().holds(p.centreX()));
    }

    List<Phrase> on(double y) {
        return phrases.near(y, 0.3 * size).stream()
                .filter(p -> Math.abs(p.centreY() - y) < 0.3 * size)
                .filter(p -> p.centreX() > left && p.centreX() < right)
                .toList();
    }

    /** Those on which something stands: a row may be left blank to set a group of rows apart. */
    List<Double> withoutBlank(List<Double> levels) {
        return levels.stream().filter(y -> !isBlank(y)).toList();
    }

    boolean isBlank(double y) {
        return on(y).isEmpty();
    }

    /** Nothing but marks, loads and phases. */
    boolean carriesOn(double y) {
        return on(y).stream().allMatch(p -> Texts.saysNothing(p.text()) || isLoadOrPhase(p));
    }

    /** A device of several poles. */
    boolean isDevice(double y) {
        return on(y).stream().map(this::poles).flatMap(Optional::stream).anyMatch(n -> n > 1);
    }

    /** What stands on this level stands so on another too; loads and phases may differ. */
    boolean repeats(double y, double above) {
        List<Phrase> head = on(above);
        return on(y).stream()
                .allMatch(p -> isLoadOrPhase(p)
                        || head.stream()
                                .anyMatch(o -> Math.abs(o.left() - p.left()) < 0.5 * size
                                        && Texts.upper(o.text()).equals(Texts.upper(p.text()))));
    }

    /** The poles that are printed beside a position. */
    int poles(Spine.Token t) {
        if (polesColumn.isEmpty() && deviceColumn.isEmpty()) return 1;
        for (Phrase p : phrases.near(t.y(), 0.4 * size)) {
            Optional<Integer> poles = Math.abs(p.centreY() - t.y()) < 0.4 * size ? poles(p) : Optional.empty();
            if (poles.isPresent()) return poles.get();
        }
        return 1;
    }

    private Optional<Integer> poles(Phrase p) {
        if (isIn(polesColumn, p)) return look(p).poles();
        return isIn(deviceColumn, p) ? look(p).device().flatMap(DeviceText::poles) : Optional.empty();
    }

    private Look look(Phrase p) {
        return phrases.meanings().looks().of(p.text());
    }

    private boolean isLoadOrPhase(Phrase p) {
        return isIn(side.column(Role.PHASE), p)
                || isIn(side.column(Role.PANEL), p)
                || side.roles().entrySet().stream()
                        .anyMatch(e -> e.getKey().isLoad()
                                && e.getValue().holds(p.centreX())
                                && LoadText.parse(p.text(), false).isPresent());
    }

    private static boolean isIn(Optional<Column> column, Phrase p) {
        return column.isPresent() && column.get().holds(p.centreX());
    }
}
