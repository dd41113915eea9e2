package asfound.isolation;

import java.util.Arrays;

/**
 * The dominators of a supply graph: {@code x} dominates {@code y} where every way from the sources to {@code y} leads
 * through {@code x}. A device that dominates an equipment parts it from every source alone.
 *
 * <p>The algorithm is that of Lengauer and Tarjan, 'A fast algorithm for finding dominators in a flowgraph', ACM TOPLAS
 * 1(1), 1979, the simple version with path compression: near-linear in the number of arcs. All of it is iterative, since
 * a chain of panels may be as long as the building.
 */
final class Dominators {

    private static final int NONE = -1;

    private final SupplyGraph graph;
    private final int[] order; // nodes by number of discovery
    private final int[] number; // number of discovery, NONE where no source reaches the node
    private final int[] parent; // by number, in the search tree
    private final int[] dominator; // by number
    private int reached;

    private final int[] semi;
    private final int[] label;
    private final int[] ancestor;
    private final int[] first; // of each node's place in a walk over the dominator tree
    private final int[] last;

    Dominators(SupplyGraph graph) {
        this.graph = graph;
        int n = graph.terrain().nodes();
        order = new int[n];
        number = new int[n];
        Arrays.fill(number, NONE);
        parent = new int[n];
        dominator = new int[n];
        semi = new int[n];
        label = new int[n];
        ancestor = new int[n];
        first = new int[n];
        last = new int[n];
        search();
        dominate();
        walk();
    }

    private void search() {
        SupplyGraph.Rows out = graph.rows(false, a -> true);
        int[] next = Arrays.copyOf(out.start(), number.length);
        int[] stack = new int[number.length + 1];
        int depth = 0;
        discover(Terrain.SOURCES, 0);
        stack[depth++] = Terrain.SOURCES;
        while (depth > 0) {
            int node = stack[depth - 1];
            if (next[node] == out.start()[node + 1]) {
                depth--;
                continue;
            }
            int to = graph.to(out.arc()[next[node]++]);
            if (number[to] != NONE) continue;
            discover(to, number[node]);
            stack[depth++] = to;
        }
    }

    private void discover(int node, int from) {
        number[node] = reached;
        order[reached] = node;
        parent[reached] = from;
        reached++;
    }

    private void dominate() {
        SupplyGraph.Rows in = graph.rows(true, a -> number[graph.from(a)] != NONE);
        int[] bucket = new int[reached], nextInBucket = new int[reached];
        Arrays.fill(bucket, NONE);
        for (int v = 0; v < reached; v++) {
            semi[v] = v;
            label[v] = v;
            ancestor[v] = NONE;
        }
        for (int w = reached - 1; w > 0; w--) {
            int node = order[w];
            for (int i = in.start()[node]; i < in.start()[node + 1]; i++) {
                int u = lowest(number[graph.from(in.arc()[i])]);
                if (semi[u] < semi[w]) semi[w] = semi[u];
            }
            nextInBucket[w] = bucket[semi[w]];
            bucket[semi[w]] = w;
            ancestor[w] = parent[w];
            for (int v = bucket[parent[w]]; v != NONE; v = nextInBucket[v]) {
                int u = lowest(v);
                dominator[v] = semi[u] < semi[v] ? u : parent[w];
            }
            bucket[parent[w]] = NONE;
        }
        for (int w = 1; w < reached; w++) if (dominator[w] != semi[w]) dominator[w] = dominator[dominator[w]];
        dominator[0] = NONE;
    }

    private final Ints trail = new Ints();

    /** The node of least semidominator on the way up from {@code v} in the forest so far, the way being shortened. */
    private int lowest(int v) {
        if (ancestor[v] == NONE) return v;
        trail.clear();
        for (int u = v; ancestor[ancestor[u]] != NONE; u = ancestor[u]) trail.add(u);
        for (int i = trail.size() - 1; i >= 0; i--) {
            int u = trail.get(i), up = ancestor[u];
            if (semi[label[up]] < semi[label[u]]) label[u] = label[up];
            ancestor[u] = ancestor[up];
        }
        return label[v];
    }

    /** Numbers the dominator tree so that a node's descendants stand in one run. */
    private void walk() {
        // a dominator is discovered before what it dominates, so sizes add up backwards and places are given forwards
        int[] size = new int[reached];
        for (int v = reached - 1; v >= 0; v--) {
            size[v]++;
            if (v > 0) size[dominator[v]] += size[v];
        }
        int[] free = new int[reached];
        for (int v = 0; v < reached; v++) {
            int begin = v == 0 ? 0 : free[dominator[v]];
            if (v > 0) free[dominator[v]] += size[v];
            free[v] = begin + 1;
            first[v] = begin;
            last[v] = begin + size[v] - 1;
        }
    }

    /** Some source, or equipment of unknown supply, reaches the node. */
    boolean reaches(int node) {
        return number[node] != NONE;
    }

    /** Every way from the sources to {@code y} leads through {@code x}; a node dominates itself. */
    boolean dominates(int x, int y) {
        if (!reaches(x) || !reaches(y)) return false;
        int a = number[x], b = number[y];
        return first[a] <= first[b] && first[b] <= last[a];
    }

    /** The nearest node through which every way from the sources leads, or -1 for the sources themselves. */
    int nearest(int node) {
        int d = dominator[number[node]];
        return d == NONE ? NONE : order[d];
    }

    /** A number for the set of equipment that the node dominates: equal for equal sets, and hardly ever for others. */
    long fingerprint(int node) {
        if (!reaches(node)) return 0;
        if (prints == null) prints = fingerprints();
        return prints[last[number[node]] + 1] - prints[first[number[node]]];
    }

    private long[] prints;

    private long[] fingerprints() {
        long[] sums = new long[reached + 1];
        for (int v = 0; v < reached; v++) if (graph.terrain().isBus(order[v])) sums[first[v] + 1] = scattered(order[v]);
        for (int i = 0; i < reached; i++) sums[i + 1] += sums[i];
        return sums;
    }

    /** The finalizer of SplitMix64 (Steele, Lea, Flood 2014). */
    private static long scattered(long x) {
        long z = x * 0x9E3779B97F4A7C15L;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
