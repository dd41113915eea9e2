package asfound.isolation;

import asfound.model.Natural;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.network.Equipment;
import asfound.network.Network;
import asfound.network.Served;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Circuits elsewhere that name an equipment in other words, {@code AHU-9 CRANKCASE HTR}: loads of their own by the records,
 * whose conductors may run into it all the same. Those of its controls do (common practice: control power comes from another
 * panel).
 */
public final class NamedElsewhere {

    /**
     * One such circuit.
     *
     * @param texts what it is drawn to feed and was found to feed, as written
     */
    public record Circuit(Device device, List<String> texts) {

        /** It brings control power. */
        boolean isOfControls() {
            return texts.stream().anyMatch(t -> CONTROLS.matcher(t).find());
        }

        /** {@code LP-1/12 (AHU-9 CONTROLS)}. */
        String inWords() {
            return device.label() + " (" + String.join("; ", texts) + ")";
        }
    }

    private record Said(Device device, String text, String upper) {}

    private static final Pattern CONTROLS =
            Pattern.compile("\\b(?:CONTROLS?|CTRLS?|CTLS?|CONTROLLERS?)\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+");

    /** What is said of loads without a name of their own, by each word in it. */
    private final Map<String, List<Said>> byWord = new HashMap<>();
    /** The names of an equipment, in capitals. */
    private final Map<String, List<String>> names = new HashMap<>();

    public NamedElsewhere(Network network) {
        for (DeviceRecord record : network.devices())
            Stream.concat(record.showings().stream().flatMap(s -> s.serves().stream()), record.tracedTo().stream())
                    .filter(s -> s.equipment().isEmpty())
                    .map(Served::text)
                    .distinct()
                    .forEach(text -> add(new Said(record.device(), text, upper(text))));
        for (Equipment e : network.equipment())
            names.put(
                    e.name(),
                    Stream.concat(Stream.of(e.name()), e.alsoWritten().stream())
                            .filter(n -> n.length() > 1)
                            .map(NamedElsewhere::upper)
                            .distinct()
                            .toList());
    }

    private void add(Said said) {
        Matcher word = WORD.matcher(said.upper());
        Set<String> words = new TreeSet<>();
        while (word.find()) words.add(word.group());
        words.forEach(w -> byWord.computeIfAbsent(w, k -> new ArrayList<>(1)).add(said));
    }

    /** Those that name the equipment of a verdict, in natural order; its own devices and its points are none of them. */
    public List<Circuit> of(Verdict verdict) {
        List<Device> points = new ArrayList<>(verdict.drawnPoints());
        verdict.foundPoints().ifPresent(points::addAll);
        return of(verdict.equipment(), points);
    }

    /** {@code LP-1/12 (AHU-9 CONTROLS), LP-1/14 (AHU-9 LIGHT)}; empty where there are none. */
    public static String inWords(List<Circuit> circuits) {
        return circuits.stream().map(Circuit::inWords).collect(Collectors.joining(", "));
    }

    List<Circuit> of(String equipment, Collection<Device> points) {
        Map<Device, Set<String>> found = new TreeMap<>(Comparator.comparing(Device::label, Natural.ORDER));
        for (String name : names.getOrDefault(equipment, List.of())) {
            Matcher first = WORD.matcher(name);
            if (!first.find()) continue;
            for (Said s : byWord.getOrDefault(first.group(), List.of()))
                if (isIn(name, s.upper()) && !s.device().in().equals(equipment) && !points.contains(s.device()))
                    found.computeIfAbsent(s.device(), d -> new TreeSet<>()).add(s.text());
        }
        return found.entrySet().stream()
                .map(e -> new Circuit(e.getKey(), List.copyOf(e.getValue())))
                .toList();
    }

    /** As a word of its own: {@code LP-1} is not in {@code LP-12}, {@code LP-1-2} or {@code SLP-1}. */
    private static boolean isIn(String name, String text) {
        for (int at = text.indexOf(name); at >= 0; at = text.indexOf(name, at + 1)) {
            int end = at + name.length();
            boolean begins = at == 0 || !isOfName(text.charAt(at - 1));
            if (begins && (end == text.length() || !goesOn(text, end))) return true;
        }
        return false;
    }

    private static boolean goesOn(String text, int at) {
        char c = text.charAt(at);
        return Character.isLetterOrDigit(c)
                || c == '-' && at + 1 < text.length() && Character.isDigit(text.charAt(at + 1));
    }

    private static boolean isOfName(char c) {
        return Character.isLetterOrDigit(c) || c == '-';
    }

    private static String upper(String text) {
        return text.toUpperCase(Locale.ROOT);
    }
}
