package asfound.drawing.schedule.header;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.phrase.Meanings;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.text.Field;
import asfound.drawing.schedule.text.Texts;
import asfound.drawing.schedule.text.Value;
import asfound.drawing.schedule.text.Values;
import asfound.model.Box;
import asfound.model.Directory.Header;
import asfound.model.Directory.Totals;
import asfound.model.Stated;
import asfound.recordset.Patience;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Puts together a header from what regions around a directory say; the first region that says a thing is believed. */
final class HeaderBuilder {

    private static final Pattern LOCATED =
            Pattern.compile("\\b(?:located(?: (?:in|at|on))?|location)\\s+([^,;]+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern FED = Pattern.compile(
            "(?:\\b(?:fed (?:from|by|via)|supplied (?:from|by)|feed(?:er)? from)|(?:^|[.,;•|]\\s+)from)\\s+([^,;]+)",
            Pattern.CASE_INSENSITIVE);

    /** The feeder's conductors, the kind of its system or the side on which it enters: no second supply. */
    private static final Pattern NO_SUPPLY =
            Pattern.compile("#|\\b\\d{3}\\s?V|\\bTN-?[CS]|^(?:top|bottom|side)\\b", Pattern.CASE_INSENSITIVE);

    private final Sheet sheet;
    private final Meanings meanings;
    private final PanelName name;
    private final MainDevice main;
    private final PanelSystem system;
    private final List<Value> unfit = new ArrayList<>();
    /** Lines that say of what they are. */
    private final List<NamedLine> lines = new ArrayList<>();

    /** What feeds the panel as well, by labels of their own. */
    private final List<Value> supplies = new ArrayList<>();

    private final Map<Field, Value> best = new EnumMap<>(Field.class);

    HeaderBuilder(Sheet sheet, Meanings meanings) {
        this.sheet = sheet;
        this.meanings = meanings;
        name = new PanelName(sheet, meanings);
        main = new MainDevice(sheet);
        system = new PanelSystem(sheet, meanings);
    }

    /** Takes in a region; {@code running} where values in running text count too. */
    void add(LabelReader.Labelled region, boolean running) {
        Map<Field, Value> here = new EnumMap<>(Field.class);
        Patience.check();
        for (Value v : region.values()) {
            boolean sure = v.field() != Field.DESIGNATION || v.weight() == LoneLabels.MARKED;
            if (!sure && isOfSupply(v.text(), v.box(), region)) continue;
            Value known = here.get(v.field());
            if (known == null || v.weight() > known.weight()) here.put(v.field(), v);
        }
        PanelTotals.sumOfOthers(region.values()).ifPresent(v -> here.put(Field.LOAD_TOTAL, v));
        if (running && !best.containsKey(Field.FED_FROM)) furtherSupplies(here.get(Field.FED_FROM), region.values());
        here.forEach(best::putIfAbsent);
        unfit.addAll(region.unfit());
        lines.addAll(region.lines());
        boolean named = isNamed();
        labelled(region.values());
        if (!running) {
            title(region);
            if (!named) behindName(region);
            return;
        }
        for (Value v : region.values())
            if (v.field().isKept() && !v.field().isTotal()) loose(v.text(), v.box(), v.field());
        title(region);
        if (!named) behindName(region);
        Set<Box> faults = faultCurrents(region.values());
        for (Phrase p : region.loose())
            loose(p.text(), p.box(), faults.contains(p.box()) ? Field.FAULT_CURRENT : Field.OTHER);
        if (!best.containsKey(Field.LOCATION)) UnlabelledPlace.in(region).ifPresent(v -> best.put(Field.LOCATION, v));
    }

    /** {@code NORMAL SOURCE: MDP-6} beside {@code EMERGENCY SOURCE: EDP-1}: who opens the one has not opened the other. */
    private void furtherSupplies(Value first, List<Value> values) {
        for (Value v : values)
            if (v.field() == Field.FED_FROM
                    && v.weight() == first.weight()
                    && !isAlike(v.text(), first.text())
                    && !NO_SUPPLY.matcher(v.text()).find()) supplies.add(v);
    }

    private static boolean isAlike(String a, String b) {
        String x = Texts.upper(a), y = Texts.upper(b);
        return x.contains(y) || y.contains(x);
    }

    private static Set<Box> faultCurrents(List<Value> values) {
        return values.stream()
                .filter(v -> v.field() == Field.FAULT_CURRENT)
                .map(Value::box)
                .collect(Collectors.toSet());
    }

