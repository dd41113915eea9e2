package asfound.finding;

import asfound.network.Served;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Which of the devices that differ are drawn, in other words and on whatever panel, to feed what another was traced to:
 * {@code DOM. WATER HTR WH-9} on one card and {@code water heater WH9} behind a breaker of another panel. Sought by the
 * last number of the text, the room's or the tag's; {@code LIGHTING} alone stands on every card.
 */
final class Abroad {

    private static final Pattern NUMBER = Pattern.compile("\\d+");
    /** A number on more entries than this tells nothing, and comparing each with each would take long. */
    private static final int TOO_COMMON = 100;

    private final Map<String, List<Comparison>> drawnWith = new HashMap<>();
    private final Sames sames;

    Abroad(List<Comparison> devices, Sames sames) {
        this.sames = sames;
        for (Comparison c : devices)
            descriptions(c.drawn())
                    .map(Abroad::number)
                    .filter(n -> !n.isEmpty())
                    .distinct()
                    .forEach(n -> drawnWith
                            .computeIfAbsent(n, k -> new ArrayList<>(1))
                            .add(c));
    }

    /** Devices of other panels drawn to feed what this one was traced to. */
    List<Comparison> of(Comparison traced) {
        return descriptions(traced.seen())
                .flatMap(text -> drawnWith.getOrDefault(number(text), List.of()).stream()
                        .limit(TOO_COMMON)
                        .filter(c -> !c.panel().equals(traced.panel()))
                        .filter(c ->
                                c.drawn().stream().anyMatch(d -> sames.same(d, new Served(text, Optional.empty())))))
                .distinct()
                .toList();
    }

    private static Stream<String> descriptions(List<Served> things) {
        return things.stream().filter(t -> t.equipment().isEmpty()).map(Served::text);
    }

    private static String number(String text) {
        String last = "";
        for (Matcher m = NUMBER.matcher(text); m.find(); ) last = m.group();
        return last;
    }
}
