package asfound.sample;

import static asfound.model.EquipmentKind.GENERATOR;
import static asfound.model.EquipmentKind.INVERTER;
import static asfound.model.EquipmentKind.PANEL;
import static asfound.model.EquipmentKind.SWITCHBOARD;
import static asfound.model.EquipmentKind.TRANSFER_SWITCH;
import static asfound.model.EquipmentKind.UTILITY;

import asfound.audit.Audit;
import asfound.drawing.Drawings;
import asfound.finding.Correction;
import asfound.finding.CrossedFeeds;
import asfound.finding.Event;
import asfound.finding.FeedsOther;
import asfound.finding.Finding;
import asfound.finding.NothingConnected;
import asfound.finding.Severity;
import asfound.finding.SurveyConflict;
import asfound.finding.UndocumentedFeed;
import asfound.finding.UndocumentedSource;
import asfound.finding.VagueEntry;
import asfound.isolation.DrawingVerdict;
import asfound.isolation.Verdict;
import asfound.isolation.Verdict.Standing;
import asfound.model.Box;
import asfound.model.CircuitRef;
import asfound.model.Directory;
import asfound.model.EquipmentKind;
import asfound.model.Observation;
import asfound.model.OneLine;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.model.Stated;
import asfound.model.Voltage;
import asfound.network.Connection;
import asfound.network.Connection.Flow;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.network.Equipment;
import asfound.network.Network;
import asfound.network.Served;
import asfound.recordset.RecordSet;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import asfound.trust.Coverage;
import asfound.trust.Trace;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A small building made by hand for what is printed: two feeders crossed at MSB, a solar inverter on LP-2A that no drawing
 * shows, an emergency panel that nobody traced. The audit is written down, not computed: sheets decide nothing.
 */
public final class WhinfellAnnex {

    public static final String SHEET = "drawings/E-601.pdf";
    private static final String SURVEY = "survey/march.csv";

    private final Path folder;
    private final PrintedSchedule printed = new PrintedSchedule();
    private final List<Directory> directories = new ArrayList<>();

    private WhinfellAnnex(Path folder) {
        this.folder = folder;
    }

    /** A finding of that kind that says what it is told to. */
    public static Finding said(
            String kind,
            Severity severity,
            String equipment,
            Optional<String> circuit,
            List<Finding.Part> others,
            String drawn,
            String found,
            List<Place> drawings,
            List<Observation> evidence,
            String message,
            String correction,
            List<Correction> corrections) {
        Event event = new Event(
                severity,
                new Finding.Part(equipment, circuit),
                others,
                drawn,
                found,
                drawings,
                evidence,
                message,
                correction,
                corrections);
        return switch (kind) {
            case "crossed-feeds" -> new CrossedFeeds(event);
            case "feeds-other" -> new FeedsOther(event);
            case "undocumented-source" -> new UndocumentedSource(event);
            case "undocumented-feed" -> new UndocumentedFeed(event);
            case "nothing-connected" -> new NothingConnected(event);
            case "survey-conflict" -> new SurveyConflict(event);
            case "vague-entry" -> new VagueEntry(event);
            default -> throw new IllegalArgumentException("not used in this building: " + kind);
        };
    }

    /** Writes the drawing into {@code folder} and gives the audit of the set. */
    public static Audit in(Path folder) throws IOException {
        return new WhinfellAnnex(folder).audit();
    }

    public static Observation seen(
            String panel, String circuit, String relation, String found, String method, int row) {
        Place.InRow place = new Place.InRow(SURVEY, "", row);
        return new Observation(
                Stated.text(panel, place),
                Stated.of(CircuitRef.parse(circuit).orElseThrow(), circuit, place),
                Observation.Relation.of(relation).orElseThrow(),
                Stated.text(found, place),
                EquipmentKind.UNKNOWN,
                Observation.Method.of(method).orElseThrow(),
                Stated.blank(),
                Stated.blank(),
                Stated.blank(),
                Stated.blank(),
                Stated.blank(),
                Stated.text("Electrical room 104", place),
                "R. Okafor",
                Stated.of(LocalDate.of(2026, 3, 4 + row % 5), "2026-03-0" + (4 + row % 5), place),
                "",
                "",
                place);
    }