    /** Takes the name from the last of the lines over a directory that stand as a title, where nothing else names the panel. */
    void titleLine(LabelReader.Labelled above) {
        if (isNamed()) return;
        for (NamedLine line : above.lines()) if (line.title()) name.line(line);
    }

    /** Takes in what the lines say that are of this panel; where nothing names it, it is not known that they are not. */
    void ownLines() {
        Optional<String> own = name.stated().value();
        for (NamedLine line : lines) {
            if (own.isPresent() && !line.isOf(own.get())) continue;
            line.values().forEach(v -> best.putIfAbsent(v.field(), v));
            line.rest().forEach(p -> loose(p.text(), p.box(), Field.OTHER));
        }
    }

    /** The name that is believed says where its panel stands, if no label does. */
    private void behindName(LabelReader.Labelled region) {
        if (isNamed() && !best.containsKey(Field.LOCATION))
            UnlabelledPlace.behindName(region, name.stated().value().orElseThrow())
                    .ifPresent(v -> best.put(Field.LOCATION, v));
    }

    /** Takes the name from the title nearest to the directory, though its first words be a label: {@code PANEL: L2A}. */
    void titleAbove(LabelReader.Labelled region) {
        name.nearest(region);
        title(region);
        behindName(region);
    }

    /** Takes the name from a title, but not from what feeds the panel; or else from a label that does not say of what it is. */
    private void title(LabelReader.Labelled region) {
        region.loose().stream()
                .filter(p -> !isOfSupply(p.text(), p.box(), region))
                .forEach(this::title);
        known(Field.DESIGNATION).ifPresent(name::labelled);
    }

    /** {@code Panel ELS/1} in the cell under {@code Source}. */
    private static boolean isOfSupply(String name, Box box, LabelReader.Labelled region) {
        return region.values().stream()
                .anyMatch(v -> v.field() == Field.FED_FROM
                        && v.box().equals(box)
                        && v.text().contains(Texts.bare(name)));
    }

    /** Takes the name from a text where it is a title, and nothing else has named the panel. */
    void title(Phrase p) {
        name.title(p);
    }

    /** Takes the name from a heading that is nothing else. */
    void heading(Phrase p) {
        name.heading(p);
    }

    /** Where nothing else names the panel: a name that stands alone. */
    void loneName(LabelReader.Labelled region) {
        name.alone(region);
    }

    /** Where nothing else names the panel: a name beside a title over the directory, though its header be elsewhere. */
    void nameBesideTitle(LabelReader.Labelled above) {
        name.besideTitle(above);
    }

    private void labelled(List<Value> values) {
        known(Field.DESIGNATION).filter(v -> v.weight() > LoneLabels.UNSURE).ifPresent(name::labelled);
        known(Field.BUS).ifPresent(main::bus);
        main.labelled(values);
        system.labelled(best);
    }

    private Optional<Value> known(Field field) {
        return Optional.ofNullable(best.get(field));
    }

    /** What stands behind a label and was not understood, where the value is found nowhere else: it is kept as written. */
    List<Value> unread() {
        List<Value> out = new ArrayList<>(supplies);
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
            case VOLTAGE, PHASES, WIRES, INTERRUPTING -> system.isBlank(field);
            case BUS, MAIN, MAINS_RATING -> main.isBlank(field);
            case LOCATION, FED_FROM, POSITIONS -> !best.containsKey(field);
            default -> false;
        };
    }

    private void keep(Value v) {
        switch (v.field()) {
            case VOLTAGE, PHASES, WIRES, INTERRUPTING -> system.unreadable(v);
            case BUS, MAIN, MAINS_RATING -> main.unreadable(v);
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
        return name.stated().isStated();
    }

    /** What a text says of the panel without a label. */
    private void loose(String text, Box box, Field under) {
        system.loose(text, box, under);
        main.loose(text, box);
        if (best.get(Field.LOCATION) == null) after(text, box, Field.LOCATION, LOCATED);
        if (best.get(Field.FED_FROM) == null) after(text, box, Field.FED_FROM, FED);
    }

    private void after(String text, Box box, Field field, Pattern words) {
        Matcher m = words.matcher(text);
        if (m.find()) best.put(field, new Value(field, m.group(1).strip(), box, 1));
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
                name.stated(),
                place(Field.LOCATION),
                place(Field.FED_FROM),
                system.voltage(),
                system.phases(),
                system.wires(),
                main.busA(),
                main.ratingA(),
                main.mains(),
                system.interruptingKA(),
                text(Field.MOUNTING));
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
        return PanelTotals.of(sheet, best);
    }
}
