package asfound.finding;

import asfound.finding.Comparison.Answer;
import asfound.network.Served;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An entry cannot be told from others or says nothing of its specific purpose.
 */
public record VagueEntry(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "vague-entry",
            "An entry cannot be told from others or says nothing of its specific purpose.",
            "Nobody can tell from it which breaker isolates a given load, and no trace can confirm it.",
            "Write what the circuit serves and where.",
            List.of(
                    "NFPA 70-2020 408.4(A): every circuit described by a clear, evident, specific purpose; nothing that depends on transient occupancy"),
            new Guide.Example(List.of("LP-1/1 MISC LOADS"), List.of()),
            new Guide.NearMiss(
                    "A room makes it specific.", new Guide.Example(List.of("LP-1/1 RECEPT RM 101"), List.of())));

    static final Rule RULE = new Rule(GUIDE, VagueEntry::find);

    @Override
    public Guide guide() {
        return GUIDE;
    }

    @Override
    public boolean explainsFeeds() {
        return false;
    }

    private static List<VagueEntry> find(Facts facts) {
        List<VagueEntry> found = new ArrayList<>();
        facts.index().panels().forEach((panel, devices) -> {
            Map<String, List<Comparison>> alike = new LinkedHashMap<>();
            for (Comparison c : devices) {
                if (c.answer() == Answer.OTHER) continue;
                Optional<String> text = described(c);
                if (text.isEmpty()) continue;
                if (Vagueness.isVague(text.get()) || Vagueness.namesAnOccupant(text.get()))
                    found.add(of(facts, List.of(c), text.get()));
                else
                    alike.computeIfAbsent(Vagueness.key(text.get()), k -> new ArrayList<>(1))
                            .add(c);
            }
            alike.values().stream()
                    .filter(same -> same.size() > 1
                            && !Tags.isOne(described(same.get(0)).orElseThrow()))
                    .forEach(same ->
                            found.add(of(facts, same, described(same.get(0)).orElseThrow())));
        });
        return found;
    }

    /** The text of a directory's entry that describes a load; empty where it names equipment, which is specific. */
    private static Optional<String> described(Comparison c) {
        return c.at().showings().stream()
                .filter(s -> s.circuit().isPresent() && s.serves().isPresent())
                .map(s -> s.serves().get())
                .filter(s -> s.equipment().isEmpty())
                .map(Served::text)
                .findFirst();
    }

    private static VagueEntry of(Facts facts, List<Comparison> entries, String text) {
        String labels = Words.list(entries.stream().map(c -> c.device().label()).toList());
        boolean same = entries.size() > 1;
        String message = same
                ? labels + " all read '" + text + "' and cannot be told apart."
                : Vagueness.namesAnOccupant(text)
                        ? labels + " reads '" + text + "', which holds only as long as that person sits there."
                        : labels + " reads '" + text + "', which says nothing of its specific purpose.";
        String correction = "Write at " + labels + " what each circuit serves and where.";
        List<Comparison> better =
                entries.stream().filter(VagueEntry::isBetterKnown).toList();
        Events event = Events.about(entries.get(0).part())
                .severity(Severity.NOTICE)
                .sides(
                        text,
                        Words.list(better.stream().map(Comparison::seenInWords).toList()))
                .says(message, correction);
        for (Comparison c : entries) event.part(c.part()).drawings(c.places()).evidence(c.evidence());
        for (Comparison c : better)
            for (var showing : c.at().showings())
                if (showing.circuit().isPresent()) event.corrections(Redraw.entry(facts, c, showing, correction));
        return new VagueEntry(event.build());
    }

    /** It was traced to something that can be told from others. */
    private static boolean isBetterKnown(Comparison c) {
        return !c.seen().isEmpty()
                && c.seen().stream().noneMatch(s -> Vagueness.isVague(s.text()))
                && !c.seen().equals(c.drawn());
    }
}
