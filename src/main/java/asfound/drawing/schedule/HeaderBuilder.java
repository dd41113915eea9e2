package asfound.drawing.schedule;

import asfound.drawing.page.Sheet;
import asfound.model.Box;
import asfound.model.Directory.Header;
import asfound.model.Directory.Mains;
import asfound.model.Directory.Totals;
import asfound.model.Place;
import asfound.model.Stated;
import asfound.model.Voltage;
import asfound.recordset.Patience;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Puts together a header from what regions around a directory say; the first region that says a thing is believed. */
final class HeaderBuilder {

    private static final Pattern NO = Pattern.compile("no|none|n/?a|-", Pattern.CASE_INSENSITIVE);
    private static final Pattern NONE = Pattern.compile("none|n/?a", Pattern.CASE_INSENSITIVE);
    private static final Pattern KILOAMPERES = Pattern.compile("k\\.?a|aic|a\\.i\\.c", Pattern.CASE_INSENSITIVE);
    /** The fault current that a tester measured, which is no rating. */
    private static final Pattern PROSPECTIVE =
            Pattern.compile("\\b(?:Ipf|Ipscc?|PSCC?|PFC)\\b[\\s:=]*[\\d.,]+\\s*(?:kA)?", Pattern.CASE_INSENSITIVE);

    private static final Pattern LUGS =
            Pattern.compile("\\bM\\.?L\\.?O\\b|MAIN LUGS|LUGS ONLY", Pattern.CASE_INSENSITIVE);
    private static final Pattern LOCATED =
            Pattern.compile("\\b(?:located (?:in|at)|location)\\s+([^,;]+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern FED = Pattern.compile(
            "(?:\\b(?:fed (?:from|by|via)|supplied (?:from|by)|feed(?:er)? from)|(?:^|[.,;•|]\\s+)from)\\s+([^,;]+)",
            Pattern.CASE_INSENSITIVE);

    private final Sheet sheet;
    private final List<Value> unfit = new ArrayList<>();
    private final Map<Field, Value> best = new EnumMap<>(Field.class);
    private Stated<String> designation = Stated.blank();
    private Stated<Voltage> voltage = Stated.blank();
    private Stated<Integer> phases = Stated.blank();
    private Stated<Integer> wires = Stated.blank();
    private Stated<Integer> bus = Stated.blank();
    private Stated<Integer> main = Stated.blank();
    private Stated<Mains> mains = Stated.blank();
    private Stated<Double> interrupting = Stated.blank();

    HeaderBuilder(Sheet sheet) {
        this.sheet = sheet;
    }

    /** Takes in a region; {@code running} where values in running text count too. */
    void add(LabelReader.Labelled region, boolean running) {
        Map<Field, Value> here = new EnumMap<>(Field.class);
        Patience.check();
        for (Value v : region.values()) {
            Value known = here.get(v.field());
            if (known == null || v.weight() > known.weight()) here.put(v.field(), v);
        }
        here.forEach(best::putIfAbsent);
        unfit.addAll(region.unfit());
        labelled(region.values());
        if (!running) {
            title(region);
            return;
        }
        for (Value v : region.values())
            if (v.field() != Field.OTHER && !v.field().isTotal()) loose(v.text(), v.box(), v.field());
        title(region);
        for (Phrase p : region.loose()) {
            loose(p.text(), p.box(), Field.OTHER);
        }
    }

    /** Takes the name from the title nearest to the directory, though its first words be a label: {@code PANEL: L2A}. */
    void titleAbove(LabelReader.Labelled region) {
        if (designation.isBlank()) designation = nearest(region).orElse(designation);
        title(region);
    }

    private Optional<Stated<String>> nearest(LabelReader.Labelled region) {
        return region.values().stream()
                .filter(v -> v.field() == Field.DESIGNATION)
                .max(Comparator.comparingDouble(v -> v.box().y()))
                .map(v -> Stated.of(Values.name(v.text()), v.text(), sheet.place(v.box())));
    }

    /** Takes the name from a title. */
    private void title(LabelReader.Labelled region) {
        region.loose().forEach(this::title);
    }

    /** Takes the name from a text where it is a title, and nothing else has named the panel. */
    void title(Phrase p) {
        if (designation.isBlank())
            Titles.nameIn(p.text()).ifPresent(n -> designation = Stated.of(n, p.text(), sheet.place(p.box())));
    }

    /** Where nothing else names the panel: a name that stands alone. */
    void loneName(LabelReader.Labelled region) {
        if (designation.isBlank())
            LoneName.in(region).ifPresent(p -> designation = Stated.of(p.text(), p.text(), sheet.place(p.box())));
    }

