package asfound.isolation;

/**
 * The ways of supply in one view, thinned: an arc that leads back to a node through which all supply of its own origin
 * came can be part of no way from a source, so it is left out. In a radial building only the downward arcs stay; in meshed
 * parts all do. Opening devices takes ways away and adds none, so the thinned ways serve for every question asked later.
 */
final class Ways {

    private final SupplyGraph graph;
    private final Dominators dominators;
    private final SupplyGraph.Rows in;
    private final SupplyGraph.Rows out;

    Ways(SupplyGraph graph) {
        this.graph = graph;
        dominators = new Dominators(graph);
        boolean[] kept = new boolean[graph.arcs()];
        for (int a = 0; a < kept.length; a++)
            kept[a] = dominators.reaches(graph.from(a)) && !dominators.dominates(graph.to(a), graph.from(a));
        in = graph.rows(true, a -> kept[a]);
        out = graph.rows(false, a -> kept[a]);
    }

    SupplyGraph graph() {
        return graph;
    }

    Dominators dominators() {
        return dominators;
    }

    SupplyGraph.Rows in() {
        return in;
    }

    SupplyGraph.Rows out() {
        return out;
    }
}
