package asfound.bench;

import asfound.model.EquipmentKind;
import asfound.network.Connection;
import asfound.network.Connection.Flow;
import asfound.network.Device;
import asfound.network.Equipment;
import asfound.network.Network;
import asfound.network.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Made-up campuses of any size and of three shapes; 80 % traced as drawn, one connection in a hundred found elsewhere. */
final class Campus {

    /** How supply is laid out. */
    enum Shape {
        /** One service, panels below panels. */
        TREE,
        /** Many double-ended boards with ties, generators and transfer switches; panels below them. */
        DOUBLE_ENDED,
        /** Blocks of boards tied in grids, each block fed by three services; panels below them. */
        MESHED
    }

    private final List<Equipment> equipment = new ArrayList<>();
    private final List<Connection> connections = new ArrayList<>();
    private final Random random = new Random(7);
    private int devices;

    private Campus() {}

    static Network of(Shape shape, int devices) {
        Campus c = new Campus();
        switch (shape) {
            case TREE -> c.panelsBelow(List.of(c.add("MDP", EquipmentKind.SWITCHBOARD, "UTIL")), devices);
            case DOUBLE_ENDED -> {
                for (int b = 0; c.devices < devices; b++) c.doubleEnded(b, Math.min(1000, devices - c.devices));
            }
            case MESHED -> {
                for (int b = 0; c.devices < devices; b++) c.block(b, Math.min(1000, devices - c.devices));
            }
        }
        return new Network(c.equipment, c.connections, List.of(), List.of());
    }

    private String add(String name, EquipmentKind kind, String... sources) {
        equipment(name, kind);
        for (String s : sources) {
            equipment(s, EquipmentKind.UTILITY);
            feed(s, name, Flow.FEEDER);
        }
        return name;
    }

    private void equipment(String name, EquipmentKind kind) {
        equipment.add(new Equipment(name, kind, true, true, List.of(), List.of(), List.of(), false, false));
    }

    private void feed(String from, String to, Flow flow) {
        boolean elsewhere = random.nextInt(100) == 0 && flow == Flow.FEEDER;
        Standing standing =
                elsewhere ? Standing.CONTRADICTED : random.nextInt(5) == 0 ? Standing.UNTRACED : Standing.CONFIRMED;
        connect(from, to, flow, true, standing);
        if (elsewhere && equipment.size() > 10) {
            String other = equipment.get(random.nextInt(equipment.size())).name();
            if (!other.equals(to) && !other.startsWith("UTIL") && !other.startsWith("GEN"))
                connect(other, to, flow, false, Standing.FOUND);
        }
    }

    private void connect(String from, String to, Flow flow, boolean drawn, Standing standing) {
        Device device = new Device(from, String.valueOf(++devices));
        connections.add(
                new Connection(from, List.of(device), to, flow, drawn, false, false, standing, List.of(), List.of()));
    }

    /** Panels in rising depth below the given ones until there are enough devices; eight to a panel. */
    private void panelsBelow(List<String> top, int upTo) {
        List<String> boards = new ArrayList<>(top);
        for (int i = 0; devices < upTo; i++) {
            String panel = "P" + equipment.size();
            equipment(panel, EquipmentKind.PANEL);
            feed(boards.get(i / 8), panel, Flow.FEEDER);
            boards.add(panel);
        }
    }

    private void doubleEnded(int b, int size) {
        int end = devices + size;
        String left = add("MSB-" + b + "A", EquipmentKind.SWITCHBOARD, "UTIL-" + b + "A");
        String right = add("MSB-" + b + "B", EquipmentKind.SWITCHBOARD, "UTIL-" + b + "B");
        connect(left, right, Flow.TIE, true, Standing.CONFIRMED);
        equipment("GEN-" + b, EquipmentKind.GENERATOR);
        List<String> boards = new ArrayList<>(List.of(left, right));
        for (int i = 0; i < 20; i++) {
            String ats = "ATS-" + b + "-" + i;
            equipment(ats, EquipmentKind.TRANSFER_SWITCH);
            feed(i % 2 == 0 ? left : right, ats, Flow.ONE_WAY);
            feed("GEN-" + b, ats, Flow.ONE_WAY);
            boards.add(ats);
        }
        panelsBelow(boards, end);
    }

    private void block(int b, int size) {
        int end = devices + size, side = 6;
        List<String> boards = new ArrayList<>();
        for (int i = 0; i < side * side; i++) {
            String board = "B" + b + "-" + i;
            if (i % 17 == 0) add(board, EquipmentKind.SWITCHBOARD, "UTIL-" + b + "-" + i);
            else equipment(board, EquipmentKind.SWITCHBOARD);
            boards.add(board);
        }
        for (int i = 0; i < side * side; i++) {
            if (i % side < side - 1) connect(boards.get(i), boards.get(i + 1), Flow.TIE, true, Standing.CONFIRMED);
            if (i + side < side * side)
                connect(boards.get(i), boards.get(i + side), Flow.TIE, true, Standing.CONFIRMED);
        }
        panelsBelow(boards, end);
    }
}
