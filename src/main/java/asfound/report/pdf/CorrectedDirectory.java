package asfound.report.pdf;

import asfound.audit.Audit;
import asfound.finding.Correction;
import asfound.finding.Correction.Field;
import asfound.finding.Finding;
import asfound.finding.Unclear;
import asfound.model.CircuitRef;
import asfound.model.Directory;
import asfound.model.Observation;
import asfound.model.Stated;
import asfound.network.DeviceRecord;
import asfound.network.DeviceRecord.Showing;
import asfound.network.Equipment;
import asfound.network.Served;
import asfound.report.pdf.CardEntry.State;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A panel's directory as it should read: the drawn entries with every correction applied, and how far each was traced. */
final class CorrectedDirectory {

    private final Audit audit;
    private final Equipment panel;
    private final Map<String, List<Correction>> corrections = new TreeMap<>();
    private final Set<String> explained = new HashSet<>();
    /** Devices where a person must say whether drawn and found are one thing, by key. */
    private final Map<String, Unclear> unclear = new TreeMap<>();

    private CorrectedDirectory(Audit audit, Equipment panel) {
        this.audit = audit;
        this.panel = panel;
        for (Unclear u : audit.unclear())
            if (u.device().in().equals(panel.name()))
                unclear.putIfAbsent(u.device().key(), u);
        for (Finding finding : audit.findings()) {
            if (finding.explainsFeeds())
                Stream.concat(Stream.of(finding.event().about()), finding.others().stream())
                        .filter(p -> p.equipment().equals(panel.name()))
                        .forEach(p -> p.circuit().ifPresent(c -> explained.add(key(c))));
            for (Correction c : finding.corrections())
                if (names(c.panel()) && !c.circuit().isBlank())
                    corrections
                            .computeIfAbsent(key(c.circuit()), k -> new ArrayList<>())
                            .add(c);
        }
    }

    /** The entries in order of position; devices with names of their own after them. */
    static List<CardEntry> of(Audit audit, Equipment panel) {
        return new CorrectedDirectory(audit, panel).entries();
    }

    private boolean names(String written) {
        return written.equalsIgnoreCase(panel.name())
                || panel.alsoWritten().stream().anyMatch(written::equalsIgnoreCase);
    }

    private static String key(String circuit) {
        return CircuitRef.parse(circuit).map(CircuitRef::key).orElse(circuit);
    }

    private List<CardEntry> entries() {
        List<CardEntry> entries = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (DeviceRecord record : audit.network().devices()) {
            if (!record.device().in().equals(panel.name())) continue;
            seen.add(record.device().key());
            entries.add(entry(record));
        }
        Set<Integer> taken =
                entries.stream().flatMap(e -> e.positions().stream()).collect(Collectors.toSet());
        audit.drawings().directories().stream()
                .filter(d -> names(d.panel()))
                .flatMap(d -> d.unread().stream())
                .distinct()
                .filter(p -> !taken.contains(p))
                .forEach(p -> entries.add(
                        new CardEntry(List.of(p), "", "(the drawing could not be read here)", "", State.DOUBTFUL)));
        // an entry that only a correction knows: nothing is drawn there, and its device goes by another key
        corrections.forEach((key, all) -> {
            if (!seen.contains(key) && !taken.contains(number(key)))
                value(all, Field.DESCRIPTION)
                        .ifPresent(text -> entries.add(new CardEntry(
                                positions(key),
                                positions(key).isEmpty() ? key : "",
                                text,
                                value(all, Field.RATING).orElse(""),
                                State.DOUBTFUL)));
        });
        entries.sort(Comparator.comparing((CardEntry e) -> e.positions().isEmpty())
                .thenComparingInt(CardEntry::lowest)
                .thenComparing(CardEntry::label, asfound.model.Natural.ORDER));
        return entries;
    }

    private static int number(String key) {
        return key.matches("\\d{1,4}") ? Integer.parseInt(key) : 0;
    }

    private static List<Integer> positions(String key) {
        return number(key) == 0 ? List.of() : List.of(number(key));
    }

    private CardEntry entry(DeviceRecord record) {
        List<Correction> changes = corrections.getOrDefault(record.device().key(), List.of());
        State state = state(record, changes);
        Optional<Directory.Circuit> circuit =
                record.showings().stream().flatMap(s -> s.circuit().stream()).findFirst();
        List<Integer> positions = circuit.map(Directory.Circuit::positions)
                .orElseGet(() -> record.sightings().stream()
                        .flatMap(s -> s.observation().circuit().value().stream())
                        .map(CircuitRef::positions)
                        .filter(p -> !p.isEmpty())
                        .max(Comparator.comparingInt(List::size))
                        .orElseGet(() -> positions(record.device().key())));
        Optional<List<Integer>> moved = value(changes, Field.POSITIONS)
                .flatMap(CircuitRef::parse)
                .map(CircuitRef::positions)
                .filter(p -> !p.isEmpty());
        String label =
                circuit.map(Directory.Circuit::label).filter(l -> !l.isBlank()).orElse("");
        if (label.isEmpty() && positions.isEmpty()) label = named(record);
        return new CardEntry(moved.orElse(positions), label, text(record, changes), rating(record, changes), state);
    }

    private static String named(DeviceRecord record) {
        return Stream.concat(
                        record.showings().stream()
                                .flatMap(s -> s.feeder().stream())
                                .map(f -> f.device().value()),
                        record.sightings().stream()
                                .map(s -> s.observation().circuit().value()))
                .flatMap(Optional::stream)
                .map(CircuitRef::inWords)
                .findFirst()
                .orElse(record.device().key());
    }