    private void labelled(List<Value> values) {
        Value name = best.get(Field.DESIGNATION);
        if (designation.isBlank() && name != null)
            designation = Stated.of(Values.name(name.text()), name.text(), sheet.place(name.box()));
        voltage = first(voltage, Field.VOLTAGE, t -> Values.voltageOf(t).flatMap(Voltage::parse));
        phases = first(phases, Field.PHASES, t -> Values.phases(t, true));
        wires = first(wires, Field.WIRES, t -> Values.wires(t, true));
        phases = first(phases, Field.PHASE_WIRE, t -> digits(t, 0));
        wires = first(wires, Field.PHASE_WIRE, t -> digits(t, 1));
        phases = first(phases, Field.VOLTAGE, t -> Values.behindVoltage(t, false));
        wires = first(wires, Field.VOLTAGE, t -> Values.behindVoltage(t, true));
        bus = first(bus, Field.BUS, Values::amps);
        interrupting = first(interrupting, Field.INTERRUPTING, Values::kiloamperes);
        // Within a region 'main lugs' overrides a rating; what another region says of mains (a legend below) does not.
        if (mains.isBlank())
            for (Value v : values) if (v.field() == Field.MAIN || v.field() == Field.MAIN_LUGS) main(v);
        for (Value v : values) if (v.field() == Field.MAINS_RATING) mainsRating(v);
    }

    private static Optional<Integer> digits(String text, int which) {
        List<Integer> found = new ArrayList<>();
        for (char c : text.toCharArray()) if (Character.isDigit(c)) found.add(c - '0');
        return found.size() > which ? Optional.of(found.get(which)) : Optional.empty();
    }

    private void main(Value v) {
        boolean lugs = v.field() == Field.MAIN_LUGS && !NO.matcher(v.text()).matches()
                || Values.mains(v.text()).filter(m -> m == Mains.LUGS).isPresent()
                || NONE.matcher(v.text()).matches();
        if (lugs) {
            mains = Stated.of(Mains.LUGS, v.text(), sheet.place(v.box()));
            main = Stated.blank();
            return;
        }
        if (v.field() == Field.MAIN_LUGS) return;
        Optional<Integer> amps = Values.mainOf(v.text()).or(() -> Values.amps(v.text()));
        boolean isLugs = mains.value().filter(m -> m == Mains.LUGS).isPresent();
        if (isLugs) return;
        if (amps.isPresent() && main.isBlank()) main = Stated.of(amps.get(), v.text(), sheet.place(v.box()));
        if (mains.isBlank() && (Values.mains(v.text()).isPresent() || amps.isPresent()))
            mains = Stated.of(Mains.BREAKER, v.text(), sheet.place(v.box()));
    }

    /** Where the main breaker has a rating of its own, or the mains are lugs, the mains are rated as the bus is. */
    private void mainsRating(Value v) {
        boolean lugs = mains.value().filter(m -> m == Mains.LUGS).isPresent();
        if (!lugs && main.isBlank()) main(v);
        else if (bus.isBlank()) bus = stated(Values.amps(v.text()), v.text(), v.box());
    }

    /** What stands behind a label and was not understood, where the value is found nowhere else: it is kept as written. */
    List<Value> unread() {
        List<Value> out = new ArrayList<>();
        Set<Field> done = EnumSet.noneOf(Field.class);
        for (Value v : unfit)
            if (!Values.isNothing(v.text()) && isBlank(v.field()) && done.add(v.field())) {
                out.add(v);
                keep(v);
            }
        return out;
    }

    private boolean isBlank(Field field) {
        return switch (field) {
            case VOLTAGE -> voltage.isBlank();
            case PHASES -> phases.isBlank();
            case WIRES -> wires.isBlank();
            case BUS -> bus.isBlank();
            case MAIN, MAINS_RATING -> main.isBlank() && mains.isBlank();
            case INTERRUPTING -> interrupting.isBlank();
            case LOCATION, FED_FROM, POSITIONS -> !best.containsKey(field);
            default -> false;
        };
    }

    private void keep(Value v) {
        Place where = sheet.place(v.box());
        switch (v.field()) {
            case VOLTAGE -> voltage = Stated.unreadable(v.text(), where);
            case PHASES -> phases = Stated.unreadable(v.text(), where);
            case WIRES -> wires = Stated.unreadable(v.text(), where);
            case BUS -> bus = Stated.unreadable(v.text(), where);
            case MAIN, MAINS_RATING -> main = Stated.unreadable(v.text(), where);
            case INTERRUPTING -> interrupting = Stated.unreadable(v.text(), where);
            case LOCATION, FED_FROM -> best.put(v.field(), v);
            default -> {}
        }
    }

