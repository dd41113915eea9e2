package asfound.isolation;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.Set;

/**
 * What loses supply in one view when some devices are open. Only what hangs below the devices in a fixed tree of ways can
 * lose it, so only that is looked at.
 */
final class Darkness {

    private final Ways ways;
    private final SupplyGraph graph;
    private final Terrain terrain;
    private final int[] order; // nodes of the tree, each followed by all that hangs below it
    private final int[] place; // by node, -1 where no source reaches it
    private final int[] last; // by node: the last place below it
    private final int[] below; // by node: the question in which it hangs below an open device
    private final int[] lit; // by node: the question in which it was found to keep supply
    private int question;

    Darkness(Ways ways) {
        this.ways = ways;
        this.graph = ways.graph();
        this.terrain = graph.terrain();
        int n = terrain.nodes();
        order = new int[n];
        place = new int[n];
        last = new int[n];
        below = new int[n];
        lit = new int[n];
        growTree();
    }

    private void growTree() {
        int n = terrain.nodes();
        int[] parent = new int[n], found = new int[n], size = new int[n];
        Arrays.fill(parent, -1);
        Arrays.fill(place, -1);
        SupplyGraph.Rows out = ways.out();
        int end = 0;
        found[end++] = Terrain.SOURCES;
        parent[Terrain.SOURCES] = Terrain.SOURCES;
        for (int next = 0; next < end; next++)
            for (int i = out.start()[found[next]]; i < out.start()[found[next] + 1]; i++) {
                int to = graph.to(out.arc()[i]);
                if (parent[to] >= 0) continue;
                parent[to] = found[next];
                found[end++] = to;
            }
        for (int i = end - 1; i > 0; i--) size[parent[found[i]]] += ++size[found[i]];
        int[] free = new int[n];
        for (int i = 0; i < end; i++) {
            int node = found[i];
            place[node] = i == 0 ? 0 : free[parent[node]];
            if (i > 0) free[parent[node]] += size[node];
            free[node] = place[node] + 1;
            last[node] = place[node] + size[node] - (i == 0 ? 0 : 1);
            order[place[node]] = node;
        }
    }

    /** The buses that lose supply when the devices are open. */
    Set<Integer> with(Collection<Integer> open) {
        question++;
        Set<Integer> opened = new HashSet<>(open);
        Ints hanging = new Ints();
        for (int d : open) {
            if (place[d] < 0) continue;
            for (int p = place[d]; p <= last[d]; p++) {
                int node = order[p];
                if (below[node] == question) continue;
                below[node] = question;
                hanging.add(node);
            }
        }
        Ints kept = new Ints();
        for (int i = 0; i < hanging.size(); i++)
            if (!opened.contains(hanging.get(i)) && keepsFromOutside(hanging.get(i), opened))
                light(hanging.get(i), kept);
        for (int next = 0; next < kept.size(); next++) {
            int node = kept.get(next);
            for (int i = ways.out().start()[node]; i < ways.out().start()[node + 1]; i++) {
                int to = graph.to(ways.out().arc()[i]);
                if (below[to] == question && lit[to] != question && !opened.contains(to)) light(to, kept);
            }
        }
        Set<Integer> dark = new HashSet<>();
        for (int i = 0; i < hanging.size(); i++)
            if (terrain.isBus(hanging.get(i)) && lit[hanging.get(i)] != question) dark.add(hanging.get(i));
        return dark;
    }

    private boolean keepsFromOutside(int node, Set<Integer> opened) {
        for (int i = ways.in().start()[node]; i < ways.in().start()[node + 1]; i++) {
            int from = graph.from(ways.in().arc()[i]);
            if (below[from] != question && !opened.contains(from)) return true;
        }
        return false;
    }

    private void light(int node, Ints kept) {
        if (lit[node] == question) return;
        lit[node] = question;
        kept.add(node);
    }
}
