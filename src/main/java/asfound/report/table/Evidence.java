package asfound.report.table;

import asfound.model.Observation;
import asfound.model.Place;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Observations named shortly and wholly, for one cell: {@code survey/march.csv rows 2, 5 (opened), 9 (tone)}. */
final class Evidence {

    private Evidence() {}

    static String inWords(Collection<Observation> observations) {
        Map<String, Map<Integer, String>> byFile = new TreeMap<>();
        for (Observation o : observations)
            byFile.computeIfAbsent(source(o.place()), f -> new TreeMap<>())
                    .put(o.place().row(), o.method().word());
        return byFile.entrySet().stream()
                .map(file -> file.getKey() + " " + rows(file.getValue()))
                .collect(Collectors.joining("; "));
    }

    /** Places of drawings and observations: {@code drawings/MDP.pdf, page 1; survey/march.csv, row 2}. */
    static String places(Collection<Place> places) {
        return new TreeSet<>(places).stream().map(Place::inWords).distinct().collect(Collectors.joining("; "));
    }

    private static String source(Place.InRow place) {
        return place.sheet().isEmpty() ? place.file() : place.file() + " sheet " + place.sheet();
    }

    private static String rows(Map<Integer, String> methods) {
        Map<String, List<String>> byMethod = new LinkedHashMap<>();
        methods.forEach((row, method) -> byMethod.merge(
                method.isEmpty() ? "method not given" : method,
                List.of(Integer.toString(row)),
                (a, b) -> java.util.stream.Stream.concat(a.stream(), b.stream()).toList()));
        String list = byMethod.entrySet().stream()
                .map(e -> String.join(", ", e.getValue()) + " (" + e.getKey() + ")")
                .collect(Collectors.joining(", "));
        return (methods.size() == 1 ? "row " : "rows ") + list;
    }
}
