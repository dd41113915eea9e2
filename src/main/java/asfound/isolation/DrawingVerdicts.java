package asfound.isolation;

import asfound.model.Natural;
import asfound.model.Place;
import asfound.network.Equipment;
import asfound.network.Network;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** What may be said of each drawing: the worst of the equipment that it shows. */
final class DrawingVerdicts {

    private DrawingVerdicts() {}

    static List<DrawingVerdict> of(Network network, List<Verdict> verdicts) {
        Map<String, Verdict> byName = new HashMap<>();
        verdicts.forEach(v -> byName.put(v.equipment(), v));
        Map<String, TreeSet<String>> shown = new TreeMap<>();
        for (Equipment e : network.equipment())
            for (Place p : e.drawnAt())
                shown.computeIfAbsent(p.file(), f -> new TreeSet<>(Natural.ORDER))
                        .add(e.name());
        List<DrawingVerdict> all = new ArrayList<>();
        shown.forEach((file, names) -> all.add(of(file, List.copyOf(names), byName)));
        return all;
    }

    private static DrawingVerdict of(String file, List<String> names, Map<String, Verdict> byName) {
        List<Verdict> judged =
                names.stream().filter(byName::containsKey).map(byName::get).toList();
        Verdict.Standing worst = judged.stream()
                .map(Verdict::standing)
                .min(Verdict.Standing::compareTo)
                .orElse(Verdict.Standing.UNPROVEN);
        List<String> reasons = new ArrayList<>();
        for (Verdict.Standing standing : List.of(Verdict.Standing.FAILS, Verdict.Standing.UNPROVEN))
            judged.stream()
                    .filter(v -> v.standing() == standing)
                    .forEach(v -> reasons.add(v.equipment() + " " + inWords(standing) + ": " + v.reason()));
        if (judged.isEmpty()) reasons.add("It shows sources of supply only, for which no verdict is given.");
        return new DrawingVerdict(file, worst, names, reasons);
    }

    private static String inWords(Verdict.Standing standing) {
        return standing == Verdict.Standing.UNPROVEN ? "is unproven" : standing.word();
    }
}