    private Directory directory(String panel, String fedFrom, int count, int turn, double cropX, double cropY)
            throws IOException {
        List<PrintedSchedule.Entry> entries = new ArrayList<>();
        for (int p = 1; p <= count; p++) entries.add(new PrintedSchedule.Entry(p, "20", load(panel, p)));
        Map<Integer, Box> boxes = printed.page(panel, fedFrom, entries, turn, cropX, cropY);
        int page = printed.document().getNumberOfPages();
        List<Directory.Circuit> circuits = new ArrayList<>();
        for (PrintedSchedule.Entry e : entries) {
            Place place = Place.page(SHEET, page, boxes.get(e.position()));
            Directory.Use use = e.description().equals("SPARE") ? Directory.Use.SPARE : Directory.Use.LOAD;
            circuits.add(new Directory.Circuit(
                    List.of(e.position()),
                    "",
                    1,
                    Stated.of(20, "20", place),
                    Stated.text(e.description(), place),
                    use,
                    List.of(),
                    place));
        }
        Place head = Place.page(SHEET, page);
        Directory.Header header = new Directory.Header(
                Stated.text(panel, head),
                Stated.text("Electrical room 104", head),
                Stated.text(fedFrom, head),
                Stated.of(Voltage.parse("208Y/120").orElseThrow(), "208Y/120", head),
                Stated.of(3, "3", head),
                Stated.of(4, "4", head),
                Stated.of(225, "225", head),
                Stated.blank(head),
                Stated.of(Directory.Mains.LUGS, "MLO", head),
                Stated.blank(head),
                Stated.blank(head));
        Directory directory = new Directory(
                panel, header, circuits, Directory.Totals.none(), Place.page(SHEET, page), 0.98, List.of(), List.of());
        directories.add(directory);
        return directory;
    }

    private static String load(String panel, int p) {
        String[] loads = {
            "RECEPT RM ", "LTG CORRIDOR ", "RECEPT GFI ", "VAV BOX ", "EXHAUST FAN EF-", "UNIT HEATER UH-", "COPIER RM "
        };
        if (p % 13 == 0) return "SPARE";
        return loads[(p * 5 + panel.length() + panel.charAt(panel.length() - 1)) % loads.length] + (100 + p * 3 % 40);
    }

    private Audit audit() throws IOException {
        Directory a = directory("LP-2A", "MSB-7", 42, 0, 0, 0);
        Directory b = directory("LP-2B", "MSB-9", 42, 90, 36, 50);
        Directory em = directory("LP-EM", "ATS-1", 18, 270, -15, 22);
        Files.createDirectories(folder.resolve("drawings"));
        Path file = folder.resolve(SHEET);
        printed.save(file);
        printed.document().close();
        Source source = new Source(SHEET, file, Source.Kind.PDF, Files.size(file), sha256(file));
        Source workbook =
                new Source("drawings/HP-1.xlsx", folder.resolve("drawings/HP-1.xlsx"), Source.Kind.WORKBOOK, 1, "0");
        List<Observation> survey = List.of(
                seen("MSB", "7", "feeds", "LP-2B", "opened", 2),
                seen("MSB", "9", "feeds", "LP-2A", "opened", 3),
                seen("LP-2A", "3", "feeds", "Recept rm 214", "tone", 4),
                seen("LP-2A", "13", "feeds", "Dock leveller", "opened", 5),
                seen("LP-2A", "8", "nothing", "", "opened", 6),
                seen("LP-2A", "41", "fed by", "INV-1", "visual", 7),
                seen("LP-2A", "5", "feeds", "VAV box 99", "tone", 8),
                seen("LP-2A", "5", "does not feed", "VAV box 99", "opened", 9),
                seen("LP-2A", "1", "feeds", load("LP-2A", 1), "tone", 10));
        List<Finding> findings = findings(a, b, survey);
        Network network = network(survey, a, b, em);
        List<Verdict> verdicts = verdicts();
        return new Audit(
                new RecordSet("whinfell", folder, settings(), List.of(source, workbook), List.of()),
                List.of(
                        new Audit.Input(
                                source,
                                3,
                                0,
                                List.of(new Problem(
                                        Place.page(SHEET, 3),
                                        "Two rows are hidden by a stamp.",
                                        "Ask for a clean print."))),
                        new Audit.Input(workbook, 1, 0, List.of())),
                new Drawings(directories, new OneLine(List.of(), List.of())),
                survey,
                network,
                verdicts,
                List.of(new DrawingVerdict(
                        SHEET,
                        Standing.FAILS,
                        List.of("LP-2A", "LP-2B", "LP-EM"),
                        List.of(
                                "LP-2A fails: opened MSB/7 leaves it live through MSB/9.",
                                "LP-2B fails: opened MSB/9 leaves it live through MSB/7.",
                                "LP-EM is unproven: its supply was not traced."))),
                findings,
                List.of(),
                List.of(),
                new Coverage(
                        new Coverage.Share("", 102, 8, 6, OptionalDouble.empty()),
                        List.of(),
                        Map.of(),
                        Map.of(),
                        "The circuits were chosen, so they say nothing of the rest."),
                plan());
    }

