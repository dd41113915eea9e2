package asfound.finding;

import java.util.List;

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

    @Override
    public Guide guide() {
        return GUIDE;
    }

    @Override
    public boolean explainsFeeds() {
        return false;
    }
}
