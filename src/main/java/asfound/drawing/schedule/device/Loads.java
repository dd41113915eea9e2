package asfound.drawing.schedule.device;

import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.row.Row;
import asfound.drawing.schedule.table.Side;
import asfound.drawing.schedule.text.Headings;
import asfound.drawing.schedule.text.LoadText;
import asfound.drawing.schedule.text.Role;
import asfound.drawing.schedule.text.Texts;
import asfound.model.Stated;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** The loads of a side's rows, in the unit that its columns give. */
final class Loads {

    private static final Role[] BY_PHASE = {Role.LOAD_A, Role.LOAD_B, Role.LOAD_C};

    private static final Pattern KILO = Pattern.compile(" (kva|kw) ");
    private static final Pattern PLAIN = Pattern.compile(" (va|w|watts) ");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("\\d+,\\d{1,2}");
    private static final Pattern PLUS = Pattern.compile(" \\+ ");
    private static final Pattern PER_POLE = Pattern.compile(" (pole|per|ea|each) ");

    private final boolean thousands;
    private final boolean perPole;
    private final boolean byPhase;

    private Loads(boolean thousands, boolean perPole, boolean byPhase) {
        this.thousands = thousands;
        this.perPole = perPole;
        this.byPhase = byPhase;
    }

    /** @param unit what the sheet says of the unit of all loads; empty where nothing */
    static Loads of(Side side, String unit) {
        List<Column> columns = side.roles().entrySet().stream()
                .filter(e -> e.getKey().isLoad())
                .map(java.util.Map.Entry::getValue)
                .toList();
        boolean kilo = false, plain = false, perPole = false, decimals = false;
        double highest = 0;
        for (Column c : columns) {
            String head = " " + Headings.plain(c.heading()) + " ";
            kilo |= KILO.matcher(head).find();
            plain |= PLAIN.matcher(head).find();
            perPole |= PER_POLE.matcher(head).find() && !head.contains("total");
            for (String t : c.texts()) {
                decimals |= t.indexOf('.') > 0 || DECIMAL_COMMA.matcher(t).matches();
                highest = Math.max(highest, LoadText.parse(t, true).orElse(0.0) / 1000);
            }
        }
        boolean told = kilo || plain;
        boolean thousands = told ? kilo : unit.equals("kVA") || decimals && highest < 200;
        boolean phases = side.roles().keySet().stream().anyMatch(Role::isPhaseLoad);
        return new Loads(thousands, perPole, phases);
    }

    boolean isBlank(Row row) {
        for (Role role : Role.values()) if (role.isLoad() && !row.saysNothing(role)) return false;
        return true;
    }

    /** The load of a device over its rows: by phase where the columns are, else one sum. */
    List<Stated<Double>> of(List<Row> rows, int poles) {
        if (!byPhase) {
            Stated<Double> sum = sum(rows, Role.LOAD);
            long printed = rows.stream().filter(r -> !r.saysNothing(Role.LOAD)).count();
            if (perPole && poles > 1 && printed == 1 && sum.isStated())
                sum = Stated.of(sum.or(0.0) * poles, sum.raw(), null);
            return sum.isBlank() ? List.of() : List.of(sum);
        }
        List<Stated<Double>> out = new ArrayList<>();
        for (Role phase : BY_PHASE) out.add(sum(rows, phase));
        if (out.stream().allMatch(Stated::isBlank)) {
            Stated<Double> total = sum(rows, Role.LOAD);
            return total.isBlank() ? List.of() : List.of(total);
        }
        return out;
    }

    private Stated<Double> sum(List<Row> rows, Role role) {
        double sum = 0;
        String raw = "";
        for (Row row : rows) {
            String text = row.text(role);
            if (Texts.saysNothing(text)) continue;
            raw = raw.isEmpty() ? text : raw + " + " + text;
            // by their kinds a row has several
            for (String figure : text.indexOf('+') < 0 ? new String[] {text} : PLUS.split(text)) {
                Optional<Double> load = LoadText.parse(figure, thousands);
                if (load.isEmpty()) return Stated.unreadable(raw, null);
                sum += load.get();
            }
        }
        return raw.isEmpty() ? Stated.blank() : Stated.of(sum, raw, null);
    }
}
