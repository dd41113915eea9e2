package asfound.report;

import asfound.audit.Audit;
import asfound.isolation.Verdict;
import asfound.model.Natural;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.network.Equipment;
import asfound.network.Served;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Circuits elsewhere that name an equipment in other words, {@code AHU-9 CONTROLS}, {@code AHU-9 CRANKCASE HTR}: loads of their own by
 * the records, whose conductors may run into it all the same (common practice: control power from another panel).
 */
public final class NamedElsewhere {

    private record Said(Device device, String text, String upper) {}

    private final List<Said> said = new ArrayList<>();
    private final Map<String, List<String>> names = new HashMap<>();

    public NamedElsewhere(Audit audit) {
        for (DeviceRecord record : audit.network().devices())
            Stream.concat(record.showings().stream().flatMap(s -> s.serves().stream()), record.tracedTo().stream())
                    .filter(s -> s.equipment().isEmpty())
                    .map(Served::text)
                    .distinct()
                    .forEach(text -> said.add(new Said(record.device(), text, text.toUpperCase(Locale.ROOT))));
        for (Equipment e : audit.network().equipment())
            names.put(
                    e.name(),
                    Stream.concat(Stream.of(e.name()), e.alsoWritten().stream())
                            .filter(n -> n.length() > 1)
                            .map(n -> n.toUpperCase(Locale.ROOT))
                            .distinct()
                            .toList());
    }

    /** Each with what it is drawn to feed and was found to feed: {@code LP-1/12 (AHU-9 CONTROLS)}; in natural order. */
    public List<String> of(Verdict verdict) {
        Set<Device> points = new HashSet<>(verdict.drawnPoints());
        verdict.foundPoints().ifPresent(points::addAll);
        Map<String, Set<String>> found = new TreeMap<>(Natural.ORDER);
        for (Said s : said)
            for (String name : names.getOrDefault(verdict.equipment(), List.of()))
                if (isIn(name, s.upper())
                        && !s.device().in().equals(verdict.equipment())
                        && !points.contains(s.device()))
                    found.computeIfAbsent(s.device().label(), d -> new TreeSet<>())
                            .add(s.text());
        return found.entrySet().stream()
                .map(e -> e.getKey() + " (" + String.join("; ", e.getValue()) + ")")
                .toList();
    }

    /** As a word of its own: {@code LP-1} is not in {@code LP-12} nor in {@code SLP-1}. */
    private static boolean isIn(String name, String text) {
        for (int at = text.indexOf(name); at >= 0; at = text.indexOf(name, at + 1)) {
            int end = at + name.length();
            boolean begins = at == 0 || !isOfName(text.charAt(at - 1));
            boolean ends = end == text.length()
                    || !Character.isLetterOrDigit(text.charAt(end))
                            && !(text.charAt(end) == '-'
                                    && end + 1 < text.length()
                                    && Character.isDigit(text.charAt(end + 1)));
            if (begins && ends) return true;
        }
        return false;
    }

    private static boolean isOfName(char c) {
        return Character.isLetterOrDigit(c) || c == '-';
    }
}
