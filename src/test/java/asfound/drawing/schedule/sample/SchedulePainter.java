package asfound.drawing.schedule.sample;

import asfound.drawing.schedule.sample.SampleLayout.HeaderPlace;
import asfound.drawing.schedule.sample.SampleLayout.Ruling;
import asfound.drawing.schedule.sample.SampleTable.Cell;
import asfound.drawing.schedule.sample.SampleTable.Col;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Draws one panel's schedule. */
final class SchedulePainter {

    private final Pen pen;
    private final SampleLayout layout;
    private final SamplePanel panel;
    private final SampleTable table;
    private final double size;

    SchedulePainter(Pen pen, SampleLayout layout, SamplePanel panel) {
        this.pen = pen;
        this.layout = layout;
        this.panel = panel;
        this.table = SampleTable.of(panel, layout);
        this.size = layout.size();
    }

    double tableWidth() {
        return table.columns().stream().mapToDouble(Col::width).sum();
    }

    /** Draws rows from {@code from} up to but not including {@code to}; gives the y below everything. */
    double draw(double x, double y, int from, int to, boolean first) throws IOException {
        double at = y;
        boolean whole = first && to == table.rows().size();
        if (first && layout.headerPlace() != HeaderPlace.BELOW) {
            at = title(x, at);
            if (layout.headerPlace() == HeaderPlace.ABOVE) at = header(x, at, tableWidth()) + size;
        } else if (!first) {
            pen.text("PANEL " + panel.name() + " (CONTINUED)", x, at + 1.4 * size, 1.3 * size, true);
            at += 3 * size;
        } else at = title(x, at);
        double top = at;
        at = rows(x, at, from, to);
        if (first && layout.headerPlace() == HeaderPlace.RIGHT) header(x + tableWidth() + 3 * size, top, 30 * size);
        if (whole && layout.lugs()) {
            pen.text("FEED-THROUGH LUGS TO PANEL LX-9", x + size, at + 1.6 * size, size, false);
            at += 2.4 * size;
        }
        if (to == table.rows().size() && layout.totals()) at = totals(x, at + size);
        if (first && layout.headerPlace() == HeaderPlace.BELOW) at = header(x, at + 1.5 * size, tableWidth());
        return at;
    }

    int rowCount() {
        return table.rows().size();
    }

    private double title(double x, double y) throws IOException {
        String kind = panel.iec() ? "DISTRIBUTION BOARD" : "PANEL";
        String text = switch (layout.words()) {
            case SHORT -> kind + " \"" + panel.name() + "\"";
            case LONG -> (panel.iec() ? "Distribution board " : "Panelboard ") + panel.name();
            case TWO_LINES -> kind + " SCHEDULE: " + panel.name();
            case OTHER -> panel.name() + " " + kind + " SCHEDULE";
        };
        pen.text(text, x, y + 1.6 * size, 1.5 * size, true);
        return y + 3.2 * size;
    }

    private Map<String, String> labelled() {
        Map<String, String> h = panel.header(), out = new java.util.LinkedHashMap<>();
        boolean brief = layout.words() == SampleLayout.Words.SHORT;
        boolean other = layout.words() == SampleLayout.Words.OTHER;
        String main = h.get("mains").equals("lugs")
                ? (brief ? "MLO" : other ? "Main lugs only" : "MAIN LUGS ONLY")
                : h.get("mainA") + (brief ? "A MCB" : "A MAIN BREAKER");
        out.put(brief ? "PANEL" : other ? "Board" : "PANEL NAME", h.get("designation"));
        out.put(brief ? "LOC" : other ? "Located in" : "LOCATION", h.get("location"));
        out.put(brief ? "FED FROM" : other ? "Supplied by" : "SOURCE", h.get("fedFrom"));
        out.put(brief ? "VOLTS" : other ? "System" : "VOLTAGE", voltage());
        out.put(brief ? "PH" : other ? "No. of phases" : "PHASES", h.get("phases"));
        out.put(brief ? "W" : other ? "No. of wires" : "WIRES", h.get("wires"));
        out.put(brief ? "BUS" : other ? "Bus rating" : "BUS AMPS", h.get("busA") + (brief ? "A" : other ? " A" : ""));
        out.put(brief ? "MAIN" : other ? "Mains" : "MAIN DEVICE", main);
        out.put(
                brief ? "AIC" : other ? "Short circuit rating" : "INTERRUPTING RATING",
                brief ? h.get("interruptingKA") + ",000" : h.get("interruptingKA") + (other ? " kA" : "kAIC"));
        out.put(brief ? "MTG" : "MOUNTING", h.get("mounting"));
        return out;
    }

    private String voltage() {
        String v = panel.header().get("voltage");
        return layout.upper() ? v + "V" : v;
    }

