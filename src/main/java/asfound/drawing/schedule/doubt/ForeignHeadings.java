package asfound.drawing.schedule.doubt;

import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.table.Side;
import asfound.drawing.schedule.table.Table;
import asfound.drawing.schedule.text.Headings;
import asfound.drawing.schedule.text.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Headings that no panel's directory has: quantities, dates, meters, results of tests, doors. A numbered list under such
 * headings is of something else, whatever panel its title speaks of; where the numbers are headed as circuits and devices stand
 * beside them it is a directory that says more than usual.
 */
final class ForeignHeadings {

    /** One of these is enough where nothing is headed as a circuit. */
    private static final Pattern DECISIVE =
            words("qty|quantity|price|cost|bin|stock|catalog(?:ue)? no|cat no|part no|part"
                    + "|tenant|kwh|meter|meter no|meter number|(?:previous|present|last) reading|reading|multiplier"
                    + "|incident energy.*|.*cal cm2?|ppe|.*boundary.*|work done|work|technician|date"
                    + "|hardware|wall|walls|ceiling|floor finish|occupants|lux.*|port|outlet|jack|address|terminal|drive|ramp.*|m(?:in|ax) hz|time dial|gpm|lock|person"
                    + "|.*m ?ohms?|.*megohms?|pickup.*|.*temp(?:erature)?(?: c)?|revision|lumens");

    /** Two of these are, or one where no devices stand beside the numbers. */
    private static final Pattern FOREIGN = words(
            "unit|units|by|yes|n a|ok|pass|fail|result|results|check|done|signed|area m2|area|height|ht|base|floor"
                    + "|door|zone|loop|rise(?: c)?|priority|label|from|to|tag|lamp|lamps|fittings|supplied from|signal|alarm|point|inspected"
                    + "|ct ratio|time|time s|mfr|manufacturer|model|supplier|finish|sheet|drawing|issued|person|mounting|watts each|test");

    private static final Pattern CIRCUIT = Pattern.compile(
            "\\b(?:ckts?|circuits?|ccts?|circ?|ways?|breakers?|bkrs?|brkrs?|poles?|mcbs?|cbs?|c b|spaces?|slots?)\\b");

    private static final Pattern DESCRIBED = Pattern.compile("\\b(?:ckt|circuit|cct)\\b");

    /** How many ways there are, and not which. */
    private static final Pattern COUNT = Pattern.compile("ways|no of ways|circuits|no of circuits|poles|no of poles");

    private ForeignHeadings() {}

    private static Pattern words(String all) {
        return Pattern.compile("(?:" + all + ")");
    }

    /** The heading that says most clearly that a table is no directory; empty where it may be one. */
    static Optional<String> of(Table table, Phrases phrases) {
        List<String> headings = table.sides().stream()
                .flatMap(s -> s.columns().stream())
                .map(Column::heading)
                .filter(h -> !h.isEmpty())
                .toList();
        List<String> decisive = new ArrayList<>(), foreign = new ArrayList<>();
        for (String heading : headings) {
            String plain = Headings.plain(heading);
            if (DECISIVE.matcher(plain).matches()) decisive.add(heading);
            if (FOREIGN.matcher(plain).matches()) foreign.add(heading);
        }
        int weight = 2 * decisive.size() + foreign.size();
        if (weight == 0 || isOfCircuits(table, phrases)) return Optional.empty();
        boolean other = weight >= 2 || !hasDevices(table, phrases);
        return other ? Optional.of(decisive.isEmpty() ? foreign.get(0) : decisive.get(0)) : Optional.empty();
    }

    /** The numbers are headed as those of circuits, breakers or ways; or circuits stand beside them with their devices. */
    static boolean isOfCircuits(Table table, Phrases phrases) {
        return table.sides().stream().anyMatch(s -> isHeadedAsCircuits(s.spine(), phrases))
                || hasDevices(table, phrases) && describesCircuits(table) && !isFromTo(table);
    }

    /** A turned heading that says that these are positions counts as well. */
    private static boolean isHeadedAsCircuits(Spine spine, Phrases phrases) {
        String heading = heading(spine, phrases);
        return spine.headed() && heading.isEmpty()
                || CIRCUIT.matcher(heading).find() && !COUNT.matcher(heading).matches();
    }

    private static boolean describesCircuits(Table table) {
        return table.sides().stream()
                .flatMap(s -> s.column(Role.DESCRIPTION).stream())
                .anyMatch(c -> DESCRIBED.matcher(Headings.plain(c.heading())).find());
    }

    /** Each row says where a cable begins and where it ends. */
    private static boolean isFromTo(Table table) {
        return table.sides().stream()
                .anyMatch(s -> Set.of("from", "to").stream()
                        .allMatch(word -> s.columns().stream()
                                .anyMatch(c -> Headings.plain(c.heading()).equals(word))));
    }

    /** Ratings and poles both stand beside the numbers under headings that say so: the devices are breakers. */
    static boolean hasBreakers(Table table, Phrases phrases) {
        return table.sides().stream()
                .anyMatch(s -> isHeaded(s, Role.DEVICE, phrases)
                        || isHeaded(s, Role.RATING, phrases) && isHeaded(s, Role.POLES, phrases));
    }

    private static boolean isHeaded(Side side, Role role, Phrases phrases) {
        return side.column(role)
                .filter(c -> phrases.meanings().weight(c.heading(), role) >= 0.5)
                .isPresent();
    }

    /** Ratings or poles stand beside the numbers under headings that say so. */
    static boolean hasDevices(Table table, Phrases phrases) {
        return table.sides().stream()
                .flatMap(s -> s.roles().entrySet().stream())
                .filter(e -> e.getKey() == Role.RATING || e.getKey() == Role.DEVICE || e.getKey() == Role.POLES)
                .anyMatch(e -> phrases.meanings().weight(e.getValue().heading(), e.getKey()) >= 0.5);
    }

    /** What stands over the numbers, in plain letters; empty where nothing does. */
    static String heading(Spine spine, Phrases phrases) {
        return spine.heading()
                .map(box -> phrases.near(box.centreY(), 1.5 * spine.size()).stream()
                        .filter(p -> p.left() < box.right() && p.right() > box.x() && p.centreY() < spine.firstY())
                        .map(p -> Headings.plain(p.text()))
                        .reduce("", (a, b) -> a + " " + b)
                        .strip())
                .orElse("");
    }
}
