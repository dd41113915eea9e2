package asfound.drawing.schedule.device;

import asfound.drawing.schedule.table.AcrossWays;
import asfound.model.Box;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Devices of three poles on a board that has a row for each way and its phases side by side: {@code 63 TP} stands under one phase,
 * and what it feeds under the same or another, in a cell across them all.
 */
final class DevicesAcross {

    private DevicesAcross() {}

    /** @param drafts of one panel, each under its phase; those of one device are put together */
    static void join(List<Draft> drafts) {
        for (Draft device : List.copyOf(drafts)) {
            if (device.poles() != AcrossWays.PHASES) continue;
            int first = (device.positions().get(0) - 1) / AcrossWays.PHASES * AcrossWays.PHASES + 1;
            List<Draft> others = drafts.stream()
                    .filter(d -> d != device && d.positions().get(0) >= first)
                    .filter(d -> d.positions().get(0) < first + AcrossWays.PHASES)
                    .toList();
            List<Draft> saying = others.stream().filter(d -> !d.saysNothing()).toList();
            Optional<Draft> told = told(device, saying);
            if (!saying.isEmpty() && told.isEmpty()) continue;
            drafts.removeAll(others);
            drafts.set(drafts.indexOf(device), whole(device, told.orElse(device), first));
        }
    }

    /** The one other text of the way, which says what the device feeds that says nothing of it. */
    private static Optional<Draft> told(Draft device, List<Draft> saying) {
        if (!device.description().isEmpty() || saying.size() != 1) return Optional.empty();
        Draft text = saying.get(0);
        return text.ratingA().isBlank() && !text.description().isEmpty() ? Optional.of(text) : Optional.empty();
    }

    private static Draft whole(Draft device, Draft told, int first) {
        Box box = device.box().union(told.box());
        return new Draft(
                IntStream.range(first, first + AcrossWays.PHASES).boxed().toList(),
                device.label(),
                AcrossWays.PHASES,
                device.ratingA(),
                told.description(),
                told.use(),
                device.loads(),
                box,
                device.trouble());
    }
}
