package asfound.drawing.schedule.device;

import asfound.drawing.schedule.text.Role;
import asfound.drawing.schedule.text.Texts;
import asfound.drawing.schedule.text.UseText;
import asfound.model.Directory.Use;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An entry without a rating beneath a rated device of which no poles are printed, that says too little for a load of its
 * own: {@code X}, {@code 2-POLE}, {@code CKT 5}, the words of the device above with more behind them, or the same word
 * wherever such an entry stands. It may be that device's further pole.
 */
final class BelowRated {

    /** A load has a word of its own. */
    private static final int FEWEST_LETTERS = 3;
    /** Longer ones speak of something else than the position above. */
    private static final int LONGEST_REFERENCE = 14;

    private static final Pattern NUMBER = Pattern.compile("\\d+");
    /** It says that the position is taken, and not by what. */
    private static final Pattern TAKEN =
            Pattern.compile("\\(?(?:[2-4][- ]?P(?:OLES?)?|USED|IN USE|TAKEN|OCCUPIED|BLOCKED)\\)?");

    private final Map<Integer, JoinedRows> at = new HashMap<>();
    private final Map<String, Integer> often = new HashMap<>();
    private final int step;

    private BelowRated(List<JoinedRows> devices, int step) {
        this.step = step;
        for (JoinedRows device : devices) for (int position : device.positions()) at.putIfAbsent(position, device);
        for (JoinedRows device : devices) if (isBelowRated(device)) often.merge(written(device), 1, Integer::sum);
    }

    /** A word about each such entry of a side whose poles of one device are {@code step} positions apart. */
    static void doubt(List<JoinedRows> devices, int step) {
        BelowRated below = new BelowRated(devices, step);
        if (below.often.isEmpty()) return;
        for (JoinedRows device : devices)
            if (below.isBelowRated(device) && below.saysTooLittle(device))
                device.doubt("'" + written(device)
                        + "' without a rating; nothing shows whether it is a further pole of the device above");
    }

    private boolean isBelowRated(JoinedRows device) {
        return isEntryAlone(device) && above(device) != null;
    }

    private static boolean isEntryAlone(JoinedRows device) {
        String written = written(device);
        return device.positions().size() == 1
                && device.read().rating().isBlank()
                && device.read().poles().isEmpty()
                && !written.isEmpty()
                && UseText.of(written, false) == Use.LOAD;
    }

    /** The rated device above, over another such entry where it may have three poles; null where there is none. */
    private JoinedRows above(JoinedRows device) {
        JoinedRows above = at.get(device.positions().get(0) - step);
        if (above != null && isEntryAlone(above))
            above = at.get(device.positions().get(0) - 2 * step);
        boolean open = above != null
                && above.read().rating().isStated()
                && above.read().poles().isEmpty();
        return open ? above : null;
    }

    private boolean saysTooLittle(JoinedRows device) {
        String written = written(device);
        long letters = written.chars().filter(Character::isLetter).count();
        String same = written(above(device));
        return letters < FEWEST_LETTERS
                || TAKEN.matcher(written).matches()
                || often.get(written) > 1
                || !same.isEmpty() && written.startsWith(same)
                || written.length() <= LONGEST_REFERENCE && namesPosition(written, above(device));
    }

    private static boolean namesPosition(String written, JoinedRows above) {
        Matcher number = NUMBER.matcher(written);
        while (number.find())
            if (number.group().equals(String.valueOf(above.positions().get(0)))) return true;
        return false;
    }

    private static String written(JoinedRows device) {
        return Texts.upper(device.head().text(Role.DESCRIPTION));
    }
}