    private static Settings settings() {
        Settings none = Settings.none();
        return new Settings(
                Optional.of("Whinfell Annex"),
                none.columns(),
                none.same(),
                none.distinct(),
                none.abbreviations(),
                none.modified(),
                none.numbering(),
                none.lifeSafety(),
                none.chosen());
    }

    private static Correction fix(Directory d, int position, Correction.Field field, String reads, String should) {
        Directory.Circuit c = d.circuits().get(position - 1);
        return new Correction(c.place(), d.panel(), c.ref().inWords(), field, reads, should, "Traced otherwise.");
    }

    private static List<Finding> findings(Directory a, Directory b, List<Observation> survey) {
        List<Finding> all = new ArrayList<>();
        all.add(said(
                "crossed-feeds",
                Severity.DANGER,
                "MSB",
                Optional.of("7"),
                List.of(new Finding.Part("MSB", Optional.of("9"))),
                "MSB/7 feeds LP-2A, MSB/9 feeds LP-2B",
                "MSB/7 feeds LP-2B, MSB/9 feeds LP-2A",
                List.of(a.place(), b.place()),
                survey.subList(0, 2),
                "The feeders of LP-2A and LP-2B are crossed at MSB: opening MSB/7 leaves LP-2A live.",
                "Exchange the two feeders on every drawing.",
                List.of(
                        new Correction(
                                Place.page(SHEET, 1, new Box(45, 84, 120, 11)),
                                "LP-2A",
                                "",
                                Correction.Field.FED_FROM,
                                "MSB-7",
                                "MSB-9",
                                "Traced."),
                        new Correction(
                                Place.page(SHEET, 2, new Box(45, 84, 120, 11)),
                                "LP-2B",
                                "",
                                Correction.Field.FED_FROM,
                                "MSB-9",
                                "MSB-7",
                                "Traced."))));
        all.add(said(
                "undocumented-source",
                Severity.DANGER,
                "LP-2A",
                Optional.of("41"),
                List.of(),
                "LP-2A/41 feeds " + load("LP-2A", 41),
                "LP-2A/41 is fed by INV-1",
                List.of(a.circuits().get(40).place()),
                survey.subList(5, 6),
                "A solar inverter feeds LP-2A through circuit 41, and no drawing shows it.",
                "Show INV-1 at LP-2A/41.",
                List.of(fix(
                        a, 41, Correction.Field.DESCRIPTION, load("LP-2A", 41), "INV-1 (backfed solar inverter)"))));
        all.add(said(
                "undocumented-feed",
                Severity.WARNING,
                "LP-2A",
                Optional.of("13"),
                List.of(),
                "spare",
                "feeds Dock leveller",
                List.of(a.circuits().get(12).place()),
                survey.subList(3, 4),
                "LP-2A/13 is drawn spare and feeds the dock leveller.",
                "Write Dock leveller at LP-2A/13.",
                List.of(
                        fix(a, 13, Correction.Field.DESCRIPTION, "SPARE", "Dock leveller"),
                        fix(a, 13, Correction.Field.RATING, "20", "30"))));
        all.add(said(
                "feeds-other",
                Severity.WARNING,
                "LP-2A",
                Optional.of("3"),
                List.of(),
                load("LP-2A", 3),
                "Recept rm 214",
                List.of(a.circuits().get(2).place()),
                survey.subList(2, 3),
                "LP-2A/3 feeds receptacles in room 214.",
                "Write Recept rm 214 at LP-2A/3.",
                List.of(fix(a, 3, Correction.Field.DESCRIPTION, load("LP-2A", 3), "Recept rm 214"))));
        all.add(said(
                "nothing-connected",
                Severity.NOTICE,
                "LP-2A",
                Optional.of("8"),
                List.of(),
                load("LP-2A", 8),
                "nothing",
                List.of(a.circuits().get(7).place()),
                survey.subList(4, 5),
                "LP-2A/8 is drawn with a load and feeds nothing.",
                "Write SPARE at LP-2A/8.",
                List.of(fix(a, 8, Correction.Field.USE, load("LP-2A", 8), "SPARE"))));
        all.add(said(
                "survey-conflict",
                Severity.WARNING,
                "LP-2A",
                Optional.of("5"),
                List.of(),
                load("LP-2A", 5),
                "two rows that cannot both be true",
                List.of(a.circuits().get(4).place()),
                survey.subList(6, 8),
                "LP-2A/5 was seen to feed VAV box 99 and not to feed it.",
                "Trace LP-2A/5 again before the drawing is changed.",
                List.of()));
        for (int p : new int[] {2, 17, 42})
            all.add(said(
                    "feeds-other",
                    Severity.WARNING,
                    "LP-2B",
                    Optional.of(Integer.toString(p)),
                    List.of(),
                    load("LP-2B", p),
                    "Água <Ω> 会議室 rm " + p,
                    List.of(b.circuits().get(p - 1).place()),
                    List.of(),
                    "LP-2B/" + p + " feeds another load.",
                    "",
                    List.of(fix(b, p, Correction.Field.DESCRIPTION, load("LP-2B", p), "Água <Ω> 会議室 rm " + p))));
        all.add(said(
                "undocumented-feed",
                Severity.WARNING,
                "LP-EM",
                Optional.of("19"),
                List.of(),
                "not drawn",
                "Fire pump controller",
                List.of(Place.page(SHEET, 3)),
                List.of(),
                "LP-EM/19 is not drawn and feeds the fire pump controller.",
                "Add the entry.",
                List.of(new Correction(
                        Place.page(SHEET, 3),
                        "LP-EM",
                        "19",
                        Correction.Field.DESCRIPTION,
                        "",
                        "Fire pump controller",
                        "Not drawn."))));
        all.add(said(
                "vague-entry",
                Severity.NOTICE,
                "LP-EM",
                Optional.of("6"),
                List.of(),
                "RECEPT",
                "",
                List.of(directoriesPlace(3, 6)),
                List.of(),
                "LP-EM/6 cannot be told from LP-EM/8.",
                "Say which room LP-EM/6 serves.",
                List.of()));
        return all;
    }

