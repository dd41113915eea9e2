package asfound.drawing.schedule.sample;

import asfound.drawing.schedule.sample.GridLayout.Carry;
import asfound.drawing.schedule.sample.GridLayout.DeviceStyle;
import asfound.drawing.schedule.sample.GridLayout.LoadStyle;
import asfound.drawing.schedule.sample.GridLayout.Numbers;
import asfound.drawing.schedule.sample.GridLayout.Sides;
import asfound.drawing.schedule.sample.SamplePanel.SampleCircuit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** The columns and rows of one panel's directory, before they are put on paper. */
final class GridTable {

    /** @param key what the column holds; {@code gap} where it stays empty */
    record Col(String key, String heading, int side) {}

    /** @param span how many rows the cell covers; 0 where a cell above covers it */
    record Cell(String text, boolean figure, int span) {

        static final Cell BLANK = new Cell("", false, 1);
    }

    private final SamplePanel panel;
    private final GridLayout layout;
    private final GridHabits habits;
    private final GridWords words;
    private final int phases;
    private final List<List<Integer>> sides;
    private final List<Col> columns = new ArrayList<>();

    /** @param phases for how many phases there are columns: those of all panels of a combined table */
    GridTable(SamplePanel panel, int phases, GridLayout layout, GridHabits habits, GridWords words) {
        this.habits = habits;
        this.panel = panel;
        this.phases = phases;
        this.layout = layout;
        this.words = words;
        sides = sides();
        for (int s = 0; s < sides.size(); s++) {
            if (s > 0 && layout.gaps()) columns.add(new Col("gap", "", s));
            columns.addAll(columns(s));
        }
    }

    List<Col> columns() {
        return columns;
    }

    int rowCount() {
        return sides.stream().mapToInt(List::size).max().orElse(0);
    }

    /** The position that stands in a row of a side; 0 where none does. */
    int position(int row, int side) {
        return row < sides.get(side).size() ? sides.get(side).get(row) : 0;
    }

    private List<List<Integer>> sides() {
        List<Integer> all = new ArrayList<>(), odd = new ArrayList<>(), even = new ArrayList<>();
        for (int p = 1; p <= panel.ways(); p++) {
            all.add(p);
            (p % 2 == 1 ? odd : even).add(p);
        }
        return switch (layout.sides()) {
            case CENTRE, OUTSIDE, LEFT_OF_EACH -> List.of(odd, even);
            case HALVES -> List.of(all.subList(0, panel.ways() / 2), all.subList(panel.ways() / 2, panel.ways()));
            case ROWS, DOWN, WAYS, WAY_LINES -> List.of(all);
            case ODD_THEN_EVEN -> {
                odd.addAll(even);
                yield List.of(odd);
            }
            case LIST ->
                List.of(panel.circuits().stream().map(SampleCircuit::first).toList());
        };
    }

    private List<Col> columns(int side) {
        List<Col> out = new ArrayList<>();
        if (layout.arrangement() == GridLayout.Arrangement.COMBINED) add(out, "panel", side);
        add(out, layout.sides().isBoard() ? "way" : "pos", side);
        if (layout.sides() == Sides.WAYS) add(out, "line", side);
        add(out, "desc", side);
        if (layout.device().isOneColumn())
            out.add(new Col(
                    "device", words.of(layout.device() == DeviceStyle.P_DASH_A ? "device-turned" : "device"), side));
        else {
            if (layout.device() == DeviceStyle.POLES_FIRST) add(out, "poles", side);
            add(out, "rating", side);
            if (layout.device() == DeviceStyle.TWO_COLUMNS || layout.device() == DeviceStyle.WITH_UNITS)
                add(out, "poles", side);
        }
        if (layout.type()) add(out, "type", side);
        if (layout.phase() && !layout.sides().isBoard()) add(out, "phase", side);
        if (layout.wire()) add(out, "wire", side);
        loads(out, side);
        // the positions stand to the right of the left side of a centred sheet
        boolean turned = layout.sides() == Sides.CENTRE && side == 0 || layout.sides() == Sides.OUTSIDE && side == 1;
        if (turned) Collections.reverse(out);
        return out;
    }

    private void add(List<Col> out, String key, int side) {
        out.add(new Col(key, words.of(key), side));
    }

    private void loads(List<Col> out, int side) {
        switch (layout.loads()) {
            case NONE -> {}
            case VA_EACH, VA_SUM -> add(out, "va", side);
            case KVA_EACH -> out.add(new Col("va", words.of("kva"), side));
            case W_EACH -> out.add(new Col("va", words.of("w"), side));
            default -> {
                for (int p = 0; p < phases; p++) {
                    String phase = panel.iec() ? "L" + (p + 1) : String.valueOf("ABC".charAt(p));
                    String unit = layout.loads().isKilo() ? "kVA" : "VA";
                    out.add(new Col(
                            "l" + p, words.of("of-phase").replace("%u", unit).replace("%p", phase), side));
                }
                if (layout.loads() == LoadStyle.VA_BY_PHASE_AND_SUM) add(out, "total", side);
            }
        }
    }

