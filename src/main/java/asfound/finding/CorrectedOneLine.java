package asfound.finding;

import asfound.model.CircuitRef;
import asfound.model.EquipmentKind;
import asfound.model.OneLine;
import asfound.model.OneLine.Feeder;
import asfound.model.OneLine.Listed;
import asfound.model.Place;
import asfound.model.Stated;
import asfound.model.Voltage;
import java.util.ArrayList;
import java.util.List;

/** The one-line's tables while corrections are made in them. */
final class CorrectedOneLine {

    private final List<Feeder> feeders;
    private final List<Listed> equipment;
    private int added;

    CorrectedOneLine(OneLine original) {
        feeders = new ArrayList<>(original.feeders());
        equipment = new ArrayList<>(original.equipment());
    }

    OneLine oneLine() {
        return new OneLine(feeders, equipment);
    }

    /** Makes a correction whose place is one of the rows, or that adds one; false where it is about something else. */
    boolean make(Correction c) {
        if (c.reads().isEmpty() && c.field() == Correction.Field.FEEDER_ROW) return add(c);
        if (c.reads().isEmpty() && c.field() == Correction.Field.EQUIPMENT_ROW) return addEquipment(c);
        for (int i = 0; i < feeders.size(); i++)
            if (feeders.get(i).place().equals(c.place())) {
                if (c.field() == Correction.Field.FEEDER_ROW) feeders.remove(i);
                else feeders.set(i, changed(feeders.get(i), c));
                return true;
            }
        for (int i = 0; i < equipment.size(); i++)
            if (equipment.get(i).place().equals(c.place())) {
                if (c.field() == Correction.Field.EQUIPMENT_ROW) equipment.remove(i);
                else equipment.set(i, changed(equipment.get(i), c));
                return true;
            }
        return false;
    }

    private static Feeder changed(Feeder f, Correction c) {
        String should = c.shouldRead();
        Place at = f.place();
        Stated<String> from = f.from(), to = f.to(), wire = f.wire();
        Stated<CircuitRef> device = f.device();
        Stated<Integer> rating = f.ratingA(), poles = f.poles();
        Stated<Voltage> voltage = f.voltage();
        switch (c.field()) {
            case FEEDER_FROM -> from = Stated.text(should, at);
            case FEEDER_DEVICE -> device = Stated.text(should, at).read(CircuitRef::parse);
            case FEEDER_TO -> to = Stated.text(should, at);
            case WIRE -> wire = Stated.text(should, at);
            case RATING -> rating = Stated.of(Integer.parseInt(should), should, at);
            case POLES -> poles = Stated.of(Integer.parseInt(should), should, at);
            case VOLTAGE -> voltage = Stated.text(should, at).read(Voltage::parse);
            default ->
                throw new IllegalArgumentException(
                        "a feeder has no " + c.field().word());
        }
        return new Feeder(
                from,
                device,
                to,
                rating,
                poles,
                voltage,
                wire,
                f.lengthFt(),
                f.normallyOpen(),
                f.tie(),
                f.sheet(),
                f.note(),
                at);
    }

    private static Listed changed(Listed e, Correction c) {
        String should = c.shouldRead();
        Place at = e.place();
        Stated<String> name = e.name(), fedFrom = e.fedFrom();
        switch (c.field()) {
            case DESIGNATION -> name = Stated.text(should, at);
            case FED_FROM -> fedFrom = Stated.text(should, at);
            default ->
                throw new IllegalArgumentException(
                        "listed equipment has no " + c.field().word());
        }
        return new Listed(
                name, e.kind(), e.voltage(), e.busA(), e.mainA(), fedFrom, e.location(), e.sheet(), e.note(), at);
    }

    /** From, device, to. */
    private boolean add(Correction c) {
        String[] row = c.shouldRead().split(",", -1);
        Place at = newRow(c, feeders.stream().map(Feeder::place).toList());
        return feeders.add(new Feeder(
                Stated.text(row[0], at),
                Stated.text(row[1], at).read(CircuitRef::parse),
                Stated.text(row[2], at),
                Stated.blank(at),
                Stated.blank(at),
                Stated.blank(at),
                Stated.blank(at),
                Stated.blank(at),
                false,
                false,
                "",
                "",
                at));
    }

    /** Name, and kind where it is known. */
    private boolean addEquipment(Correction c) {
        String[] row = c.shouldRead().split(",", -1);
        Place at = newRow(c, equipment.stream().map(Listed::place).toList());
        EquipmentKind kind = row.length < 2
                ? EquipmentKind.UNKNOWN
                : EquipmentKind.of(row[1]).orElse(EquipmentKind.UNKNOWN);
        return equipment.add(new Listed(
                Stated.text(row[0], at),
                kind,
                Stated.blank(at),
                Stated.blank(at),
                Stated.blank(at),
                Stated.blank(at),
                Stated.blank(at),
                "",
                "",
                at));
    }

    private Place newRow(Correction c, List<Place> rows) {
        int last = rows.stream().mapToInt(Place::rowNumber).max().orElse(1);
        return Place.row(c.place().file(), "added", last + ++added);
    }
}