    /** Where a position of the third page's panel stands: it is printed like the others. */
    private static Place directoriesPlace(int page, int position) {
        double x = position % 2 == 1 ? PrintedSchedule.LEFT : PrintedSchedule.MIDDLE;
        double y = PrintedSchedule.TOP + (position - 1) / 2 * PrintedSchedule.ROW;
        return Place.page(
                SHEET, page, new Box(x, y, PrintedSchedule.MIDDLE - PrintedSchedule.LEFT, PrintedSchedule.ROW));
    }

    private static Equipment equipment(String name, EquipmentKind kind, boolean drawn, Place... at) {
        return new Equipment(name, kind, drawn, true, List.of(), List.of(at), List.of(), false, false);
    }

    private static Connection wire(
            String from, String device, String to, Flow flow, asfound.network.Standing standing, boolean drawn) {
        List<Device> devices = device.isEmpty() ? List.of() : List.of(new Device(from, device));
        return new Connection(from, devices, to, flow, drawn, false, false, standing, List.of(), List.of());
    }

    private static Network network(List<Observation> survey, Directory a, Directory b, Directory em) {
        var confirmed = asfound.network.Standing.CONFIRMED;
        var untraced = asfound.network.Standing.UNTRACED;
        var contradicted = asfound.network.Standing.CONTRADICTED;
        var found = asfound.network.Standing.FOUND;
        List<Equipment> equipment = List.of(
                equipment("ATS-1", TRANSFER_SWITCH, true),
                equipment("EG-1", GENERATOR, true),
                equipment("INV-1", INVERTER, false),
                equipment("LP-2A", PANEL, true, a.place()),
                equipment("LP-2B", PANEL, true, b.place()),
                equipment("LP-EM", PANEL, true, em.place()),
                equipment("MSB", SWITCHBOARD, true),
                equipment("Utility", UTILITY, true));
        List<Connection> connections = List.of(
                wire("ATS-1", "L", "LP-EM", Flow.FEEDER, untraced, true),
                wire("EG-1", "1", "ATS-1", Flow.ONE_WAY, untraced, true),
                new Connection(
                        "INV-1",
                        List.of(new Device("LP-2A", "41")),
                        "LP-2A",
                        Flow.FEEDER,
                        false,
                        false,
                        false,
                        found,
                        List.of(),
                        survey.subList(5, 6)),
                wire("MSB", "7", "LP-2A", Flow.FEEDER, contradicted, true),
                wire("MSB", "7", "LP-2B", Flow.FEEDER, found, false),
                wire("MSB", "9", "LP-2A", Flow.FEEDER, found, false),
                wire("MSB", "9", "LP-2B", Flow.FEEDER, contradicted, true),
                wire("MSB", "11", "ATS-1", Flow.ONE_WAY, confirmed, true),
                wire("Utility", "", "MSB", Flow.FEEDER, untraced, true));
        List<DeviceRecord> devices = new ArrayList<>();
        for (Directory d : List.of(a, b, em))
            for (Directory.Circuit c : d.circuits()) devices.add(record(d, c, survey));
        for (String key : List.of("7", "9"))
            devices.add(new DeviceRecord(
                    new Device("MSB", key), List.of(), sightings("MSB", key, survey), DeviceRecord.Tracing.TRACED));
        return new Network(equipment, connections, devices, List.of());
    }

