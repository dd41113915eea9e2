package asfound.drawing.schedule.sheet;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.device.Circuits;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.table.Side;
import asfound.drawing.schedule.table.Table;
import asfound.drawing.schedule.text.Field;
import asfound.drawing.schedule.text.Labels;
import asfound.drawing.schedule.text.SystemText;
import asfound.model.Box;
import asfound.model.Directory;
import asfound.model.Stated;
import asfound.model.Voltage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a list of several panels says of one of them: its name, and what columns of the panel's own, before that of the positions,
 * say beside each of its rows alike: its place, supply and voltage.
 */
final class ListedPanel {

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
        Directory.Header none = Directory.Header.empty();
        Stated<Voltage> voltage = said(Field.VOLTAGE)
                .flatMap(p -> SystemText.voltageOf(p.text())
                        .flatMap(Voltage::parse)
                        .map(v -> Stated.of(v, p.text(), sheet.place(p.box()))))
                .orElse(Stated.blank());
        return new Directory.Header(
                Stated.text(circuits.name(), sheet.place(circuits.box())),
                text(Field.LOCATION),
                text(Field.FED_FROM),
                voltage,
                none.phases(),
                none.wires(),
                none.busA(),
                none.mainA(),
                none.mains(),
                none.interruptingKA(),
                none.mounting());
    }

    private Stated<String> text(Field field) {
        return said(field).map(p -> Stated.text(p.text(), sheet.place(p.box()))).orElse(Stated.blank());
    }

    /** What the column of a field says in the panel's rows; empty where they do not all say the same. */
    private Optional<Phrase> said(Field field) {
        for (Side side : table.sides())
            for (Column column : side.columns())
                if (column.right() <= side.spine().centreX() && announces(column.heading(), field))
                    return alike(column);
        return Optional.empty();
    }

    private static boolean announces(String heading, Field field) {
        List<String> words = List.of(heading.split(" "));
        return Labels.at(words, 0)
                .filter(l -> l.field() == field && l.end() == words.size())
                .isPresent();
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
