package asfound.isolation;

import asfound.model.EquipmentKind;
import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.Equipment;
import asfound.network.Network;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The one numbering of a network's equipment and devices that every view of it shares. Node 0 stands for all sources
 * together. Then come the buses of the equipment, the devices, and the load terminals of devices that serve more than
 * one connection: what hangs on one terminal stays joined when the device is open.
 */
final class Terrain {

    static final int SOURCES = 0;

    private final List<String> names = new ArrayList<>();
    private final List<Optional<Equipment>> equipment = new ArrayList<>();
    private final Map<String, Integer> busOf = new HashMap<>();
    private final List<Device> devices = new ArrayList<>();
    private final Map<Device, Integer> indexOf = new HashMap<>();
    private final List<Connection> connections;
    private final List<List<Integer>> connectionsOf = new ArrayList<>();
    private final int[] terminalOf;
    private final Map<Integer, Integer> deviceOfTerminal = new HashMap<>();
    private final int nodes;

    Terrain(Network network) {
        for (Equipment e : network.equipment()) addEquipment(e.name(), Optional.of(e));
        connections = network.connections().stream()
                .filter(c -> !c.from().equals(c.to()))
                .toList();
        for (Connection c : connections) {
            addEquipment(c.from(), Optional.empty());
            addEquipment(c.to(), Optional.empty());
        }
        for (int c = 0; c < connections.size(); c++) {
            for (Device d : connections.get(c).devices()) {
                Integer index = indexOf.get(d);
                if (index == null) {
                    indexOf.put(d, index = devices.size());
                    devices.add(d);
                    connectionsOf.add(new ArrayList<>(1));
                }
                connectionsOf.get(index).add(c);
            }
        }
        terminalOf = new int[devices.size()];
        int next = 1 + names.size() + devices.size();
        for (int d = 0; d < terminalOf.length; d++) {
            terminalOf[d] = connectionsOf.get(d).size() > 1 ? next++ : deviceNode(d);
            deviceOfTerminal.put(terminalOf[d], deviceNode(d));
        }
        nodes = next;
    }

    private void addEquipment(String name, Optional<Equipment> record) {
        if (busOf.putIfAbsent(name, names.size() + 1) != null) return;
        names.add(name);
        equipment.add(record);
    }

    int nodes() {
        return nodes;
    }

    int equipmentCount() {
        return names.size();
    }

    boolean isBus(int node) {
        return node >= 1 && node <= names.size();
    }

    boolean isDevice(int node) {
        return node > names.size() && node <= names.size() + devices.size();
    }

    int bus(String name) {
        return busOf.get(name);
    }

    String name(int bus) {
        return names.get(bus - 1);
    }

    Optional<Equipment> equipment(int bus) {
        return equipment.get(bus - 1);
    }

    EquipmentKind kind(int bus) {
        return equipment(bus).map(Equipment::kind).orElse(EquipmentKind.UNKNOWN);
    }

    private int deviceNode(int index) {
        return 1 + names.size() + index;
    }

    int node(Device device) {
        return deviceNode(indexOf.get(device));
    }

    Device device(int node) {
        return devices.get(node - 1 - names.size());
    }

    /** The connections that the device is part of, by their number. */
    List<Integer> connectionsOf(int deviceNode) {
        return connectionsOf.get(deviceNode - 1 - names.size());
    }

    /** Where connections are made fast to a device: its load terminal, or the device itself where it serves one only. */
    int terminal(int deviceNode) {
        return terminalOf[deviceNode - 1 - names.size()];
    }

    int deviceOfTerminal(int terminal) {
        return deviceOfTerminal.get(terminal);
    }

    List<Connection> connections() {
        return connections;
    }

    Connection connection(int number) {
        return connections.get(number);
    }

    /** For each connection by number: the view takes it as there. */
    boolean[] seenBy(View view) {
        boolean[] has = new boolean[connections.size()];
        for (int c = 0; c < has.length; c++) has[c] = view.has(connections.get(c));
        if (view == View.FOUND) new FullerAccounts(connections).leaveOutTheLess(has);
        return has;
    }
}