    private static DeviceRecord record(Directory d, Directory.Circuit c, List<Observation> survey) {
        String text = c.description().or("");
        Optional<Served> serves =
                c.use() == Directory.Use.LOAD ? Optional.of(new Served(text, Optional.empty())) : Optional.empty();
        List<DeviceRecord.Sighting> sightings = sightings(d.panel(), Integer.toString(c.position()), survey);
        DeviceRecord.Tracing tracing = sightings.isEmpty()
                ? DeviceRecord.Tracing.NOT_SEEN
                : sightings.size() > 1 ? DeviceRecord.Tracing.CONFLICT : DeviceRecord.Tracing.TRACED;
        return new DeviceRecord(
                new Device(d.panel(), Integer.toString(c.position())),
                List.of(new DeviceRecord.Showing(
                        serves, c.use(), Optional.of(c), Optional.of(d), Optional.empty(), c.place())),
                sightings,
                tracing);
    }

    private static List<DeviceRecord.Sighting> sightings(String panel, String key, List<Observation> survey) {
        return survey.stream()
                .filter(o -> o.panel().or("").equals(panel)
                        && o.circuit().value().orElseThrow().key().equals(key))
                .map(o -> new DeviceRecord.Sighting(
                        o,
                        o.found()
                                .value()
                                .map(f -> new Served(
                                        f,
                                        f.startsWith("LP-") || f.startsWith("INV")
                                                ? Optional.of(f)
                                                : Optional.empty())),
                        false))
                .toList();
    }

