package asfound.report.picture;

import asfound.network.Connection;
import asfound.network.Equipment;
import asfound.network.Network;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Divides a network into sheets that a person can read, as drafters do: the main supply first, then each large branch on
 * a sheet of its own. Every equipment stands on exactly one sheet.
 */
final class Sheeting {

    /** More equipment than this on one sheet can no longer be read at arm's length. */
    static final int LEGIBLE = 48;

    private static final String TOP = "";

    private final SupplyTree tree;
    private final int legible;
    private final Map<String, List<String>> kept = new HashMap<>();
    /** Title of each cut part to the tops of the branches in it. */
    private final List<Part> parts = new ArrayList<>();

    private record Part(String title, List<String> tops) {}

    private Sheeting(SupplyTree tree, int legible) {
        this.tree = tree;
        this.legible = legible;
    }

    static List<Sheet> of(Network network) {
        return of(network, LEGIBLE);
    }

    static List<Sheet> of(Network network, int legible) {
        if (network.equipment().isEmpty()) return List.of();
        Sheeting sheeting = new Sheeting(new SupplyTree(network), legible);
        sheeting.cut();
        return sheeting.sheets(network);
    }

    private void cut() {
        Map<String, Integer> weight = new HashMap<>();
        for (String name : tree.fromTheLeaves()) weight.put(name, keep(name, tree.children(name), weight));
        keep(TOP, tree.roots(), weight);
    }

    /**
     * Decides which branches stay on the sheet of {@code name}, and returns how much stands there then. Where they are too
     * many, those that branch further go first, and what hangs there singly only if that was not enough.
     */
    private int keep(String name, List<String> branches, Map<String, Integer> weight) {
        List<String> stay = branches;
        if (size(stay, weight) > legible) {
            bundle(name, stay.stream().filter(b -> weight.get(b) > 1).toList(), weight);
            stay = stay.stream().filter(b -> weight.get(b) == 1).toList();
        }
        if (size(stay, weight) > legible) {
            bundle(name, stay, weight);
            stay = List.of();
        }
        kept.put(name, stay);
        return size(stay, weight);
    }

    private static int size(List<String> branches, Map<String, Integer> weight) {
        return 1 + branches.stream().mapToInt(weight::get).sum();
    }

    private void bundle(String name, List<String> branches, Map<String, Integer> weight) {
        List<String> bundle = new ArrayList<>();
        int size = 0;
        for (String branch : branches) {
            if (!bundle.isEmpty() && size + weight.get(branch) > legible) {
                parts.add(bundled(name, bundle));
                bundle = new ArrayList<>();
                size = 0;
            }
            bundle.add(branch);
            size += weight.get(branch);
        }
        if (!bundle.isEmpty()) parts.add(bundled(name, bundle));
    }

    private static Part bundled(String name, List<String> tops) {
        return new Part((name.equals(TOP) ? "" : name + ": ") + range(tops), List.copyOf(tops));
    }

    /** {@code LP-1}, or {@code LP-1 to LP-9}. */
    static String range(List<String> names) {
        return names.size() == 1 ? names.get(0) : names.get(0) + " to " + names.get(names.size() - 1);
    }

    private List<Sheet> sheets(Network network) {
        List<Part> all = new ArrayList<>();
        if (!kept.get(TOP).isEmpty())
            all.add(new Part(parts.isEmpty() ? "The whole supply" : "Main supply", kept.get(TOP)));
        // Parts were cut from the leaves on; a reader starts at the source.
        List<String> order = tree.fromTheTop();
        Map<String, Integer> rank = new HashMap<>();
        for (int i = 0; i < order.size(); i++) rank.put(order.get(i), i);
        parts.sort(Comparator.comparing(part -> rank.get(part.tops().get(0))));
        all.addAll(parts);

        Map<String, Integer> sheetOf = new LinkedHashMap<>();
        for (int i = 0; i < all.size(); i++) for (String top : all.get(i).tops()) place(top, i, sheetOf);
        Map<String, Equipment> byName = network.equipment().stream()
                .collect(Collectors.toMap(Equipment::name, Function.identity(), (a, b) -> a));
        List<List<Equipment>> equipment = lists(all.size());
        sheetOf.forEach((name, sheet) -> equipment.get(sheet).add(byName.get(name)));
        List<List<Connection>> connections = lists(all.size());
        for (Connection c : network.connections()) {
            int from = sheetOf.get(c.from()), to = sheetOf.get(c.to());
            connections.get(to).add(c);
            if (from != to) connections.get(from).add(c);
        }
        List<Sheet> sheets = new ArrayList<>();
        for (int i = 0; i < all.size(); i++)
            sheets.add(new Sheet(i + 1, all.get(i).title(), equipment.get(i), connections.get(i)));
        return sheets;
    }

    private static <T> List<List<T>> lists(int n) {
        List<List<T>> lists = new ArrayList<>();
        for (int i = 0; i < n; i++) lists.add(new ArrayList<>());
        return lists;
    }

    /** Everything kept below a top, in the order of the walk. */
    private void place(String top, int sheet, Map<String, Integer> sheetOf) {
        List<String> open = new ArrayList<>(List.of(top));
        for (int i = 0; i < open.size(); i++) {
            sheetOf.put(open.get(i), sheet);
            open.addAll(kept.get(open.get(i)));
        }
    }
}
