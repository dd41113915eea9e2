package asfound.drawing.schedule.device;

import asfound.drawing.page.Sheet;
import asfound.drawing.page.Word;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.row.Leftover;
import asfound.drawing.schedule.row.Row;
import asfound.drawing.schedule.row.RowReader;
import asfound.drawing.schedule.table.AcrossWays;
import asfound.drawing.schedule.table.Side;
import asfound.drawing.schedule.table.Table;
import asfound.drawing.schedule.text.Looks;
import asfound.drawing.schedule.text.Role;
import asfound.model.Box;
import asfound.recordset.Settings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads the circuits of one table. */
public final class PanelReader {

    private final Sheet sheet;
    private final Phrases phrases;
    private final Settings settings;

    public PanelReader(Sheet sheet, Phrases phrases, Settings settings) {
        this.sheet = sheet;
        this.phrases = phrases;
        this.settings = settings;
    }

    public List<Circuits> read(Table table, String unit) {
        Map<String, Part> parts = new LinkedHashMap<>();
        double bottom = table.box().bottom();
        List<Leftover> strays = new ArrayList<>();
        Set<Word> taken = new HashSet<>();
        Looks looks = phrases.meanings().looks();
        int changes = 0;
        for (Side side : table.sides()) {
            RowReader reader = new RowReader(sheet, phrases, side, table.sides(), table.bodyTop());
            List<Row> rows = reader.read();
            changes += changes(side, rows);
            Loads loads = Loads.of(side, unit);
            boolean alone = table.sides().size() == 1;
            byPanel(side, rows).forEach((name, own) -> {
                Devices joined = Numbering.join(
                        own, looks, loads, side.spine(), alone, highest(table, own), settings.numbering());
                Part part = parts.computeIfAbsent(name, n -> new Part());
                part.drafts.addAll(joined.drafts());
                part.cost += joined.cost();
            });
            strays.addAll(reader.strays());
            taken.addAll(reader.taken());
            rows.forEach(
                    row -> row.token().ifPresent(t -> taken.addAll(t.phrase().words())));
            side.spine().tokens().forEach(t -> taken.addAll(t.phrase().words()));
            bottom = Math.max(bottom, reader.bottom());
        }
        Box b = table.box();
        Box whole = new Box(b.x(), b.y(), b.w(), bottom - b.y());
        List<Circuits> out = new ArrayList<>();
        boolean scattered = parts.size() > 1
                && changes > 2 * parts.size()
                && parts.values().stream().noneMatch(Part::isDense);
        parts.forEach((name, part) -> {
            if (AcrossWays.isAcross(table)) DevicesAcross.join(part.drafts);
            part.drafts.sort(Comparator.comparingInt(d -> d.positions().get(0)));
            withoutPolesOfOthers(part.drafts);
            Box box = name.isEmpty()
                    ? whole
                    : part.drafts.stream().map(Draft::box).reduce(Box::union).orElse(whole);
            boolean first = out.isEmpty();
            out.add(new Circuits(
                    name,
                    part.drafts,
                    first ? strays : List.of(),
                    first ? taken : Set.of(),
                    part.cost,
                    box,
                    scattered));
        });
        return out;
    }

    /** The last position of a panel: of all its sides, or of its own rows in a combined list. */
    private static int highest(Table table, List<Row> own) {
        boolean combined = table.sides().stream().anyMatch(s -> s.roles().containsKey(Role.PANEL));
        int last = own.stream().mapToInt(Row::number).max().orElse(0);
        return combined
                ? last
                : table.sides().stream()
                        .flatMap(s -> s.spine().numbers().stream())
                        .mapToInt(n -> n)
                        .reduce(last, Math::max);
    }

    /** A device that goes on at the head of the next half has blank rows there, which are no spaces of their own. */
    private static void withoutPolesOfOthers(List<Draft> drafts) {
        drafts.removeIf(d -> d.isBlank()
                && drafts.stream()
                        .anyMatch(o -> o != d
                                && o.positions().size() > 1
                                && o.positions().containsAll(d.positions())));
    }

    private static final class Part {
        private final List<Draft> drafts = new ArrayList<>();
        private double cost;

        /** More of the positions up to the last are there than not. */
        boolean isDense() {
            Set<Integer> own = new HashSet<>();
            drafts.forEach(d -> own.addAll(d.positions()));
            return own.size() * 2 > own.stream().mapToInt(n -> n).max().orElse(0);
        }
    }

    /** How often the rows of a combined list go over to another panel. */
    private static int changes(Side side, List<Row> rows) {
        int changes = 0;
        String last = "";
        for (Row row : rows) {
            if (!side.roles().containsKey(Role.PANEL) || row.saysNothing(Role.PANEL)) continue;
            if (!row.text(Role.PANEL).equals(last)) changes++;
            last = row.text(Role.PANEL);
        }
        return changes;
    }

    /** The rows of each panel that a combined list names; all of them under no name elsewhere. */
    private static Map<String, List<Row>> byPanel(Side side, List<Row> rows) {
        Map<String, List<Row>> out = new LinkedHashMap<>();
        if (!side.roles().containsKey(Role.PANEL)) {
            out.put("", rows);
            return out;
        }
        String name = "";
        for (Row row : rows) {
            if (!row.saysNothing(Role.PANEL)) name = row.text(Role.PANEL);
            out.computeIfAbsent(name, n -> new ArrayList<>()).add(row);
        }
        return out;
    }
}