    private static List<Verdict> verdicts() {
        Device seven = new Device("MSB", "7"), nine = new Device("MSB", "9"), back = new Device("LP-2A", "41");
        return List.of(
                new Verdict(
                        "ATS-1",
                        Standing.UNPROVEN,
                        List.of(new Device("EG-1", "1"), new Device("MSB", "11")),
                        Optional.empty(),
                        false,
                        List.of("EG-1"),
                        List.of("EG-1/1"),
                        "EG-1/1 was not traced to ATS-1.",
                        List.of("LP-EM"),
                        List.of()),
                new Verdict(
                        "LP-2A",
                        Standing.FAILS,
                        List.of(seven),
                        Optional.of(List.of(back, nine)),
                        false,
                        List.of("INV-1", "Utility"),
                        List.of("Utility to MSB (no device)", "MSB/9"),
                        "With MSB/7 open, LP-2A stays live through MSB/9 and from INV-1 through LP-2A/41.",
                        List.of("LP-2B"),
                        List.of()),
                new Verdict(
                        "LP-2B",
                        Standing.FAILS,
                        List.of(nine),
                        Optional.of(List.of(seven)),
                        false,
                        List.of("Utility"),
                        List.of("MSB/7"),
                        "With MSB/9 open, LP-2B stays live through MSB/7.",
                        List.of("LP-2A"),
                        List.of()),
                new Verdict(
                        "LP-EM",
                        Standing.UNPROVEN,
                        List.of(new Device("ATS-1", "L")),
                        Optional.empty(),
                        false,
                        List.of("EG-1", "Utility"),
                        List.of("ATS-1/L"),
                        "ATS-1/L was not traced to LP-EM.",
                        List.of(),
                        List.of()),
                new Verdict(
                        "MSB",
                        Standing.AGREES,
                        List.of(new Device("Utility", "M1")),
                        Optional.of(List.of(new Device("Utility", "M1"))),
                        true,
                        List.of(),
                        List.of(),
                        "Utility/M1 was traced to MSB, and no other way of supply was drawn or found.",
                        List.of("ATS-1", "LP-2A", "LP-2B"),
                        List.of()));
    }

    private static List<Trace> plan() {
        return List.of(
                new Trace(
                        1,
                        Optional.of("Generator yard"),
                        "EG-1",
                        "1",
                        "ATS-1",
                        Observation.Method.OPENED,
                        "Settles ATS-1 and LP-EM, which are unproven.",
                        List.of("ATS-1", "LP-EM"),
                        List.of()),
                new Trace(
                        2,
                        Optional.of("Electrical room 104"),
                        "ATS-1",
                        "L",
                        "LP-EM",
                        Observation.Method.OPENED,
                        "Settles LP-EM, which is unproven.",
                        List.of("LP-EM"),
                        List.of()),
                new Trace(
                        3,
                        Optional.of("Electrical room 104"),
                        "LP-2A",
                        "5",
                        load("LP-2A", 5),
                        Observation.Method.TONE,
                        "Resolves two observations that cannot both be true.",
                        List.of(),
                        List.of("survey-conflict-00000000")),
                new Trace(
                        4,
                        Optional.empty(),
                        "LP-2B",
                        "4",
                        "=HYPERLINK(\"x\")",
                        Observation.Method.TONE,
                        "Widens the coverage of LP-2B, where three of three traced entries were wrong.",
                        List.of(),
                        List.of()));
    }

    public static String sha256(Path file) throws IOException {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
        } catch (java.security.NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