    /** How many positions the panel is said to have. */
    OptionalInt positions() {
        Value v = best.get(Field.POSITIONS);
        return v == null
                ? OptionalInt.empty()
                : Values.positions(v.text()).map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    boolean isNamed() {
        return designation.isStated();
    }

    /** What a text says of the panel without a label. */
    private void loose(String text, Box box, Field under) {
        if (voltage.isBlank())
            voltage = stated(
                    Values.voltageOf(text)
                            .filter(Values::isSystem)
                            .filter(v -> under != Field.OTHER || isWritten(v))
                            .flatMap(Voltage::parse),
                    text,
                    box);
        if (phases.isBlank()) phases = stated(Values.phases(text, false), text, box);
        if (wires.isBlank()) wires = stated(Values.wires(text, false), text, box);
        if (bus.isBlank()) bus = stated(Values.busOf(text), text, box);
        String rated = PROSPECTIVE.matcher(text).replaceAll("");
        if (interrupting.isBlank() && KILOAMPERES.matcher(rated).find())
            interrupting = stated(Values.kiloamperes(rated), text, box);
        boolean lugs = mains.value().filter(m -> m == Mains.LUGS).isPresent();
        if (main.isBlank() && !lugs) {
            main = stated(Values.mainOf(text), text, box);
            if (!main.isBlank() && mains.isBlank()) mains = Stated.of(Mains.BREAKER, text, sheet.place(box));
        }
        if (mains.isBlank() && LUGS.matcher(text).find()) mains = Stated.of(Mains.LUGS, text, sheet.place(box));
        if (best.get(Field.LOCATION) == null) after(text, box, Field.LOCATION, LOCATED);
        if (best.get(Field.FED_FROM) == null) after(text, box, Field.FED_FROM, FED);
    }

    private void after(String text, Box box, Field field, Pattern words) {
        Matcher m = words.matcher(text);
        if (m.find()) best.put(field, new Value(field, m.group(1).strip(), box, 1));
    }

    /** With its unit or as two voltages of one system. */
    private static boolean isWritten(String voltage) {
        return voltage.indexOf('v') >= 0 || voltage.indexOf('V') >= 0 || voltage.indexOf('/') >= 0;
    }

    private <T> Stated<T> stated(Optional<T> value, String text, Box box) {
        return value.map(v -> Stated.of(v, text, sheet.place(box))).orElse(Stated.blank());
    }

    private <T> Stated<T> first(Stated<T> known, Field field, Function<String, Optional<T>> reading) {
        Value v = best.get(field);
        if (!known.isBlank() || v == null) return known;
        return stated(reading.apply(v.text()), v.text(), v.box());
    }

    /** How many different things are known. */
    int known() {
        Header h = header();
        int n = 0;
        for (Stated<?> s : List.of(
                h.designation(),
                h.location(),
                h.fedFrom(),
                h.voltage(),
                h.phases(),
                h.wires(),
                h.busA(),
                h.mains(),
                h.interruptingKA())) if (s.isStated()) n++;
        return n;
    }

    Header header() {
        return new Header(
                designation,
                place(Field.LOCATION),
                place(Field.FED_FROM),
                voltage,
                phases,
                wires,
                busOrLugs(),
                main,
                mains,
                interrupting,
                text(Field.MOUNTING));
    }

    /** Where no bus is named, main lugs are rated as it is. */
    private Stated<Integer> busOrLugs() {
        boolean lugs = mains.value().filter(m -> m == Mains.LUGS).isPresent();
        if (!bus.isBlank() || !lugs) return bus;
        return Values.lugsOf(mains.raw())
                .map(a -> new Stated<>(Optional.of(a), mains.raw(), mains.place()))
                .orElse(bus);
    }

    /** In running text what follows a place is no part of it. */
    private Stated<String> place(Field field) {
        Stated<String> whole = text(field);
        return whole.value()
                .map(v -> new Stated<>(Optional.of(Values.sentence(v)), whole.raw(), whole.place()))
                .orElse(whole);
    }

    private Stated<String> text(Field field) {
        Value v = best.get(field);
        return v == null ? Stated.blank() : Stated.text(v.text(), sheet.place(v.box()));
    }

    Totals totals() {
        List<Stated<Double>> byPhase =
                new ArrayList<>(List.of(sum(Field.LOAD_A), sum(Field.LOAD_B), sum(Field.LOAD_C)));
        while (!byPhase.isEmpty() && byPhase.get(byPhase.size() - 1).isBlank()) byPhase.remove(byPhase.size() - 1);
        return new Totals(byPhase, sum(Field.LOAD_TOTAL), sum(Field.AMPERES));
    }

    private Stated<Double> sum(Field field) {
        Value v = best.get(field);
        return v == null ? Stated.blank() : stated(Values.figure(v.text()), v.text(), v.box());
    }
}
