package asfound.isolation;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.EquipmentKind;
import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.Equipment;
import asfound.network.Network;
import asfound.network.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Published networks through the very code that finds isolation points: an arc of capacity {@code c} stands as {@code c}
 * devices side by side over which supply passes one way.
 */
class TextbookNetworksTest {

    /** Arcs as {@code "s v1 16"}. */
    private static Network network(String source, String... arcs) {
        TreeSet<String> names = new TreeSet<>();
        List<Connection> connections = new ArrayList<>();
        for (String arc : arcs) {
            String[] part = arc.split(" ");
            names.add(part[0]);
            names.add(part[1]);
            for (int i = 1; i <= Integer.parseInt(part[2]); i++)
                connections.add(new Connection(
                        part[0],
                        List.of(new Device(part[0], part[1] + " no. " + i)),
                        part[1],
                        Connection.Flow.ONE_WAY,
                        true,
                        false,
                        false,
                        Standing.UNTRACED,
                        List.of(),
                        List.of()));
        }
        List<Equipment> equipment = names.stream()
                .map(n -> new Equipment(
                        n,
                        n.equals(source) ? EquipmentKind.UTILITY : EquipmentKind.PANEL,
                        true,
                        false,
                        List.of(),
                        List.of(),
                        List.of(),
                        false,
                        false))
                .toList();
        return new Network(equipment, connections, List.of(), List.of());
    }

    /** The cut as arcs with the number of devices in each. */
    private static Map<String, Long> cut(Network network, String target) {
        return Isolation.verdicts(network).stream()
                .filter(v -> v.equipment().equals(target))
                .flatMap(v -> v.drawnPoints().stream())
                .collect(Collectors.groupingBy(
                        d -> d.in() + "->" + d.key().split(" ")[0], TreeMap::new, Collectors.counting()));
    }

    private static long size(Map<String, Long> cut) {
        return cut.values().stream().mapToLong(Long::longValue).sum();
    }

    /**
     * Cormen, Leiserson, Rivest, Stein, Introduction to Algorithms, the flow network of the chapter on maximum flow (figure
     * 26.1 and 26.6 of the 3rd edition): maximum flow 23, least cut {s, v1, v2, v4} | {v3, t}.
     */
    @Test
    void the_flow_network_of_clrs_has_a_least_cut_of_23() {
        Network clrs = network(
                "s",
                "s v1 16",
                "s v2 13",
                "v1 v3 12",
                "v2 v1 4",
                "v2 v4 14",
                "v3 v2 9",
                "v4 v3 7",
                "v3 t 20",
                "v4 t 4");
        assertThat(cut(clrs, "t")).isEqualTo(Map.of("v1->v3", 12L, "v4->v3", 7L, "v4->t", 4L));
        assertThat(size(cut(clrs, "t"))).isEqualTo(23);
    }

    /**
     * Ford and Fulkerson's smallest teaching example (CLRS figure 26.7, from memory of the book): two arcs of 1,000,000 by
     * each of two ways and a bridge of 1 between them; here with 100 for the million. The flow is both ways together.
     */
    @Test
    void the_network_on_which_augmenting_at_random_is_slow_has_a_least_cut_of_both_ways() {
        Network ways = network("s", "s u 100", "s v 100", "u v 1", "u t 100", "v t 100");
        assertThat(cut(ways, "t")).isEqualTo(Map.of("u->t", 100L, "v->t", 100L));
    }

    /**
     * Sedgewick and Wayne, Algorithms, 4th edition, section 6.4, data file tinyFN.txt (from memory of the book): maximum
     * flow 4 from 0 to 5, least cut {0, 2} | {1, 3, 4, 5}.
     */
    @Test
    void tiny_fn_of_sedgewick_and_wayne_has_a_least_cut_of_4() {
        Network tiny = network("0", "0 1 2", "0 2 3", "1 3 3", "1 4 1", "2 3 1", "2 4 1", "3 5 2", "4 5 3");
        assertThat(size(cut(tiny, "5"))).isEqualTo(4);
        // the book names the least cut nearest to the source; ours is the one nearest to the sink, and says that others
        // exist
        assertThat(cut(tiny, "5")).isEqualTo(Map.of("1->4", 1L, "2->4", 1L, "3->5", 2L));
        assertThat(Isolation.verdicts(tiny))
                .filteredOn(v -> v.equipment().equals("5"))
                .allMatch(Verdict::otherSets);
    }

    /** Menger's theorem on a known graph: Petersen's graph is three-connected by edges, so three devices part any two nodes. */
    @Test
    void three_devices_part_any_two_nodes_of_petersens_graph() {
        List<Connection> ties = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            ties.add(tie("o" + i, "o" + (i + 1) % 5));
            ties.add(tie("o" + i, "i" + i));
            ties.add(tie("i" + i, "i" + (i + 2) % 5));
        }
        List<Equipment> equipment = Stream.of("o0", "o1", "o2", "o3", "o4", "i0", "i1", "i2", "i3", "i4")
                .map(n -> new Equipment(
                        n,
                        n.equals("o0") ? EquipmentKind.UTILITY : EquipmentKind.PANEL,
                        true,
                        false,
                        List.of(),
                        List.of(),
                        List.of(),
                        false,
                        false))
                .toList();
        assertThat(Isolation.verdicts(new Network(equipment, ties, List.of(), List.of())))
                .hasSize(9)
                .allSatisfy(v -> assertThat(v.drawnPoints()).hasSize(3));
    }

    private static Connection tie(String a, String b) {
        return new Connection(
                a,
                List.of(new Device(a, b)),
                b,
                Connection.Flow.TIE,
                true,
                false,
                false,
                Standing.UNTRACED,
                List.of(),
                List.of());
    }
}
