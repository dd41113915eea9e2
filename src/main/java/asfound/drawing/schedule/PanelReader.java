package asfound.drawing.schedule;

import asfound.drawing.page.Sheet;
import asfound.model.Box;
import asfound.recordset.Settings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Reads the circuits of one table. */
final class PanelReader {

    private final Sheet sheet;
    private final List<Phrase> phrases;
    private final Settings settings;

    PanelReader(Sheet sheet, List<Phrase> phrases, Settings settings) {
        this.sheet = sheet;
        this.phrases = phrases;
        this.settings = settings;
    }

    /**
     * The circuits of a table.
     *
     * @param name the panel that the rows of a combined list name; empty elsewhere
     * @param drafts in order of their lowest position
     * @param strays texts among the rows that no row took
     * @param cost what speaks against the reading, in rows
     * @param box from the first row to the last
     */
    record Circuits(String name, List<Draft> drafts, List<String> strays, double cost, Box box) {}

    List<Circuits> read(Table table, String unit) {
        List<Draft> drafts = new ArrayList<>();
        List<String> strays = new ArrayList<>();
        double cost = 0, bottom = table.box().bottom();
        for (Side side : table.sides()) {
            RowReader reader = new RowReader(sheet, phrases, side, table.bodyTop());
            List<Row> rows = reader.read();
            Loads loads = Loads.of(side, unit);
            Devices.Joined joined =
                    Numbering.join(rows, loads, side.spine(), table.sides().size() == 1, settings.numbering());
            drafts.addAll(joined.drafts());
            strays.addAll(reader.strays());
            cost += joined.cost();
            bottom = Math.max(bottom, reader.bottom());
        }
        drafts.sort(Comparator.comparingInt(d -> d.positions().get(0)));
        Box b = table.box();
        return List.of(new Circuits("", drafts, strays, cost, new Box(b.x(), b.y(), b.w(), bottom - b.y())));
    }
}
