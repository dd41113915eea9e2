package asfound.drawing.schedule.row;

import asfound.drawing.schedule.table.Side;
import asfound.drawing.schedule.text.DeviceInWords;
import asfound.drawing.schedule.text.Role;
import java.util.List;
import java.util.Optional;

/**
 * Devices written behind what they feed, on cards that have no column for them: {@code Range 40A 2P}. Only where most entries
 * end so: a single {@code Recept 30A} says what the receptacle is made for.
 */
final class DevicesInWords {

    private static final int ROWS = 4;

    private DevicesInWords() {}

    /** Parts the devices from the descriptions of a side that has no column of ratings. */
    static void part(Side side, List<Row> rows) {
        if (side.roles().containsKey(Role.RATING) || side.roles().containsKey(Role.DEVICE)) return;
        List<Row> said =
                rows.stream().filter(r -> !r.saysNothing(Role.DESCRIPTION)).toList();
        long with = said.stream().filter(r -> match(r).isPresent()).count();
        if (said.size() < Math.min(ROWS, rows.size()) - 1 || with < 3 || with * 10 < said.size() * 7) return;
        for (Row row : said)
            match(row).ifPresent(m -> {
                Row.Cell whole = row.cell(Role.DESCRIPTION).orElseThrow();
                row.replace(Role.DESCRIPTION, new Row.Cell(m.load(), whole.box(), whole.further()));
                row.put(Role.DEVICE, new Row.Cell(m.device(), whole.box(), whole.further()));
            });
    }

    private static Optional<DeviceInWords> match(Row row) {
        return DeviceInWords.of(row.text(Role.DESCRIPTION));
    }
}
