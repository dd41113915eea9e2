package asfound.drawing.schedule.header;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.text.Field;
import asfound.drawing.schedule.text.Value;
import asfound.drawing.schedule.text.Values;
import asfound.model.Directory.Totals;
import asfound.model.Stated;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The sums that stand with a directory: of each phase, of all, and in amperes. */
final class PanelTotals {

    /** Sums differ from their total by no more, as a share of it. */
    private static final double ROUNDED = 0.001;

    private PanelTotals() {}

    /** Of several totals that which is the sum of the others: theirs are those of the phases. */
    static Optional<Value> sumOfOthers(List<Value> values) {
        List<Value> totals =
                values.stream().filter(v -> v.field() == Field.LOAD_TOTAL).toList();
        double all = totals.stream().mapToDouble(PanelTotals::figure).sum();
        return totals.size() < 3
                ? Optional.empty()
                : totals.stream()
                        .filter(v -> Math.abs(2 * figure(v) - all) < ROUNDED * all)
                        .findFirst();
    }

    private static double figure(Value v) {
        return Values.figure(v.text()).orElse(0.0);
    }

    /** @param values the best for each field */
    static Totals of(Sheet sheet, Map<Field, Value> values) {
        List<Stated<Double>> byPhase = new ArrayList<>();
        for (Field phase : List.of(Field.LOAD_A, Field.LOAD_B, Field.LOAD_C))
            byPhase.add(sum(sheet, values.get(phase)));
        while (!byPhase.isEmpty() && byPhase.get(byPhase.size() - 1).isBlank()) byPhase.remove(byPhase.size() - 1);
        return new Totals(byPhase, sum(sheet, values.get(Field.LOAD_TOTAL)), sum(sheet, values.get(Field.AMPERES)));
    }

    private static Stated<Double> sum(Sheet sheet, Value v) {
        if (v == null) return Stated.blank();
        return Values.figure(v.text())
                .map(figure -> Stated.of(figure, v.text(), sheet.place(v.box())))
                .orElse(Stated.blank());
    }
}
