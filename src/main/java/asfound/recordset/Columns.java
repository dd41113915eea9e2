package asfound.recordset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The names of columns: ours, and the trade's usual other names for them. Names are compared without case, spaces and
 * punctuation.
 */
public final class Columns {

    /** What a table must have; each element is satisfied by any of its names. */
    private static final Map<Source.Kind, List<Set<String>>> NEEDED = Map.of(
            Source.Kind.SURVEY, List.of(Set.of("panel"), Set.of("circuit"), Set.of("found", "relation")),
            Source.Kind.FEEDERS, List.of(Set.of("from"), Set.of("to")),
            Source.Kind.EQUIPMENT, List.of(Set.of("name"), Set.of("kind", "fed_from", "bus_a", "main_a")),
            Source.Kind.SCHEDULE_TABLE, List.of(Set.of("circuit"), Set.of("description")));

    private static final Set<String> OF_PLAN = Set.of("planrank", "drawnastolookfor", "settledby", "why", "caution");

    private static final String COMMON = """
            rating_a: rating, ratingamps, ratingamp, amps, amp, ampere, amperes, trip, triprating, tripa, size, breakersize, bkrsize, ocpdrating, ocpsize, amprating, a
            poles: pole, p, noofpoles, numberofpoles, nopoles
            voltage: volts, volt, v, voltageseen, systemvoltage
            phase: phases, ph, phaseletter
            wire: conductor, conductors, wiresize, cable, wireseen, conductorsize, feedersize
            location: room, area, where, floor
            note: notes, remark, remarks, comment, comments
            sheet: drawing, drawingno, sheetno, dwg, dwgno
            kind: type, equipmenttype, equipmentkind, foundkind, kindoffound
            """;

    private static final Map<Source.Kind, Map<String, String>> OURS = Map.of(
            Source.Kind.SURVEY,
            vocabulary(COMMON, """
                    panel: panelboard, pnl, panelname, paneldesignation, panelid, panelno, board, panelswitchboard, inpanel, panelsurveyed, holdingequipment
                    circuit: ckt, cktno, ckts, cktnumber, circuitno, circuits, circuitnumber, circuitnos, cct, cctno, breaker, breakerno, bkr, bkrno, position, positions, pos, polepositions, poleposition, space, device, deviceno, polesno
                    relation: relationship, direction, result, resultoftrace
                    found: foundload, loadfound, foundfeeding, foundat, foundatotherend, farend, otherend, tracedto, tracesto, actual, actualload, asfound, goesto, feeds, feedsto, whatwasfound, equipmentfound
                    method: how, howtraced, tracemethod, tracingmethod, methodoftrace, methodused, verification
                    by: surveyor, surveyedby, who, tracedby, observer, observedby, technician, initials, tracer
                    date: surveydate, datetraced, dateoftrace, tracedon, day, surveyedon, dateofsurvey
                    photo: photos, picture, image, photono, photofile, pictureno
                    """),
            Source.Kind.FEEDERS,
            vocabulary(COMMON, """
                    from: source, fedfrom, feedfrom, upstream, supply, suppliedfrom, fromequipment, frompanel, fromname, origin
                    to: load, destination, downstream, toequipment, topanel, toname, feeds, serves, fedequipment, supplies
                    device: breaker, bkr, circuit, ckt, cktno, circuitno, circuitnumber, protectivedevice, ocpd, fromdevice, cb, breakerno, bkrno, fromcircuit, fromckt, cct
                    length_ft: length, lengthft, feet, ft, lengthfeet, feederlength
                    normally: normal, normalposition, normalstate, position, normallyopenclosed, nonc
                    """),
            Source.Kind.EQUIPMENT,
            vocabulary(COMMON, """
                    name: equipment, equipmentname, designation, tag, id, equipmentid, equipmenttag, panel, panelname, paneldesignation
                    bus_a: bus, busamps, busrating, busratinga, busamp, busbar, busbarrating, busampacity, bussing
                    main_a: main, mains, mainamps, mainrating, mainbreaker, mainratinga, mainbreakera, mcb, maina
                    fed_from: source, suppliedfrom, feedfrom, from, supply, upstream, fed
                    """),
            Source.Kind.SCHEDULE_TABLE,
            vocabulary(COMMON, """
                    panel: panelboard, pnl, panelname, paneldesignation, panelid, panelno, board, designation
                    circuit: ckt, cktno, ckts, cktnumber, circuitno, circuits, circuitnumber, cct, cctno, cir, cirno, circ, circno, position, positions, pos, no, way, ways
                    description: desc, load, loaddescription, loadserved, serves, circuitdescription, served, servedload, loadname, circuitname
                    load_va: va, loadva, watts, kva, loadkva, connectedva, connectedload, voltamperes
                    """));

