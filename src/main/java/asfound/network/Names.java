package asfound.network;

import asfound.drawing.Drawings;
import asfound.model.CircuitRef;
import asfound.model.Directory;
import asfound.model.EquipmentKind;
import asfound.model.Observation;
import asfound.model.OneLine;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.model.Stated;
import asfound.names.NameBook;
import asfound.names.NameHints;
import asfound.names.SupplyText;
import asfound.names.Written;
import asfound.recordset.Settings;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** The one name of everything that drawings and survey write, each text looked up once. */
final class Names {

    private static final Pattern SAYS_NOTHING = Pattern.compile(
            "(?i)\\W*|N\\W?A\\.?|TBD|UNKNOWN|NONE|EXISTING|EXIST\\.?|NOT (KNOWN|SHOWN)|(SEE|REFER|VERIFY|FIELD VERIFY)\\b.*");

    private static final Pattern BLANKS = Pattern.compile("\\s+");

    private final NameBook book;
    private final NameHints hints;
    private final Map<String, Optional<String>> known = new HashMap<>();
    private final Map<String, List<SupplyText.Step>> supplies = new HashMap<>();
    /** Named devices that the one-line draws in each equipment, by their keys. */
    private final Map<String, Set<String>> namedDevices = new HashMap<>();

    private Names(NameBook book, NameHints hints, Drawings drawings) {
        this.book = book;
        this.hints = hints;
        for (OneLine.Feeder f : drawings.oneLine().feeders())
            f.device()
                    .value()
                    .filter(d -> !d.isNumbered())
                    .ifPresent(d -> f.from()
                            .value()
                            .flatMap(this::of)
                            .ifPresent(n -> namedDevices
                                    .computeIfAbsent(n, k -> new HashSet<>())
                                    .add(d.key())));
    }

    static Names of(Drawings drawings, List<Observation> survey, Settings settings) {
        List<Written> written = new ArrayList<>(drawn(drawings));
        Map<String, Place> described = new HashMap<>(), surveyed = new HashMap<>();
        describe(drawings, survey, described, surveyed);
        surveyed.forEach((text, place) -> written.add(Written.surveyed(text, place)));
        Names names = withDescriptions(drawings, written, described, settings);
        List<Written> unknown = names.suppliesNamedNowhereElse(drawings);
        if (unknown.isEmpty()) return names;
        written.addAll(unknown);
        return withDescriptions(drawings, written, described, settings);
    }

    /** Of the descriptions only those that may mean a name are looked at. */
    private static Names withDescriptions(
            Drawings drawings, List<Written> naming, Map<String, Place> described, Settings settings) {
        List<String> texts = new ArrayList<>(naming.stream().map(Written::raw).toList());
        settings.same().forEach(texts::addAll);
        NameHints hints = new NameHints(texts);
        List<Written> all = new ArrayList<>(naming);
        described.forEach((text, place) -> {
            if (hints.mayName(text)) all.add(Written.described(text, place));
        });
        return new Names(NameBook.of(all, settings), hints, drawings);
    }

    private static List<Written> drawn(Drawings drawings) {
        List<Written> written = new ArrayList<>();
        for (Directory d : drawings.directories()) written.add(Written.drawn(d.panel(), d.place()));
        for (OneLine.Feeder f : drawings.oneLine().feeders()) {
            f.from().value().ifPresent(n -> written.add(Written.drawn(n, f.place())));
            f.to().value().ifPresent(n -> written.add(Written.drawn(n, f.place())));
        }
        for (OneLine.Listed e : drawings.oneLine().equipment())
            e.name().value().ifPresent(n -> written.add(Written.drawn(n, e.place())));
        return written;
    }

