package asfound.drawing.schedule.sample;

import asfound.drawing.schedule.sample.SampleLayout.Carry;
import asfound.drawing.schedule.sample.SampleLayout.Numbers;
import asfound.drawing.schedule.sample.SampleLayout.Sides;
import asfound.drawing.schedule.sample.SamplePanel.SampleCircuit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * A panel's directory as cells, before it is drawn.
 *
 * @param columns from left to right
 * @param rows from top to bottom
 */
record SampleTable(List<Col> columns, List<List<Cell>> rows) {

    /** @param key what the column holds: pos, way, desc, rating, poles, device, va, la, lb, lc, wire, phase, type */
    record Col(String key, String heading, double width, boolean rightAligned) {}

    /** @param span how many rows it covers; 0 where a cell above covers it */
    record Cell(String text, int span) {}

    static SampleTable of(SamplePanel panel, SampleLayout layout) {
        return new Builder(panel, layout).build();
    }

    private record Builder(SamplePanel panel, SampleLayout layout) {

        SampleTable build() {
            List<List<Integer>> sides = sides();
            List<Col> columns = new ArrayList<>();
            int n = sides.stream().mapToInt(List::size).max().orElse(0);
            List<List<Cell>> rows = new ArrayList<>();
            for (int r = 0; r < n; r++) rows.add(new ArrayList<>());
            for (int s = 0; s < sides.size(); s++) {
                List<Col> own = columns(s);
                columns.addAll(own);
                for (int r = 0; r < n; r++)
                    for (Col c : own)
                        rows.get(r).add(r < sides.get(s).size() ? cell(c, sides.get(s), r) : new Cell("", 1));
            }
            return new SampleTable(columns, rows);
        }

        private List<List<Integer>> sides() {
            List<Integer> all = new ArrayList<>();
            for (int p = 1; p <= panel.ways(); p++) all.add(p);
            return switch (layout.sides()) {
                case CENTRE, OUTSIDE, LEFT_OF_EACH ->
                    List.of(
                            all.stream().filter(p -> p % 2 == 1).toList(),
                            all.stream().filter(p -> p % 2 == 0).toList());
                case HALVES -> List.of(all.subList(0, panel.ways() / 2), all.subList(panel.ways() / 2, panel.ways()));
                case ROWS, WAYS -> List.of(all);
                case ODD_THEN_EVEN -> {
                    List<Integer> order =
                            new ArrayList<>(all.stream().filter(p -> p % 2 == 1).toList());
                    order.addAll(all.stream().filter(p -> p % 2 == 0).toList());
                    yield List.of(order);
                }
                case LIST ->
                    List.of(panel.circuits().stream().map(SampleCircuit::first).toList());
            };
        }

        private List<Col> columns(int side) {
            List<Col> out = new ArrayList<>();
            double s = layout.size();
            boolean list = layout.sides() == Sides.LIST;
            if (layout.sides() == Sides.WAYS) {
                out.add(new Col("way", word("way"), 4 * s, false));
                out.add(new Col("line", word("line"), 4 * s, false));
            } else out.add(new Col("pos", word("pos"), (list ? 8 : 4.5) * s, false));
            out.add(new Col("desc", word("desc"), (layout.wrapped() ? 13 : 27) * s, false));
            if (layout.device() == SampleLayout.DeviceStyle.TWO_COLUMNS
                    || layout.device() == SampleLayout.DeviceStyle.WITH_UNITS) {
                out.add(new Col("rating", word("rating"), 5.5 * s, false));
                out.add(new Col("poles", word("poles"), 4.8 * s, false));
            } else if (layout.device() == SampleLayout.DeviceStyle.RATING_ONLY)
                out.add(new Col("rating", word("rating"), 5.5 * s, false));
            else out.add(new Col("device", word("device"), 8 * s, false));
            if (layout.type()) out.add(new Col("type", panel.iec() ? "Type" : "CODE", 4.5 * s, false));
            if (layout.phase() && layout.sides() != Sides.WAYS)
                out.add(new Col("phase", word("phase"), 4.5 * s, false));
            if (layout.wire()) out.add(new Col("wire", word("wire"), 6 * s, false));
            switch (layout.loads()) {
                case NONE -> {}
                case VA_EACH, VA_SUM -> out.add(new Col("va", word("va"), 6.5 * s, true));
                case KVA_EACH -> out.add(new Col("va", word("kva"), 6 * s, true));
                default -> {
                    boolean kilo = layout.loads() == SampleLayout.LoadStyle.KVA_BY_PHASE;
                    String[] names = panel.iec() ? new String[] {"L1", "L2", "L3"} : new String[] {"A", "B", "C"};
                    for (int p = 0; p < panel.phases(); p++)
                        out.add(new Col("l" + "abc".charAt(p), (kilo ? "kVA " : "VA ") + names[p], 6.5 * s, true));
                }
            }
            // the positions stand to the right of the left side of a centred sheet
            boolean mirrored =
                    layout.sides() == Sides.CENTRE && side == 0 || layout.sides() == Sides.OUTSIDE && side == 1;
            if (mirrored) Collections.reverse(out);
            return out;
        }

