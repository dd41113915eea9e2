package asfound.drawing.schedule.device;

import asfound.drawing.schedule.row.Row;
import asfound.drawing.schedule.text.DeviceText;
import asfound.drawing.schedule.text.Look;
import asfound.drawing.schedule.text.Looks;
import asfound.drawing.schedule.text.Role;
import asfound.model.Stated;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What a row says of its device.
 *
 * @param rating trip rating in amperes
 * @param poles where printed
 * @param trouble what could not be read; empty where all could
 */
record Device(Stated<Integer> rating, Optional<Integer> poles, String trouble) {

    private static final Pattern NONE = Pattern.compile("n/?a|none|space|spare|0|x", Pattern.CASE_INSENSITIVE);

    static Device of(Row row, Looks looks) {
        Optional<Row.Cell> cell = row.cell(Role.DEVICE).or(() -> row.cell(Role.RATING));
        String written = cell.map(Row.Cell::text).orElse(""),
                raw = cell.map(Row.Cell::raw).orElse("");
        String polesText = row.text(Role.POLES);
        Look look = looks.of(written), polesLook = looks.of(polesText);
        Optional<DeviceText> device = look.device();
        Optional<Integer> beside = polesLook.poles(), own = device.flatMap(DeviceText::poles);
        boolean differ = beside.isPresent() && own.isPresent() && !beside.equals(own);
        Optional<Integer> poles = own.or(() -> beside);
        String trouble = differ ? "poles '" + polesText + "' beside '" + written + "'" : "";
        Stated<Integer> rating;
        if (!look.says() || saysNone(written)) rating = Stated.blank();
        else if (device.isEmpty()) {
            rating = Stated.unreadable(written, null);
            trouble = (trouble.isEmpty() ? "" : trouble + ", ") + "rating '" + written + "'";
        } else rating = device.get().ratingA().map(a -> Stated.of(a, raw, null)).orElse(Stated.blank());
        if (polesLook.says() && polesLook.poles().isEmpty() && !saysNone(polesText))
            trouble = (trouble.isEmpty() ? "" : trouble + ", ") + "poles '" + polesText + "'";
        return new Device(rating, poles, trouble);
    }

    private static boolean saysNone(String text) {
        return NONE.matcher(text.strip()).matches();
    }
}