    Cell cell(Col col, int row) {
        int p = position(row, col.side());
        if (p == 0 || col.key().equals("gap")) return Cell.BLANK;
        SampleCircuit c = panel.at(p).orElseThrow();
        boolean list = layout.sides() == Sides.LIST;
        int pole = list ? 0 : c.positions().indexOf(p);
        return switch (col.key()) {
            case "panel" -> new Cell(panel.name(), false, 1);
            case "pos" -> position(c, p, pole);
            case "way" -> way(p);
            case "line" -> new Cell("L" + ((p - 1) % 3 + 1), false, 1);
            case "phase" -> new Cell(phases(list ? c.positions() : List.of(p)), false, 1);
            case "va" -> new Cell(load(c, pole), true, 1);
            case "l0", "l1", "l2" -> {
                int phase = col.key().charAt(1) - '0';
                boolean here = (list ? c.positions() : List.of(p)).stream().anyMatch(q -> panel.phaseOf(q) == phase);
                yield new Cell(here && c.vaPerPole() > 0 ? figure(c.vaPerPole()) : "", true, 1);
            }
            case "total" -> new Cell(c.vaPerPole() > 0 && pole == 0 ? figure(c.vaPerPole() * c.poles()) : "", true, 1);
            default -> carried(value(col.key(), c), c, pole);
        };
    }

    private Cell way(int p) {
        int way = (p - 1) / 3 + 1, line = (p - 1) % 3 + 1;
        if (layout.sides() == Sides.WAY_LINES) return new Cell(way + "L" + line, false, 1);
        if (line > 1) return layout.carry() == Carry.JOINED ? new Cell("", false, 0) : Cell.BLANK;
        return new Cell(Integer.toString(way), true, layout.carry() == Carry.JOINED ? 3 : 1);
    }

    private Cell position(SampleCircuit c, int p, int pole) {
        String by = switch (layout.numbers()) {
            case COMMAS -> ",";
            case COMMAS_SPACED -> ", ";
            case HYPHENS -> "-";
            case SLASHES -> "/";
            default -> habits.lists();
        };
        if (habits.named()) return new Cell(panel.name() + "-" + (by.isEmpty() ? p : listed(c, by)), false, 1);
        if (habits.listsInRows() && c.poles() > 1) {
            if (layout.carry() == Carry.JOINED) return carried(new Cell(listed(c, by), false, 1), c, pole);
            return new Cell(pole > 0 ? mark() : listed(c, by), false, 1);
        }
        if (!by.isEmpty() && c.poles() > 1) return new Cell(listed(c, by), false, 1);
        boolean blank = layout.numbers() == Numbers.ONCE && pole > 0;
        Cell own = new Cell(Integer.toString(p), true, 1);
        boolean joined = layout.numbers() == Numbers.ONCE && layout.carry() == Carry.JOINED;
        return joined ? carried(own, c, pole) : blank ? new Cell(mark(), false, 1) : own;
    }

    private static String listed(SampleCircuit c, String by) {
        return String.join(by, c.positions().stream().map(String::valueOf).toList());
    }

    private String phases(List<Integer> positions) {
        StringBuilder out = new StringBuilder();
        positions.forEach(q -> out.append("ABC".charAt(panel.phaseOf(q))));
        return out.toString();
    }

    private String mark() {
        return layout.carry() == Carry.DASH ? "-" : layout.carry() == Carry.DITTO ? "\"" : "";
    }

    private Cell carried(Cell cell, SampleCircuit c, int pole) {
        int poles = layout.sides() == Sides.LIST ? 1 : c.poles();
        if (layout.carry() == Carry.JOINED)
            return pole == 0 ? new Cell(cell.text(), cell.figure(), poles) : new Cell("", false, 0);
        if (pole == 0 || layout.carry() == Carry.REPEATED) return cell;
        return new Cell(cell.text().isEmpty() ? "" : mark(), false, 1);
    }

    private Cell value(String key, SampleCircuit c) {
        boolean space = c.use().equals("space"), units = layout.device() == DeviceStyle.WITH_UNITS;
        String code = panel.iec() ? "BCD" : "LRM";
        return switch (key) {
            case "desc" -> new Cell(description(c), false, 1);
            case "rating" -> new Cell(space ? "" : c.rating() + (units ? "A" : ""), !units, 1);
            case "poles" -> new Cell(space ? "" : c.poles() + (units ? "P" : ""), !units, 1);
            case "device" -> new Cell(space ? "" : device(c), false, 1);
            case "type" -> new Cell(space ? "" : String.valueOf(code.charAt(c.first() % 3)), false, 1);
            default -> new Cell(c.wire(), panel.iec(), 1);
        };
    }

    private String description(SampleCircuit c) {
        if (!c.use().equals("load")) return words.of(c.use());
        int middle = c.description().indexOf(' ', c.description().length() / 2);
        return layout.wrapped() && middle > 0
                ? c.description().substring(0, middle) + "\n" + c.description().substring(middle + 1)
                : c.description();
    }

    private String device(SampleCircuit c) {
        return switch (layout.device()) {
            case SLASH -> c.rating() + "/" + c.poles();
            case SLASH_UNITS -> c.rating() + "A/" + c.poles() + "P";
            case A_DASH_P -> c.rating() + "A-" + c.poles() + "P";
            case A_SPACE_P -> c.rating() + "A " + c.poles() + "P";
            default -> c.poles() + "P-" + c.rating() + "A";
        };
    }

    private String load(SampleCircuit c, int pole) {
        if (c.vaPerPole() == 0) return "";
        boolean whole = layout.sides() == Sides.LIST || layout.loads() == LoadStyle.VA_SUM;
        if (whole) return pole == 0 ? figure(c.vaPerPole() * c.poles()) : "";
        return figure(c.vaPerPole());
    }

    private String figure(int va) {
        return layout.loads().isKilo() ? String.format(Locale.ROOT, "%.2f", va / 1000.0) : Integer.toString(va);
    }
}