    private double header(double x, double y, double width) throws IOException {
        Map<String, String> h = labelled();
        List<Map.Entry<String, String>> all = new ArrayList<>(h.entrySet());
        double at = y;
        switch (layout.header()) {
            case COLON_LINES -> {
                int columns = width > 60 * size ? 3 : 2;
                double w = Math.max(width, 40 * size) / columns;
                for (int i = 0; i < all.size(); i++) {
                    int row = i / columns;
                    pen.text(
                            all.get(i).getKey() + ": " + all.get(i).getValue(),
                            x + (i % columns) * w,
                            y + (row + 1) * 1.5 * size,
                            size,
                            false);
                    at = y + (row + 1) * 1.5 * size + 0.5 * size;
                }
            }
            case GRID -> {
                double label = 17 * size, value = 16 * size;
                int columns = width > 2 * (label + value) ? 2 : 1;
                for (int i = 0; i < all.size(); i++) {
                    double left = x + (i % columns) * (label + value), top = y + (i / columns) * 1.8 * size;
                    box(left, top, label, 1.8 * size);
                    box(left + label, top, value, 1.8 * size);
                    pen.text(all.get(i).getKey(), left + 2, top + 1.3 * size, size, true);
                    pen.text(all.get(i).getValue(), left + label + 2, top + 1.3 * size, size, false);
                    at = top + 1.8 * size;
                }
            }
            case LABEL_OVER_VALUE -> {
                int columns = width > 75 * size ? 5 : width > 50 * size ? 3 : 2;
                double w = Math.max(width, 34 * size) / columns;
                for (int i = 0; i < all.size(); i++) {
                    double left = x + (i % columns) * w, top = y + (i / columns) * 3 * size;
                    box(left, top, w, 3 * size);
                    pen.text(all.get(i).getKey(), left + 2, top + size, 0.75 * size, false);
                    pen.text(all.get(i).getValue(), left + 2, top + 2.4 * size, size, true);
                    at = top + 3 * size;
                }
            }
            default -> at = running(x, y);
        }
        return at;
    }

    private double running(double x, double y) throws IOException {
        Map<String, String> h = panel.header();
        String main = h.get("mains").equals("lugs") ? "MLO" : h.get("mainA") + "A MCB";
        String first = voltage() + (layout.upper() ? "" : "V") + ", " + h.get("phases") + " PH, " + h.get("wires")
                + "W, " + h.get("busA") + "A BUS, " + main + ", " + h.get("interruptingKA") + " KAIC, "
                + h.get("mounting").toUpperCase(Locale.ROOT) + " MTD";
        pen.text(first, x, y + 1.3 * size, size, false);
        pen.text("LOCATED IN " + h.get("location") + ", FED FROM " + h.get("fedFrom"), x, y + 2.7 * size, size, false);
        return y + 3.4 * size;
    }

    private void box(double x, double y, double w, double h) throws IOException {
        pen.line(x, y, x + w, y);
        pen.line(x, y + h, x + w, y + h);
        pen.line(x, y, x, y + h);
        pen.line(x + w, y, x + w, y + h);
    }

    private double headings(double x, double y) throws IOException {
        boolean turned = layout.turnedHeadings();
        double longest = 0;
        for (Col c : table.columns())
            for (String line : c.heading().split("\n")) longest = Math.max(longest, pen.width(line, 0.85 * size, true));
        double h = turned ? longest + size : (layout.words() == SampleLayout.Words.TWO_LINES ? 3 : 2) * size;
        if (layout.ruling() == Ruling.FULL || layout.ruling() == Ruling.BANDS) pen.shade(x, y, tableWidth(), h, 0.85f);
        double left = x;
        for (Col c : table.columns()) {
            String[] lines = c.heading().split("\n");
            if (turned && !c.key().equals("desc")) {
                double at = left + c.width() / 2 - (lines.length - 1) * 0.5 * size + 0.3 * size;
                for (String line : lines) {
                    pen.turned(line, at, y + h - 0.4 * size, 0.85 * size);
                    at += size;
                }
            } else {
                double base = y + h / 2 - (lines.length - 1) * 0.55 * size + 0.3 * size;
                for (String line : lines) {
                    pen.text(
                            line, left + (c.width() - pen.width(line, 0.85 * size, true)) / 2, base, 0.85 * size, true);
                    base += 1.1 * size;
                }
            }
            left += c.width();
        }
        return y + h;
    }