        private String word(String key) {
            return switch (layout.words()) {
                case SHORT ->
                    switch (key) {
                        case "pos" -> "CKT";
                        case "way" -> "WAY";
                        case "line" -> "PH";
                        case "desc" -> "DESCRIPTION";
                        case "rating" -> "TRIP";
                        case "poles" -> "P";
                        case "device" -> layout.device() == SampleLayout.DeviceStyle.P_DASH_A ? "P/A" : "BKR";
                        case "phase" -> "PH";
                        case "wire" -> "WIRE";
                        case "kva" -> "KVA";
                        default -> "VA";
                    };
                case LONG ->
                    switch (key) {
                        case "pos" -> "Cct No.";
                        case "way" -> "Way No.";
                        case "line" -> "Phase";
                        case "desc" -> "Circuit Designation";
                        case "rating" -> "Rating";
                        case "poles" -> "Poles";
                        case "device" -> "Breaker";
                        case "phase" -> "Phase";
                        case "wire" -> "Cable";
                        case "kva" -> "Load kVA";
                        default -> "Load VA";
                    };
                case TWO_LINES ->
                    switch (key) {
                        case "pos" -> "CIR\nNO.";
                        case "way" -> "WAY\nNO.";
                        case "line" -> "LINE";
                        case "desc" -> "EQUIPMENT\nSERVED";
                        case "rating" -> "AMP\nTRIP";
                        case "poles" -> "NO. OF\nPOLES";
                        case "device" -> "CIRCUIT\nBREAKER";
                        case "phase" -> "LINE";
                        case "wire" -> "COND.\nSIZE";
                        case "kva" -> "CONN.\nKVA";
                        default -> "CONN.\nVA";
                    };
                case OTHER ->
                    switch (key) {
                        case "pos" -> "Pos.";
                        case "way" -> "Way";
                        case "line" -> "Line";
                        case "desc" -> "Feeds";
                        case "rating" -> "OCPD (A)";
                        case "poles" -> "# Poles";
                        case "device" -> "OCPD";
                        case "phase" -> "Leg";
                        case "wire" -> "AWG";
                        case "kva" -> "kW";
                        default -> "Watts";
                    };
            };
        }

