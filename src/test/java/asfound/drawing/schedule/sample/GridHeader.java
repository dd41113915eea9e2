package asfound.drawing.schedule.sample;

import asfound.drawing.schedule.sample.GridLayout.HeaderStyle;
import asfound.drawing.schedule.sample.GridLayout.TotalStyle;
import asfound.drawing.schedule.sample.SamplePanel.SampleCircuit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Writes a panel's header and its sums in the cells around its directory. */
final class GridHeader {

    private final GridPaper paper;
    private final SamplePanel panel;
    private final GridLayout layout;
    private final GridWords words;
    /** How many labels stand side by side. */
    private final int across;

    GridHeader(GridPaper paper, SamplePanel panel, GridLayout layout, GridWords words, int across) {
        this.paper = paper;
        this.panel = panel;
        this.layout = layout;
        this.words = words;
        this.across = across;
    }

    private record Pair(String label, String value, boolean figure) {}

    /** The panel's name, by itself or as the first of the labels; gives the next free row. */
    int title(int row, int column, int width) {
        String kind = panel.iec() ? "DISTRIBUTION BOARD" : "PANEL";
        paper.text(row, column, words.with("title", panel.name()).replace("%k", kind));
        if (layout.header() == HeaderStyle.JOINED && isBook()) paper.join(row, column, row, column + width - 1);
        return row + 1;
    }

    private boolean isBook() {
        return layout.kind() == GridLayout.Kind.WORKBOOK;
    }

    /** @param named whether the panel's name stands among the labels; gives the next free row */
    int labels(int row, int column, boolean named) {
        List<Pair> pairs = pairs();
        if (!named) pairs.remove(0);
        if (layout.header() == HeaderStyle.RUNNING) return running(row, column, pairs);
        boolean one = layout.header() == HeaderStyle.ONE_CELL, over = layout.header() == HeaderStyle.LABEL_OVER_VALUE;
        boolean joined = layout.header() == HeaderStyle.JOINED && isBook();
        int wide = joined ? 4 : one || over ? 1 : 2, perRow = over ? 2 * across + 1 : across;
        int at = row;
        for (int i = 0; i < pairs.size(); i++) {
            if (i > 0 && i % perRow == 0) at += over ? 2 : 1;
            int c = column + i % perRow * (one || over ? joined ? 4 : 1 + (one ? 2 : 0) : wide);
            Pair pair = pairs.get(i);
            if (one) paper.text(at, c, pair.label() + ": " + pair.value());
            else if (over) {
                paper.text(at, c, pair.label());
                value(at + 1, c, pair);
            } else {
                boolean marked = layout.header() == HeaderStyle.TWO_CELLS_MARKED;
                paper.text(at, c, pair.label() + (marked ? ":" : ""));
                value(at, c + wide / 2, pair);
                if (joined) {
                    paper.join(at, c, at, c + 1);
                    paper.join(at, c + 2, at, c + 3);
                }
            }
        }
        return at + (over ? 2 : 1);
    }

    private void value(int row, int column, Pair pair) {
        if (pair.figure()) paper.figure(row, column, pair.value());
        else paper.text(row, column, pair.value());
    }

    private int running(int row, int column, List<Pair> pairs) {
        Map<String, String> h = panel.header();
        String supply = h.get("voltage") + "V, " + h.get("phases") + "PH, " + h.get("wires") + "W, " + h.get("busA")
                + "A BUS, "
                + (h.get("mains").equals("lugs") ? "MLO" : h.get("mainA") + "A MCB") + ", " + h.get("interruptingKA")
                + " KAIC";
        paper.text(row, column, supply);
        paper.text(row + 1, column, "FED FROM: " + h.get("fedFrom"));
        paper.text(row + 2, column, "LOCATION: " + h.get("location"));
        return row + 3;
    }

    private List<Pair> pairs() {
        Map<String, String> h = panel.header();
        List<Pair> out = new ArrayList<>();
        for (String key : List.of("designation", "location", "fedFrom", "voltage", "phases", "wires"))
            out.add(new Pair(
                    words.of(key),
                    h.get(key) + (key.equals("voltage") && !panel.iec() ? "V" : ""),
                    key.equals("phases") || key.equals("wires")));
        String bus = words.with("bus-value", h.get("busA"));
        out.add(new Pair(words.of("busA"), bus, bus.equals(h.get("busA"))));
        out.add(new Pair(
                words.of("mains"),
                h.get("mains").equals("lugs") ? words.of("lugs-value") : words.with("main-value", h.get("mainA")),
                false));
        String ka = words.with("ka-value", h.get("interruptingKA"));
        out.add(new Pair(words.of("interruptingKA"), ka, false));
        out.add(new Pair(words.of("mounting"), h.get("mounting"), false));
        return out;
    }

    private int[] sums() {
        int[] sums = new int[3];
        for (SampleCircuit c : panel.circuits()) for (int p : c.positions()) sums[panel.phaseOf(p)] += c.vaPerPole();
        return sums;
    }

    /** The sums below the rows; gives the next free row. */
    int totals(int row, int column, List<GridTable.Col> columns) {
        if (layout.totals() == TotalStyle.NONE) return row;
        int[] sums = sums();
        int at = row, whole = sums[0] + sums[1] + sums[2];
        if (layout.totals() == TotalStyle.UNDER_COLUMNS) {
            for (int c = 0; c < columns.size(); c++) {
                String key = columns.get(c).key();
                if (key.equals("desc") && columns.get(c).side() == 0) paper.text(row, column + c, "TOTAL");
                if (columns.get(c).side() == 0 && key.matches("l[012]"))
                    paper.figure(row, column + c, figure(sums[key.charAt(1) - '0']));
            }
            return row + 1;
        }
        for (int p = 0; p < panel.phases(); p++) {
            String phase = panel.iec() ? "L" + (p + 1) : String.valueOf("ABC".charAt(p));
            total(at++, column, "Phase " + phase + " total", sums[p]);
        }
        total(at++, column, "TOTAL CONNECTED LOAD", whole);
        return at;
    }

    private void total(int row, int column, String label, int va) {
        String unit = layout.loads().isKilo() ? "kVA" : "VA";
        if (layout.totals() == TotalStyle.ONE_CELL) paper.text(row, column, label + ": " + figure(va) + " " + unit);
        else {
            paper.text(row, column, label);
            paper.text(row, column + 1, figure(va) + " " + unit);
        }
    }

    private String figure(int va) {
        return layout.loads().isKilo() ? String.format(Locale.ROOT, "%.2f", va / 1000.0) : Integer.toString(va);
    }
}