    /** Each text once, with the first place where it stands. */
    private static void describe(
            Drawings drawings, List<Observation> survey, Map<String, Place> described, Map<String, Place> surveyed) {
        for (Directory d : drawings.directories())
            for (Directory.Circuit c : d.circuits())
                c.description().value().ifPresent(t -> earliest(described, t, c.place()));
        for (Observation o : survey) {
            o.panel().value().ifPresent(n -> earliest(surveyed, n, o.place()));
            o.found().value().ifPresent(n -> earliest(namesEquipment(o) ? surveyed : described, n, o.place()));
        }
    }

    private static void earliest(Map<String, Place> places, String text, Place place) {
        places.merge(text, place, (a, b) -> a.compareTo(b) <= 0 ? a : b);
    }

    /** The row met the thing and says that it is equipment, not a mere load. */
    static boolean namesEquipment(Observation o) {
        return meets(o) && o.kind() != EquipmentKind.LOAD && o.kind() != EquipmentKind.UNKNOWN;
    }

    /** A label that was read and the absence of a connection meet nothing. */
    static boolean meets(Observation o) {
        return o.method().traces() && o.relation() != Observation.Relation.DOES_NOT_FEED;
    }

    /** A 'fed from' may be the only place that names a supply: it is on the drawing, so it is a name. */
    private List<Written> suppliesNamedNowhereElse(Drawings drawings) {
        List<Written> unknown = new ArrayList<>();
        for (Stated<String> text : fedFromTexts(drawings))
            for (SupplyText.Step step : supply(text))
                if (step.name().isEmpty())
                    unknown.add(Written.drawn(step.text(), text.place().orElse(Place.file(""))));
        return unknown;
    }

    private static Collection<Stated<String>> fedFromTexts(Drawings drawings) {
        List<Stated<String>> texts = new ArrayList<>();
        for (Directory d : drawings.directories()) texts.add(d.header().fedFrom());
        for (OneLine.Listed e : drawings.oneLine().equipment()) texts.add(e.fedFrom());
        return texts;
    }

    /** The one name of what a text names; empty where it names nothing known or could mean two things. */
    Optional<String> of(String text) {
        return known.computeIfAbsent(text, t -> hints.mayName(t) ? book.nameOf(t) : Optional.empty());
    }

    /** The one name, or the text itself where it could mean two things: it then stands for a thing of its own. */
    String orItself(String text) {
        return of(text).orElseGet(() -> BLANKS.matcher(text.strip()).replaceAll(" "));
    }

    /** A 'fed from' in steps, the nearest first; none where the text says nothing. */
    List<SupplyText.Step> supply(Stated<String> text) {
        if (text.value().isEmpty() || SAYS_NOTHING.matcher(text.value().get()).matches()) return List.of();
        return supplies.computeIfAbsent(
                text.value().get(),
                t -> drawnDevice(t)
                        .map(List::of)
                        .orElseGet(() -> SupplyText.of(t, book).steps().stream()
                                .map(s -> s.name().isPresent() || s.device().isPresent()
                                        ? s
                                        : drawnDevice(s.text()).orElse(s))
                                .toList()));
    }

    /**
     * {@code MSB F1} is device F1 of MSB, and {@code UPS-1 CB2} device CB2, where the one-line draws one of that name there;
     * else it may be a name of its own, or circuit 2.
     */
    private Optional<SupplyText.Step> drawnDevice(String text) {
        if (of(text).isPresent()) return Optional.empty();
        for (int i = text.length() - 1; i > 0; i--) {
            if (" -/:,.".indexOf(text.charAt(i)) < 0) continue;
            String equipment = text.substring(0, i).strip(),
                    device = text.substring(i + 1).strip();
            Optional<String> name = of(equipment);
            CircuitRef ref = CircuitRef.named(device);
            if (name.isPresent()
                    && namedDevices.getOrDefault(name.get(), Set.of()).contains(ref.key()))
                return Optional.of(new SupplyText.Step(equipment, name, Optional.of(ref)));
        }
        return Optional.empty();
    }

    List<String> alsoWritten(String name) {
        return book.alsoWritten(name);
    }

    List<Problem> problems() {
        return book.problems();
    }
}