    private double rows(double x, double y, int from, int to) throws IOException {
        double top = y, body = headings(x, y);
        List<Double> edges = new ArrayList<>(List.of(body));
        List<List<List<String>>> wrapped = new ArrayList<>();
        for (int r = from; r < to; r++) {
            List<List<String>> lines = new ArrayList<>();
            int most = 1;
            for (int c = 0; c < table.columns().size(); c++) {
                Cell cell = table.rows().get(r).get(c);
                List<String> own = wrap(cell.text(), table.columns().get(c).width() - 0.8 * size);
                lines.add(own);
                most = Math.max(most, cell.span() > 1 ? (own.size() + cell.span() - 1) / cell.span() : own.size());
            }
            wrapped.add(lines);
            edges.add(edges.get(edges.size() - 1) + (1.75 + 1.15 * (most - 1)) * size);
        }
        rulings(x, top, edges);
        for (int r = from; r < to; r++) {
            double left = x;
            for (int c = 0; c < table.columns().size(); c++) {
                Cell cell = table.rows().get(r).get(c);
                Col col = table.columns().get(c);
                double low = edges.get(Math.min(to - from, r - from + Math.max(1, cell.span())));
                if (cell.span() > 0) entry(wrapped.get(r - from).get(c), col, left, edges.get(r - from), low);
                left += col.width();
            }
        }
        cellRulings(x, edges, from, to);
        return edges.get(edges.size() - 1);
    }

    private void entry(List<String> lines, Col col, double left, double top, double bottom) throws IOException {
        boolean high = layout.wrapped() && layout.words() == SampleLayout.Words.LONG;
        double base = high ? top + 1.25 * size : (top + bottom) / 2 - (lines.size() - 1) * 0.575 * size + 0.33 * size;
        for (String line : lines) {
            double w = pen.width(line, size, false);
            double at = col.key().equals("desc")
                    ? left + 0.4 * size
                    : col.rightAligned() ? left + col.width() - w - 0.4 * size : left + (col.width() - w) / 2;
            pen.text(line, at, base, size, false);
            base += 1.15 * size;
        }
    }

    private List<String> wrap(String text, double width) throws IOException {
        List<String> out = new ArrayList<>();
        String open = "";
        for (String word : text.split(" ")) {
            String longer = open.isEmpty() ? word : open + " " + word;
            if (!open.isEmpty() && pen.width(longer, size, false) > width) {
                out.add(open);
                open = word;
            } else open = longer;
        }
        out.add(open);
        return out;
    }

    private void rulings(double x, double top, List<Double> edges) throws IOException {
        double right = x + tableWidth(), bottom = edges.get(edges.size() - 1);
        switch (layout.ruling()) {
            case BANDS -> {
                for (int i = 1; i < edges.size() - 1; i += 2)
                    pen.shade(x, edges.get(i), tableWidth(), edges.get(i + 1) - edges.get(i), 0.9f);
            }
            case ACROSS -> {
                for (double e : edges) pen.line(x, e, right, e);
                pen.line(x, top, right, top);
            }
            case DOWN, BOX_AND_FIFTHS -> {
                pen.line(x, top, right, top);
                pen.line(x, bottom, right, bottom);
                pen.line(x, edges.get(0), right, edges.get(0));
                pen.line(x, top, x, bottom);
                pen.line(right, top, right, bottom);
                if (layout.ruling() == Ruling.BOX_AND_FIFTHS)
                    for (int i = 5; i < edges.size(); i += 5) pen.line(x, edges.get(i), right, edges.get(i));
                else {
                    double left = x;
                    for (Col c : table.columns()) {
                        pen.line(left, top, left, bottom);
                        left += c.width();
                    }
                }
            }
            case FULL -> {
                pen.line(x, top, right, top);
                pen.line(x, top, x, bottom);
                double left = x;
                for (Col c : table.columns()) {
                    left += c.width();
                    pen.line(left, top, left, bottom);
                }
            }
            default -> {}
        }
    }

    /** The lines across of a full grid, left out inside joined cells. */
    private void cellRulings(double x, List<Double> edges, int from, int to) throws IOException {
        if (layout.ruling() != Ruling.FULL) return;
        for (int r = from; r <= to; r++) {
            double left = x;
            for (int c = 0; c < table.columns().size(); c++) {
                double w = table.columns().get(c).width();
                boolean joined =
                        r < to && r > from && table.rows().get(r).get(c).span() == 0;
                if (!joined) pen.line(left, edges.get(r - from), left + w, edges.get(r - from));
                left += w;
            }
        }
    }

    private double totals(double x, double y) throws IOException {
        int[] sums = new int[3];
        for (SamplePanel.SampleCircuit c : panel.circuits())
            for (int p : c.positions()) sums[panel.phaseOf(p)] += c.vaPerPole();
        String names = panel.iec() ? "123" : "ABC";
        double at = y + 1.2 * size;
        for (int p = 0; p < panel.phases(); p++) {
            pen.text(
                    "PHASE " + (panel.iec() ? "L" : "") + names.charAt(p) + " TOTAL: " + sums[p] + " VA",
                    x,
                    at,
                    size,
                    false);
            at += 1.4 * size;
        }
        pen.text("TOTAL CONNECTED LOAD: " + (sums[0] + sums[1] + sums[2]) + " VA", x, at, size, false);
        return at + size;
    }
}
