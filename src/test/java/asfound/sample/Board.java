package asfound.sample;

import asfound.model.EquipmentKind;
import java.util.ArrayList;
import java.util.List;

/** A piece of distribution equipment of a random building. */
final class Board {

    final String name;
    final EquipmentKind kind;
    final String voltage;
    final List<Slot> slots = new ArrayList<>();
    /** The device that feeds it as drawn; null for a source, and for what a transformer feeds without a device. */
    Slot parent;
    /** The transformer or transfer switch that feeds it without a device of its own. */
    Board behind;

    boolean drawn = true;
    /** In the building; its circuits can be traced. */
    boolean there = true;

    int bus = 400;
    Integer listedBus;
    /** The header's 'fed from' where it is not the truth. */
    String headerSays;

    boolean taken;
    boolean totalsWrong;
    boolean stale;
    /** Entries of it were exchanged or shifted; two such events that overlap may be told as one. */
    boolean rearranged;
    /** Something below feeds it; two such feeds are one finding more where their way down was not traced. */
    boolean looped;
    /** A second entry at a position that is taken. */
    final List<Slot> clashing = new ArrayList<>();

    Board(String name, EquipmentKind kind, String voltage) {
        this.name = name;
        this.kind = kind;
        this.voltage = voltage;
    }

    /** It has numbered positions and a schedule. */
    boolean hasSchedule() {
        return kind == EquipmentKind.PANEL || kind == EquipmentKind.SWITCHBOARD;
    }

    Slot at(int position) {
        return slots.stream()
                .filter(s -> s.positions.get(0) == position)
                .findFirst()
                .orElse(null);
    }
}