    private static Optional<String> value(List<Correction> changes, Field field) {
        return changes.stream()
                .filter(c -> c.field() == field && !c.shouldRead().isBlank())
                .map(Correction::shouldRead)
                .findFirst();
    }

    private State state(DeviceRecord record, List<Correction> changes) {
        long wanted = changes.stream()
                .filter(c -> c.field() == Field.DESCRIPTION || c.field() == Field.USE)
                .map(c -> c.field() + c.shouldRead())
                .distinct()
                .count();
        return switch (record.tracing()) {
            case TRACED -> wanted > 2 || unclear.containsKey(record.device().key()) ? State.DOUBTFUL : State.TRACED;
            case CONFLICT, STALE -> State.DOUBTFUL;
            case NOT_TRACED, NOT_SEEN -> drawnTexts(record).size() > 1 ? State.DOUBTFUL : State.DRAWN;
        };
    }

    private String text(DeviceRecord record, List<Correction> changes) {
        String key = record.device().key();
        boolean traced = record.tracing() == DeviceRecord.Tracing.TRACED;
        Optional<String> fedBy = traced ? fedBy(record) : Optional.empty();
        if (fedBy.isPresent()) return fedBy.get();
        Optional<String> corrected = value(changes, Field.DESCRIPTION);
        if (corrected.isPresent()) return corrected.get();
        Optional<String> use = value(changes, Field.USE).filter(u -> !u.equalsIgnoreCase("load"));
        if (use.isPresent()) return use.get().toUpperCase(Locale.ROOT);
        List<String> drawn = drawnTexts(record);
        if (record.tracing() == DeviceRecord.Tracing.CONFLICT)
            return "IN CONFLICT: drawn " + words(drawn) + "; seen " + seen(record);
        if (traced && (drawn.isEmpty() || explained.contains(key) || goesElsewhere(record))) {
            List<Served> to = record.tracedTo();
            if (!to.isEmpty()) return to.stream().map(Served::inWords).collect(Collectors.joining(" + "));
            return relation(record) == Observation.Relation.NO_DEVICE ? "SPACE" : "SPARE (nothing connected)";
        }
        Unclear open = unclear.get(key);
        if (open != null) return "DRAWN " + open.drawn() + "; TRACED " + open.found();
        String out = record.tracing() == DeviceRecord.Tracing.STALE ? " (traced before the latest change)" : "";
        return words(drawn) + out;
    }

    /** Every equipment traced there is another than every equipment drawn there, whatever the findings say of it. */
    private static boolean goesElsewhere(DeviceRecord record) {
        Set<String> drawn = record.showings().stream()
                .flatMap(s -> s.serves().stream())
                .flatMap(s -> s.equipment().stream())
                .collect(Collectors.toSet());
        List<String> found =
                record.tracedTo().stream().flatMap(s -> s.equipment().stream()).toList();
        return !found.isEmpty() && found.stream().noneMatch(drawn::contains);
    }

    private static Observation.Relation relation(DeviceRecord record) {
        return record.sightings().stream()
                .filter(DeviceRecord.Sighting::traces)
                .map(s -> s.observation().relation())
                .findFirst()
                .orElse(Observation.Relation.NOTHING);
    }

    /** A device through which the panel is fed must not read like a load. */
    private static Optional<String> fedBy(DeviceRecord record) {
        String by = record.sightings().stream()
                .filter(DeviceRecord.Sighting::traces)
                .filter(s -> s.observation().relation() == Observation.Relation.FED_BY)
                .flatMap(s -> s.serves().stream())
                .map(Served::inWords)
                .distinct()
                .collect(Collectors.joining(" + "));
        return by.isEmpty() ? Optional.empty() : Optional.of("FED BY " + by + " (backfeed)");
    }

    private static String seen(DeviceRecord record) {
        return record.sightings().stream()
                .map(s -> Evidence.what(s.observation()))
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private static String words(List<String> drawn) {
        return drawn.isEmpty() ? "(no description)" : String.join(" / ", drawn);
    }

    /** What the drawings say there, each once; several where they differ. */
    private static List<String> drawnTexts(DeviceRecord record) {
        List<String> texts = new ArrayList<>();
        // a one-line names the same thing more briefly: it is asked only where no directory has an entry
        boolean listed = record.showings().stream().anyMatch(s -> s.circuit().isPresent());
        for (Showing s : record.showings()) {
            if (listed && s.circuit().isEmpty()) continue;
            String text = s.use() != Directory.Use.LOAD
                    ? s.use().name()
                    : s.circuit()
                            .map(c -> c.description().isUnreadable()
                                    ? "(not readable)"
                                    : c.description().or(""))
                            .orElseGet(() -> s.serves().map(Served::inWords).orElse(""));
            if (!text.isBlank() && texts.stream().noneMatch(text::equalsIgnoreCase)) texts.add(text);
        }
        return texts;
    }

    private static String rating(DeviceRecord record, List<Correction> changes) {
        Optional<String> corrected = value(changes, Field.RATING);
        if (corrected.isPresent()) return corrected.get().replaceAll("(?i)\\s*A$", "");
        return Stream.of(
                        record.showings().stream()
                                .flatMap(s -> s.circuit().stream())
                                .map(Directory.Circuit::ratingA),
                        record.showings().stream()
                                .flatMap(s -> s.feeder().stream())
                                .map(f -> f.ratingA()),
                        record.sightings().stream().map(s -> s.observation().ratingA()))
                .flatMap(s -> s)
                .filter(Stated::isStated)
                .map(r -> Integer.toString(r.or(0)))
                .findFirst()
                .orElse("");
    }
}