        private Cell cell(Col col, List<Integer> order, int r) {
            int p = order.get(r);
            SampleCircuit c = panel.at(p).orElseThrow();
            int pole = layout.sides() == Sides.LIST ? 0 : c.positions().indexOf(p);
            boolean alone = layout.sides() == Sides.LIST;
            switch (col.key()) {
                case "pos" -> {
                    return new Cell(position(c, p, pole), 1);
                }
                case "way" -> {
                    boolean first = (p - 1) % 3 == 0;
                    return new Cell(
                            first ? Integer.toString((p - 1) / 3 + 1) : "",
                            first && layout.ruling() == SampleLayout.Ruling.FULL
                                    ? 3
                                    : first ? 1 : layout.ruling() == SampleLayout.Ruling.FULL ? 0 : 1);
                }
                case "line" -> {
                    return new Cell("L" + ((p - 1) % 3 + 1), 1);
                }
                case "phase" -> {
                    if (!alone) return new Cell(String.valueOf("ABC".charAt(panel.phaseOf(p))), 1);
                    StringBuilder all = new StringBuilder();
                    c.positions().forEach(q -> all.append("ABC".charAt(panel.phaseOf(q))));
                    return new Cell(all.toString(), 1);
                }
                case "va" -> {
                    return new Cell(load(c, alone ? -1 : pole), 1);
                }
                case "la", "lb", "lc" -> {
                    int phase = col.key().charAt(1) - 'a';
                    if (c.vaPerPole() == 0) return new Cell("", 1);
                    boolean here = alone
                            ? c.positions().stream().anyMatch(q -> panel.phaseOf(q) == phase)
                            : panel.phaseOf(p) == phase;
                    return new Cell(here ? figure(c.vaPerPole()) : "", 1);
                }
                default -> {
                    return carried(col, c, pole, r, order);
                }
            }
        }

        private String position(SampleCircuit c, int p, int pole) {
            if (layout.sides() == Sides.LIST) {
                String by = layout.numbers() == Numbers.COMMAS ? "," : layout.numbers() == Numbers.HYPHENS ? "-" : "/";
                return String.join(
                        by, c.positions().stream().map(String::valueOf).toList());
            }
            return layout.numbers() == Numbers.ONCE && pole > 0 ? "" : Integer.toString(p);
        }

        private Cell carried(Col col, SampleCircuit c, int pole, int r, List<Integer> order) {
            String text = value(col.key(), c);
            int poles = layout.sides() == Sides.LIST ? 1 : c.poles();
            if (layout.carry() == Carry.JOINED) return pole == 0 ? new Cell(text, poles) : new Cell("", 0);
            if (pole == 0 || layout.carry() == Carry.REPEATED) return new Cell(text, 1);
            String mark = layout.carry() == Carry.DASH ? "-" : layout.carry() == Carry.DITTO ? "\"" : "";
            return new Cell(text.isEmpty() ? "" : mark, 1);
        }

        private String value(String key, SampleCircuit c) {
            boolean space = c.use().equals("space");
            return switch (key) {
                case "desc" -> c.description();
                case "rating" ->
                    space ? "" : c.rating() + (layout.device() == SampleLayout.DeviceStyle.WITH_UNITS ? "A" : "");
                case "poles" ->
                    space ? "" : c.poles() + (layout.device() == SampleLayout.DeviceStyle.WITH_UNITS ? "P" : "");
                case "device" -> space ? "" : device(c);
                case "type" ->
                    space
                            ? ""
                            : panel.iec()
                                    ? "BCD".substring(c.first() % 3, c.first() % 3 + 1)
                                    : "LRM".substring(c.first() % 3, c.first() % 3 + 1);
                case "wire" -> c.wire();
                default -> "";
            };
        }

        private String device(SampleCircuit c) {
            return switch (layout.device()) {
                case SLASH -> c.rating() + "/" + c.poles();
                case A_DASH_P -> c.rating() + "A-" + c.poles() + "P";
                case A_SPACE_P -> c.rating() + "A " + c.poles() + "P";
                default -> c.poles() + "P-" + c.rating() + "A";
            };
        }

        private String load(SampleCircuit c, int pole) {
            if (c.vaPerPole() == 0) return "";
            if (pole < 0) return figure(c.vaPerPole() * c.poles());
            if (layout.loads() == SampleLayout.LoadStyle.VA_SUM)
                return pole == 0 ? figure(c.vaPerPole() * c.poles()) : "";
            return figure(c.vaPerPole());
        }

        private String figure(int va) {
            boolean kilo = layout.loads() == SampleLayout.LoadStyle.KVA_EACH
                    || layout.loads() == SampleLayout.LoadStyle.KVA_BY_PHASE;
            return kilo ? String.format(Locale.ROOT, "%.2f", va / 1000.0) : Integer.toString(va);
        }
    }
}
