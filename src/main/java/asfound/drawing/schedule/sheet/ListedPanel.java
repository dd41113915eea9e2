package asfound.drawing.schedule.sheet;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.device.Circuits;
import asfound.drawing.schedule.header.Headers;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.table.Side;
import asfound.drawing.schedule.table.Table;
import asfound.drawing.schedule.text.Labels;
import asfound.drawing.schedule.text.Value;
import asfound.drawing.schedule.text.Values;
import asfound.model.Box;
import asfound.model.Directory;
import asfound.model.Stated;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a list of several panels says of one of them: its name, and what columns of the panel's own, before that of the positions,
 * say beside each of its rows alike: its place, supply, voltage, bus and mains.
 */
final class ListedPanel {

    /** As behind a label and a colon. */
    private static final int SURE = 3;

    private final Sheet sheet;
    private final Phrases phrases;
    private final Table table;
    private final Circuits circuits;

    ListedPanel(Sheet sheet, Phrases phrases, Table table, Circuits circuits) {
        this.sheet = sheet;
        this.phrases = phrases;
        this.table = table;
        this.circuits = circuits;
    }

    Directory.Header header() {
        List<Value> said = new ArrayList<>();
        for (Side side : table.sides())
            for (Column column : side.columns())
                if (column.right() <= side.spine().centreX()) said(column).ifPresent(said::add);
        return Headers.ofList(sheet, phrases, Stated.text(circuits.name(), sheet.place(circuits.box())), said);
    }

    /** What the column of a field says in the panel's rows; empty where they do not all say the same. */
    private Optional<Value> said(Column column) {
        return Labels.ofPanel(column.heading())
                .flatMap(field -> alike(column).map(p -> new Value(field, p.text(), p.box(), SURE)))
                .filter(v -> Values.fits(v.field(), v.text()));
    }

    private Optional<Phrase> alike(Column column) {
        Box rows = circuits.box();
        List<Phrase> said = new ArrayList<>();
        for (Phrase p : phrases.between(rows.y(), rows.bottom()))
            if (p.centreX() > column.left() && p.centreX() < column.right()) said.add(p);
        boolean alike = said.stream().map(Phrase::text).distinct().count() == 1;
        return alike ? Optional.of(said.get(0)) : Optional.empty();
    }
}
