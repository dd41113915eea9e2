package asfound.report.since;

import static java.util.Collections.disjoint;

import asfound.model.Natural;
import asfound.report.since.Comparison.Fate;
import asfound.report.since.Comparison.State;
import asfound.report.since.WrittenAudit.Found;
import asfound.report.since.WrittenAudit.Input;
import asfound.report.since.WrittenAudit.Part;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Pairs the findings of two audits by kind and place, and says what became of each. */
final class Fates {

    private static final List<String> SEVERITIES = List.of("danger", "warning", "caution", "notice");

    private static final Comparator<Fate> ORDER = Comparator.comparing(Fate::state)
            .thenComparing(f -> SEVERITIES.indexOf(f.finding().severity()))
            .thenComparing(f -> f.finding().about().equipment(), Natural.ORDER)
            .thenComparing(f -> f.finding().about().circuit().orElse(""), Natural.ORDER)
            .thenComparing(f -> f.finding().id());

    private final WrittenAudit earlier;
    private final WrittenAudit later;
    private final Map<Found, Found> pairs = new LinkedHashMap<>();
    private final Set<Found> gone;
    private final Set<Found> come;

    private Fates(WrittenAudit earlier, WrittenAudit later) {
        this.earlier = earlier;
        this.later = later;
        this.gone = new LinkedHashSet<>(earlier.findings());
        this.come = new LinkedHashSet<>(later.findings());
    }

    static List<Fate> of(WrittenAudit earlier, WrittenAudit later) {
        return new Fates(earlier, later).all();
    }

    private List<Fate> all() {
        // The same event first; then one that kept its own place; then one that kept some of its devices.
        pair(f -> List.of(f.id()));
        pair(f -> List.of(f.kind(), f.about()));
        pairSome();
        List<Fate> fates = new ArrayList<>();
        pairs.forEach((before, now) -> {
            List<String> differences = differences(before, now);
            fates.add(new Fate(differences.isEmpty() ? State.REMAINING : State.CHANGED, now, differences));
        });
        for (Found finding : come) fates.add(new Fate(State.NEW, finding, List.of()));
        for (Found finding : gone) {
            Optional<String> doubt = doubt(finding);
            fates.add(new Fate(
                    doubt.isPresent() ? State.NO_LONGER_SEEN : State.CORRECTED,
                    finding,
                    doubt.stream().toList()));
        }
        return fates.stream().sorted(ORDER).toList();
    }

    private void pair(Function<Found, Object> identity) {
        Map<Object, Deque<Found>> waiting = new HashMap<>();
        for (Found now : come)
            waiting.computeIfAbsent(identity.apply(now), key -> new ArrayDeque<>())
                    .add(now);
        for (Found before : List.copyOf(gone)) {
            Found now = waiting.getOrDefault(identity.apply(before), new ArrayDeque<>())
                    .poll();
            if (now != null) pair(before, now);
        }
    }

    private void pairSome() {
        for (Found before : List.copyOf(gone))
            come.stream()
                    .filter(now -> now.kind().equals(before.kind()) && !disjoint(now.parts(), before.parts()))
                    .findFirst()
                    .ifPresent(now -> pair(before, now));
    }

    private void pair(Found before, Found now) {
        pairs.put(before, now);
        gone.remove(before);
        come.remove(now);
    }

    /** Facts that differ; how the message words them does not count. */
    private static List<String> differences(Found before, Found now) {
        List<String> differences = new ArrayList<>();
        difference(differences, "severity", before.severity(), now.severity());
        difference(differences, "is about", before.where(), now.where());
        difference(differences, "drawn", before.drawn(), now.drawn());
        difference(differences, "found", before.found(), now.found());
        if (before.accepted() != now.accepted())
            differences.add(now.accepted() ? "accepted since" : "no longer accepted");
        return differences;
    }

    private static void difference(List<String> differences, String what, String before, String now) {
        if (!tidy(before).equals(tidy(now))) differences.add(what + ": " + before + " -> " + now);
    }

    private static String tidy(String text) {
        return text.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    /** Why a finding that is gone is not known to be corrected; empty where the later audit looked at the same things. */
    private Optional<String> doubt(Found finding) {
        for (String file : finding.drawings()) {
            Optional<String> doubt = doubtOf(file, finding);
            if (doubt.isPresent()) return doubt;
        }
        return finding.evidence().isEmpty() ? Optional.empty() : doubtOfTrace(finding);
    }

    private Optional<String> doubtOf(String drawing, Found finding) {
        Input now = later.inputs().get(drawing), before = earlier.inputs().get(drawing);
        if (now != null)
            return now.problems() > (before == null ? 0 : before.problems())
                    ? Optional.of("more of " + drawing + " could not be read than before")
                    : Optional.empty();
        boolean shownElsewhere = later.drawings().values().stream()
                .anyMatch(panels -> panels.contains(finding.about().equipment()));
        return shownElsewhere
                ? Optional.empty()
                : Optional.of(drawing + " is not in the later audit, and no other drawing shows "
                        + finding.about().equipment());
    }

    private Optional<String> doubtOfTrace(Found finding) {
        if (later.devices().isEmpty())
            return finding.evidence().stream()
                    .filter(file -> !later.inputs().containsKey(file))
                    .findFirst()
                    .map(file -> file + " is not in the later audit");
        Map<String, String> devices = later.devices().get();
        if (finding.about().circuit().isEmpty() && finding.drawings().isEmpty())
            return later.equipment().contains(finding.about().equipment())
                    ? Optional.empty()
                    : Optional.of(
                            "the later survey does not meet " + finding.about().equipment());
        return finding.parts().stream()
                .filter(part -> part.circuit().isPresent())
                .map(Part::inWords)
                .filter(device -> !devices.getOrDefault(device, "").equals("traced"))
                .findFirst()
                .map(device -> "the later survey does not trace " + device);
    }
}