    /** Names that mean a survey's 'found' only where the table is known as a survey: schedules use them as well. */
    private static final Set<String> FOUND_IN_SURVEYS =
            Set.of("description", "load", "loadserved", "serves", "loaddescription", "equipment", "to", "designation");

    private static final Set<String> FED_IN_DIRECTORIES = Set.of("feeds", "serves", "load", "supplies");

    private static final Set<String> ONLY_IN_SURVEYS = Set.of("relation", "method", "by", "date", "photo");

    private Columns() {}

    private static Map<String, String> vocabulary(String... blocks) {
        Map<String, String> ours = new LinkedHashMap<>();
        for (String block : blocks)
            for (String line : block.lines().filter(l -> !l.isBlank()).toList()) {
                String[] parts = line.strip().split(":");
                ours.put(plain(parts[0]), parts[0]);
                for (String other : parts[1].split(",")) ours.putIfAbsent(other.strip(), parts[0]);
            }
        return ours;
    }

    /** A column's name as it is compared. */
    public static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "");
    }

    /** Every name of ours. */
    static Set<String> ours() {
        Set<String> all = new java.util.TreeSet<>();
        OURS.values().forEach(v -> all.addAll(v.values()));
        return all;
    }

    /**
     * Our names for a header row, an empty text where a column is not known. The user's names come first; of two columns of
     * one meaning the exact name, else the first, has it.
     */
    static List<String> ours(Source.Kind kind, List<String> header, Settings settings) {
        Map<String, String> theirs = new LinkedHashMap<>();
        settings.columns().forEach((their, our) -> theirs.put(plain(their), our));
        List<String> names = new ArrayList<>();
        for (String cell : header) names.add(ours(kind, plain(cell), theirs));
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i);
            int first = names.indexOf(name);
            if (name.isEmpty() || first == i) continue;
            boolean exact = plain(header.get(i)).equals(plain(name))
                    && !plain(header.get(first)).equals(plain(name));
            names.set(exact ? first : i, "");
        }
        if (kind == Source.Kind.SURVEY && !names.contains("found") && names.contains("panel")) nameFound(header, names);
        return names;
    }

    private static String ours(Source.Kind kind, String plain, Map<String, String> theirs) {
        if (plain.isEmpty()) return "";
        String byUser = theirs.get(plain);
        return byUser != null ? byUser : OURS.get(kind).getOrDefault(plain, "");
    }

    private static void nameFound(List<String> header, List<String> names) {
        for (int i = 0; i < names.size(); i++)
            if (names.get(i).isEmpty() && FOUND_IN_SURVEYS.contains(plain(header.get(i)))) {
                names.set(i, "found");
                return;
            }
    }

    /** Our name that a header cell means in a table of this kind; empty where none. */
    static String meant(Source.Kind kind, String cell) {
        return OURS.get(kind).getOrDefault(plain(cell), "");
    }

    /** The plan's own survey sheet has it, and no other. */
    static boolean isPlanRank(String cell) {
        return plain(cell).equals("planrank");
    }

    /** A column of the plan's own survey sheet that tells the surveyor something, and the survey nothing. */
    static boolean isOfPlan(String cell) {
        return OF_PLAN.contains(plain(cell));
    }

    static boolean isName(Source.Kind kind, String cell) {
        String plain = plain(cell);
        return OURS.values().stream().anyMatch(v -> v.containsKey(plain))
                || !meant(kind, cell).isEmpty();
    }

    /** What a table of this kind needs and the names do not have. */
    static List<String> missing(Source.Kind kind, List<String> names) {
        return NEEDED.get(kind).stream()
                .filter(any -> any.stream().noneMatch(names::contains))
                .map(any -> any.stream().sorted().findFirst().orElseThrow())
                .toList();
    }

    /** The kind of table that a row of cells heads, if it heads one; most of its cells must be names of columns. */
    static Optional<Source.Kind> headed(GridRow row, Settings settings) {
        long cells = row.cells().stream().filter(c -> !c.isBlank()).count();
        if (cells < 2 || row.cells().stream().anyMatch(c -> c.length() > 60)) return Optional.empty();
        for (Source.Kind kind :
                List.of(Source.Kind.SURVEY, Source.Kind.FEEDERS, Source.Kind.SCHEDULE_TABLE, Source.Kind.EQUIPMENT)) {
            List<String> names = ours(kind, row.cells(), settings);
            // the two sides of a panel schedule repeat the names of its columns
            long known = kind == Source.Kind.SCHEDULE_TABLE
                    ? row.cells().stream()
                            .filter(c -> isKnown(kind, c, settings))
                            .count()
                    : names.stream().filter(n -> !n.isEmpty()).count();
            boolean survey = kind != Source.Kind.SURVEY || isSurvey(names, row, settings);
            if (survey && missing(kind, names).isEmpty() && known * 2 > cells) return Optional.of(kind);
        }
        return Optional.empty();
    }

    private static boolean isKnown(Source.Kind kind, String cell, Settings settings) {
        return !meant(kind, cell).isEmpty()
                || settings.columns().keySet().stream()
                        .anyMatch(their -> plain(their).equals(plain(cell)));
    }

    /** Panel, circuit and description make a schedule; a survey has a column that only surveys have. */
    private static boolean isSurvey(List<String> names, GridRow row, Settings settings) {
        boolean foundByName =
                names.contains("found") && !FOUND_IN_SURVEYS.contains(plain(row.cell(names.indexOf("found"))));
        boolean byUser = settings.columns().containsValue("found") && names.contains("found");
        return foundByName || byUser || names.contains("relation") || names.contains("method");
    }

    /** {@code BKR #, AMP, POLE, FEEDS}: a directory says what is fed in such words, and from what is not said for it is the panel. */
    private static boolean isDirectorys(GridRow row, int to) {
        return to >= 0 && FED_IN_DIRECTORIES.contains(plain(row.cell(to)));
    }

    /** The kind of table that a row seems to head although a needed column is missing. */
    static Optional<Source.Kind> nearlyHeaded(GridRow row, Settings settings) {
        List<String> survey = ours(Source.Kind.SURVEY, row.cells(), settings);
        long surveyed = survey.stream().filter(n -> !n.isEmpty()).count();
        // '#, Feeds, A, P' heads a directory: without its panel a survey has a column that tells how, by whom or when
        boolean surveyor = ONLY_IN_SURVEYS.stream().anyMatch(survey::contains);
        if (surveyed >= 3 && (surveyor || survey.contains("panel")) && isSurvey(survey, row, settings))
            return Optional.of(Source.Kind.SURVEY);
        List<String> circuits = ours(Source.Kind.SCHEDULE_TABLE, row.cells(), settings);
        if (circuits.contains("panel") && circuits.contains("description")) return Optional.empty();
        List<String> feeders = ours(Source.Kind.FEEDERS, row.cells(), settings);
        long drawn = feeders.stream().filter(n -> !n.isEmpty()).count();
        // labels with their values beside them are the header of a panel schedule
        long cells = row.cells().stream().filter(c -> !c.isBlank()).count();
        boolean schedule = circuits.contains("circuit") && circuits.contains("description");
        if (!feeders.contains("from") && (schedule || isDirectorys(row, feeders.indexOf("to"))))
            return Optional.empty();
        if (drawn >= 3 && drawn * 2 > cells && (feeders.contains("from") || feeders.contains("to")))
            return Optional.of(Source.Kind.FEEDERS);
        return Optional.empty();
    }
}
