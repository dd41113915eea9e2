package asfound.isolation;

import asfound.model.EquipmentKind;
import asfound.network.Building;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;

/**
 * A small random building as rows, so that rows can be added, renamed or put in another order before it is built: a service
 * or two, boards, a transfer switch, a UPS, an inverter, ties, connections without devices, and a survey that now and then
 * finds something else.
 */
public final class RandomBuilding {

    record Feeder(String from, String device, String to, boolean tie) {}

    record Seen(
            String panel,
            String circuit,
            String relation,
            String found,
            EquipmentKind kind,
            String method,
            String day) {}

    record Named(String name, EquipmentKind kind) {}

    final List<Named> equipment = new ArrayList<>();
    final List<Feeder> feeders = new ArrayList<>();
    final List<Seen> survey = new ArrayList<>();
    final List<String> modified = new ArrayList<>();
    private final Random random;

    public RandomBuilding(long seed) {
        random = new Random(seed);
        int boards = 2 + random.nextInt(4);
        add("UTIL-1", EquipmentKind.UTILITY);
        if (chance(0.35)) add("UTIL-2", EquipmentKind.UTILITY);
        for (int i = 1; i <= boards; i++) add("BD-" + i, i == 1 ? EquipmentKind.SWITCHBOARD : EquipmentKind.PANEL);
        if (chance(0.3)) add("GEN-1", EquipmentKind.GENERATOR);
        if (chance(0.3)) add("ATS-1", EquipmentKind.TRANSFER_SWITCH);
        if (chance(0.2)) add("UPS-1", EquipmentKind.UPS);
        if (chance(0.2)) add("T-1", EquipmentKind.TRANSFORMER);
        draw();
        walk();
        if (chance(0.15)) modified.add(pick(equipment).name());
    }

    private boolean chance(double share) {
        return random.nextDouble() < share;
    }

    private <T> T pick(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private void add(String name, EquipmentKind kind) {
        equipment.add(new Named(name, kind));
    }

    private void draw() {
        for (Named e : equipment) {
            if (e.kind().isPureSource()) continue;
            int inputs = e.kind() == EquipmentKind.TRANSFER_SWITCH || chance(0.2) ? 2 : chance(0.06) ? 0 : 1;
            for (int i = 0; i < inputs; i++) {
                Named from = pick(equipment);
                if (from != e) feeders.add(new Feeder(from.name(), device(), e.name(), false));
            }
        }
        if (chance(0.25)) feeders.add(new Feeder("BD-1", device(), "BD-2", true));
        if (chance(0.25)) {
            add("INV-1", EquipmentKind.INVERTER);
            feeders.add(
                    new Feeder("INV-1", device(), pick(equipment.subList(1, 3)).name(), false));
        }
        while (feeders.size() > 9) feeders.remove(random.nextInt(feeders.size()));
    }

    private String device() {
        return chance(0.12) ? "" : String.valueOf(1 + random.nextInt(4));
    }

    private void walk() {
        for (Feeder f : feeders) {
            if (chance(0.65)) see(f.from(), f.device(), "feeds", f.to());
            else if (chance(0.25))
                see(f.from(), f.device(), "feeds", pick(equipment).name());
            else if (chance(0.1)) see(f.from(), f.device(), "nothing", "");
            else if (chance(0.1)) see(f.from(), f.device(), "does not feed", f.to());
            if (chance(0.06)) see(f.from(), f.device(), "nothing", "");
            if (chance(0.06)) see(f.to(), device(), "fed by", f.from());
        }
        if (chance(0.3))
            see(pick(equipment).name(), device(), "feeds", pick(equipment).name());
        if (chance(0.1)) see(pick(equipment).name(), device(), "feeds", "BD-9");
    }

    private void see(String panel, String circuit, String relation, String found) {
        if (panel.equals(found)) return;
        EquipmentKind kind = found.equals("BD-9") ? EquipmentKind.PANEL : EquipmentKind.UNKNOWN;
        String method = chance(0.08) ? "label" : "tone";
        survey.add(new Seen(panel, circuit, relation, found, kind, method, chance(0.15) ? "2023-01-01" : "2024-06-01"));
    }

    /** A row of a person who opened the device, later than all others. */
    static Seen opened(String panel, String circuit, String relation, String found) {
        return new Seen(panel, circuit, relation, found, EquipmentKind.UNKNOWN, "opened", "2024-06-02");
    }

    /** The same rows in another order. */
    void shuffle(long seed) {
        Random order = new Random(seed);
        Collections.shuffle(equipment, order);
        Collections.shuffle(feeders, order);
        Collections.shuffle(survey, order);
    }

    public Building build() {
        return build(UnaryOperator.identity());
    }

    /** The building with every name changed. */
    Building build(UnaryOperator<String> name) {
        Building b = new Building();
        equipment.forEach(e -> b.equipment(name.apply(e.name()), e.kind()));
        feeders.forEach(f -> b.feeder(name.apply(f.from()), f.device(), name.apply(f.to()), f.tie(), f.tie()));
        for (Seen s : survey)
            b.saw(
                    name.apply(s.panel()),
                    s.circuit(),
                    s.relation(),
                    s.found().isEmpty() ? "" : name.apply(s.found()),
                    s.kind(),
                    s.method(),
                    s.day());
        modified.forEach(m -> b.modified(name.apply(m), "2024-01-01"));
        return b;
    }
}
