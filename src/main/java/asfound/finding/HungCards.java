package asfound.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;

/** Whole directories that hang on the wrong panel; panels that have each other's are one event. */
record HungCards(Set<String> panels, List<HungCard> cards) {

    /** @param copies see {@link HungCard#of} */
    static List<HungCards> of(Facts facts, boolean copies) {
        List<HungCard> hung = best(CardPairs.of(facts).stream()
                .flatMap(pair -> HungCard.of(facts, pair, copies).stream())
                .toList());
        Graph<String, DefaultEdge> joined = new SimpleGraph<>(DefaultEdge.class);
        for (HungCard card : hung) {
            joined.addVertex(card.panel());
            joined.addVertex(card.other());
            joined.addEdge(card.panel(), card.other());
        }
        return new ConnectivityInspector<>(joined)
                .connectedSets().stream()
                        .map(TreeSet::new)
                        .sorted(Comparator.comparing(TreeSet::first))
                        .map(panels -> new HungCards(
                                panels,
                                hung.stream()
                                        .filter(c -> panels.contains(c.panel()))
                                        .toList()))
                        .toList();
    }

    /** Of several panels that one card may belong to, the one with most entries alike. */
    private static List<HungCard> best(List<HungCard> cards) {
        List<HungCard> best = new ArrayList<>();
        cards.stream()
                .collect(Collectors.groupingBy(HungCard::panel, java.util.TreeMap::new, Collectors.toList()))
                .forEach((panel, own) -> best.add(own.stream()
                        .reduce((a, b) -> b.alike().size() > a.alike().size() ? b : a)
                        .orElseThrow()));
        return best;
    }

    List<Comparison> devices() {
        return cards.stream().flatMap(c -> c.devices().stream()).toList();
    }

    String inWords() {
        return HungCard.inWords(panels, cards);
    }
}
