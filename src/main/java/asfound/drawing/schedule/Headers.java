package asfound.drawing.schedule;

import asfound.drawing.page.Sheet;
import asfound.model.Box;
import asfound.model.Directory.Header;
import asfound.model.Directory.Totals;
import java.util.List;

final class Headers {
    private final List<Box> tables;
    private Headers(List<Box> tables) { this.tables = tables; }
    static Headers of(Sheet sheet, List<Phrase> phrases, List<Box> tables) { return new Headers(tables); }
    List<HeaderText> read() { return tables.stream().map(t -> new HeaderText(Header.empty(), Totals.none())).toList(); }
}
