package asfound.drawing.schedule.header;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.phrase.Meanings;
import asfound.drawing.schedule.text.Field;
import asfound.drawing.schedule.text.RatingText;
import asfound.drawing.schedule.text.SystemText;
import asfound.drawing.schedule.text.Texts;
import asfound.drawing.schedule.text.Value;
import asfound.model.Box;
import asfound.model.Place;
import asfound.model.Stated;
import asfound.model.Voltage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/** The system of a panel, its voltage, phases and wires, and the fault current that its devices interrupt; what is said first is believed. */
final class PanelSystem {

    private static final Pattern KILOAMPERES = Pattern.compile(
            "k\\.?a|aic|a\\.i\\.c|amperes? (?:rms|sym)|(?:rms|sym)\\S*\\s+a(?:mp|\\b)", Pattern.CASE_INSENSITIVE);
    /** The fault current that a tester measured, which is no rating. */
    private static final Pattern PROSPECTIVE = Pattern.compile(
            "\\b(?:Ipf|Ipscc?|PSCC?|PFC|(?:prospective|available|max(?:imum)?)\\s+(?:short[ -]circuit|fault)\\s+current)\\b[^\\d,;]{0,12}[\\d.,]+\\s*(?:kA)?",
            Pattern.CASE_INSENSITIVE);

    private final Sheet sheet;
    private final Meanings meanings;
    private Stated<Voltage> voltage = Stated.blank();
    private Stated<Integer> phases = Stated.blank();
    private Stated<Integer> wires = Stated.blank();
    private Stated<Double> interrupting = Stated.blank();

    PanelSystem(Sheet sheet, Meanings meanings) {
        this.sheet = sheet;
        this.meanings = meanings;
    }

    /**
     * What stands behind labels.
     *
     * @param values the best for each field
     */
    void labelled(Map<Field, Value> values) {
        voltage = first(
                values, voltage, Field.VOLTAGE, t -> SystemText.voltageOf(t).flatMap(Voltage::parse));
        phases = first(values, phases, Field.PHASES, t -> SystemText.phases(t, true));
        wires = first(values, wires, Field.WIRES, t -> SystemText.wires(t, true));
        phases = first(values, phases, Field.PHASE_WIRE, t -> digits(t, 0));
        wires = first(values, wires, Field.PHASE_WIRE, t -> digits(t, 1));
        phases = first(values, phases, Field.VOLTAGE, t -> SystemText.behindVoltage(t, false));
        wires = first(values, wires, Field.VOLTAGE, t -> SystemText.behindVoltage(t, true));
        interrupting = first(values, interrupting, Field.INTERRUPTING, RatingText::kiloamperes);
    }

    private static Optional<Integer> digits(String text, int which) {
        List<Integer> found = new ArrayList<>();
        for (char c : text.toCharArray()) if (Character.isDigit(c)) found.add(c - '0');
        return found.size() > which ? Optional.of(found.get(which)) : Optional.empty();
    }

    /** What a text says without a label. */
    void loose(String text, Box box, Field under) {
        if (voltage.isBlank())
            voltage = stated(
                    meanings.voltage(text)
                            .filter(SystemText::isSystem)
                            // the bus of 100 A is no system of 100 V
                            .filter(v -> under == Field.VOLTAGE || isWritten(v))
                            .flatMap(Voltage::parse),
                    text,
                    box);
        if (phases.isBlank()) phases = stated(meanings.phases(text), text, box);
        if (wires.isBlank() && !isPlaceAlone(text, under)) wires = stated(meanings.wires(text), text, box);
        if (interrupting.isBlank() && under != Field.FAULT_CURRENT && Texts.hasFigure(text)) {
            String rated = PROSPECTIVE.matcher(text).replaceAll("");
            if (KILOAMPERES.matcher(rated).find()) interrupting = stated(RatingText.kiloamperes(rated), text, box);
        }
    }

    /** {@code Linen 5W}: a place or a supply of which neither voltage nor phases are told is no number of wires. */
    private boolean isPlaceAlone(String text, Field under) {
        boolean place = under == Field.LOCATION || under == Field.FED_FROM || under == Field.DESIGNATION;
        return place
                && meanings.phases(text).isEmpty()
                && meanings.voltage(text).isEmpty();
    }

    /** With its unit or as two voltages of one system. */
    private static boolean isWritten(String voltage) {
        return voltage.indexOf('v') >= 0 || voltage.indexOf('V') >= 0 || voltage.indexOf('/') >= 0;
    }

    private <T> Stated<T> stated(Optional<T> value, String text, Box box) {
        return value.map(v -> Stated.of(v, text, sheet.place(box))).orElse(Stated.blank());
    }

    private <T> Stated<T> first(
            Map<Field, Value> values, Stated<T> known, Field field, Function<String, Optional<T>> reading) {
        Value v = values.get(field);
        if (!known.isBlank() || v == null) return known;
        return stated(reading.apply(v.text()), v.text(), v.box());
    }

    boolean isBlank(Field field) {
        return switch (field) {
            case VOLTAGE -> voltage.isBlank();
            case PHASES -> phases.isBlank();
            case WIRES -> wires.isBlank();
            case INTERRUPTING -> interrupting.isBlank();
            default -> false;
        };
    }

    /** It stands behind its label, and nobody understands it. */
    void unreadable(Value v) {
        Place where = sheet.place(v.box());
        switch (v.field()) {
            case VOLTAGE -> voltage = Stated.unreadable(v.text(), where);
            case PHASES -> phases = Stated.unreadable(v.text(), where);
            case WIRES -> wires = Stated.unreadable(v.text(), where);
            case INTERRUPTING -> interrupting = Stated.unreadable(v.text(), where);
            default -> {}
        }
    }

    Stated<Voltage> voltage() {
        return voltage;
    }

    Stated<Integer> phases() {
        return phases;
    }

    Stated<Integer> wires() {
        return wires;
    }

    Stated<Double> interruptingKA() {
        return interrupting;
    }
}
