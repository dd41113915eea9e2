package asfound.sample;

import asfound.model.Box;
import asfound.model.CircuitRef;
import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.model.Directory.Use;
import asfound.model.EquipmentKind;
import asfound.model.Observation;
import asfound.model.Observation.Method;
import asfound.model.Observation.Relation;
import asfound.model.OneLine;
import asfound.model.Place;
import asfound.model.Stated;
import asfound.model.Voltage;
import asfound.recordset.Settings;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Facts of a building, one to a line.
 *
 * <pre>
 * LP-1 panel 208Y/120 bus 225 main 100 fed from MDP-7      a schedule's header
 * LP-1/7-9-11 100A PANEL LP-2                              an entry; SPARE, SPACE, or no text; "1200 VA" at the end
 * LP-1/1 20A RECEPT RM 101 A 1200 VA                       its load on phase A
 * LP-1 total 2600 VA                                       (or: LP-1 amperes 12; LP-1 phases 1200 800 0)
 * 2: LP-1/7 RECEPT RM 3                                    the same panel on a second drawing
 * MDP/7 -> LP-1 100A 3P 208Y/120 #3 Cu                     a feeder on the one-line (open, tie)
 * ATS-1 is transfer switch 480Y/277 bus 400                equipment listed on the one-line
 * MDP/7 feeds LP-2 [label 2024-01-01 100A 3P phase ABC 208Y/120 kind panel wire #3 Cu by R. Oyelaran]
 * LP-1/3 nothing    LP-1/3 no device    LP-1/42 fed by INV-1    MDP/7 does not feed LP-2
 * LP-1 modified 2021-05-01
 * same LP-1 = L1                                           names that mean one thing
 * </pre>
 *
 * A survey row is by {@code opened} on 2024-03-01 unless it says otherwise.
 */
final class Jottings {

    private static final Pattern SAW = Pattern.compile(
            "^(.+?)(?:/(\\S+))? (feeds|fed by|does not feed|nothing|no device)(?: ([^\\[]+?))?(?: ?\\[(.*)])?$");
    private static final Pattern FEEDER = Pattern.compile("^(.+?)(?:/(\\S+))? -> (\\S+)(.*)$");
    private static final Pattern LISTED = Pattern.compile("^(\\S+) is (.*)$");
    private static final Pattern HEADER = Pattern.compile("^(?:(\\d): )?(\\S+) panel\\b(.*)$");
    private static final Pattern TOTAL = Pattern.compile("^(\\S+) (total|amperes|phases) (.*)$");
    private static final Pattern MODIFIED = Pattern.compile("^(\\S+) modified (\\S+)$");
    private static final Pattern ENTRY = Pattern.compile(
            "^(?:(\\d): )?([^/]+)/(\\S+)(?: (\\d+)A)?(?: (\\d)P)?(?: (.*?))?(?: ([ABC]))?(?: (\\d+) VA)?$");
    private static final Pattern KIND = Pattern.compile("^(transfer switch|[a-z]+)\\b");

    private static final class Sheet {
        final String panel, file;
        final List<Circuit> circuits = new ArrayList<>();
        Directory.Header header = Directory.Header.empty();
        List<Stated<Double>> phases = List.of();
        Stated<Double> total = Stated.blank(), amperes = Stated.blank();

        Sheet(String panel, String file) {
            this.panel = panel;
            this.file = file;
        }

        Directory directory() {
            List<Circuit> sorted = circuits.stream()
                    .sorted(java.util.Comparator.comparingInt(Circuit::position))
                    .toList();
            return new Directory(
                    panel,
                    header,
                    sorted,
                    new Directory.Totals(phases, total, amperes),
                    Place.page(file, 1),
                    1,
                    List.of(),
                    List.of());
        }
    }

    private final Map<String, Sheet> sheets = new LinkedHashMap<>();
    private final List<OneLine.Feeder> feeders = new ArrayList<>();
    private final List<OneLine.Listed> listed = new ArrayList<>();
    private final List<Observation> survey = new ArrayList<>();
    private final Map<String, LocalDate> modified = new LinkedHashMap<>();
    private final List<List<String>> same = new ArrayList<>();

    Jottings read(List<String> lines) {
        for (String line : lines) read(line.strip());
        return this;
    }

    Building building() {
        Settings none = Settings.none();
        Settings settings = new Settings(
                none.building(),
                none.columns(),
                same,
                none.distinct(),
                none.abbreviations(),
                modified,
                none.numbering(),
                none.lifeSafety(),
                none.chosen());
        return new Building(
                Building.drawings(sheets.values().stream().map(Sheet::directory).toList(), feeders, listed),
                survey,
                settings);
    }

    private void read(String line) {
        Matcher m;
        if (line.isEmpty()) return;
        if (line.startsWith("same ")) same.add(List.of(line.substring(5).split(" = ")));
        else if ((m = MODIFIED.matcher(line)).matches()) modified.put(m.group(1), LocalDate.parse(m.group(2)));
        else if ((m = SAW.matcher(line)).matches()) survey.add(saw(m));
        else if ((m = FEEDER.matcher(line)).matches()) feeders.add(feeder(m));
        else if ((m = HEADER.matcher(line)).matches()) header(m);
        else if ((m = TOTAL.matcher(line)).matches()) total(m);
        else if ((m = LISTED.matcher(line)).matches()) listed.add(listed(m));
        else if ((m = ENTRY.matcher(line)).matches()) entry(m);
        else throw new IllegalArgumentException("not understood: " + line);
    }

    private Sheet sheet(String drawing, String panel) {
        String file = "drawings/" + (drawing == null ? "" : drawing + "/") + panel + ".pdf";
        return sheets.computeIfAbsent(file, f -> new Sheet(panel, f));
    }

    private void entry(Matcher m) {
        Sheet sheet = sheet(m.group(1), m.group(2));
        CircuitRef ref = CircuitRef.parse(m.group(3)).orElseThrow();
        String text = m.group(6) == null ? "" : m.group(6);
        Use use = text.equals("SPARE") ? Use.SPARE : text.equals("SPACE") ? Use.SPACE : Use.LOAD;
        Place place = Place.page(
                sheet.file, 1, new Box(ref.positions().get(0) % 2 * 200, sheet.circuits.size() * 12, 200, 12));
        Optional<Double> load = Optional.ofNullable(m.group(8)).map(Double::parseDouble);
        List<Stated<Double>> loads = new ArrayList<>();
        if (load.isPresent() && m.group(7) != null) {
            for (char phase : "ABC".toCharArray())
                loads.add(
                        m.group(7).charAt(0) == phase ? Stated.of(load.get(), m.group(8), place) : Stated.blank(place));
        } else load.ifPresent(va -> loads.add(Stated.of(va, m.group(8), place)));
        int poles = m.group(5) == null ? ref.positions().size() : Integer.parseInt(m.group(5));
        sheet.circuits.add(new Circuit(
                ref.positions(),
                "",
                poles,
                number(m.group(4), place),
                use == Use.LOAD ? Stated.text(text, place) : Stated.blank(place),
                use,
                loads,
                place));
    }

    private void header(Matcher m) {
        Sheet sheet = sheet(m.group(1), m.group(2));
        String rest = m.group(3);
        Place place = Place.page(sheet.file, 1);
        String fedFrom = after(rest, "fed from (.*)$");
        String before = rest.replaceFirst("fed from .*$", "");
        Directory.Header none = Directory.Header.empty();
        sheet.header = new Directory.Header(
                Stated.text(sheet.panel, place),
                none.location(),
                Stated.text(fedFrom, place),
                voltage(before, place),
                none.phases(),
                none.wires(),
                number(after(before, "bus (\\d+)"), place),
                number(after(before, "main (\\d+)"), place),
                none.mains(),
                none.interruptingKA(),
                none.mounting());
    }

    private void total(Matcher m) {
        Sheet sheet = sheet(null, m.group(1));
        Place place = Place.page(sheet.file, 1);
        List<Stated<Double>> figures = new ArrayList<>();
        for (String figure : m.group(3).replace(" VA", "").split(" "))
            figures.add(Stated.of(Double.parseDouble(figure), figure, place));
        switch (m.group(2)) {
            case "total" -> sheet.total = figures.get(0);
            case "amperes" -> sheet.amperes = figures.get(0);
            default -> sheet.phases = figures;
        }
    }

    private OneLine.Feeder feeder(Matcher m) {
        Place place = Place.row("one-line/feeders.csv", feeders.size() + 2);
        String rest = " " + m.group(4);
        return new OneLine.Feeder(
                Stated.text(m.group(1), place),
                circuit(m.group(2), place),
                Stated.text(m.group(3), place),
                number(after(rest, " (\\d+)A\\b"), place),
                number(after(rest, " (\\d)P\\b"), place),
                voltage(rest.replaceAll("#.*", ""), place),
                Stated.text(after(rest, " (#.*)$"), place),
                Stated.blank(place),
                rest.contains(" open"),
                rest.contains(" tie"),
                "E-1",
                "",
                place);
    }

    private OneLine.Listed listed(Matcher m) {
        Place place = Place.row("one-line/equipment.csv", listed.size() + 2);
        Matcher kind = KIND.matcher(m.group(2));
        if (!kind.find()) throw new IllegalArgumentException("no kind: " + m.group(2));
        String rest = m.group(2).substring(kind.end());
        String before = rest.replaceFirst("fed from .*$", "");
        return new OneLine.Listed(
                Stated.text(m.group(1), place),
                EquipmentKind.of(kind.group(1)).orElseThrow(),
                voltage(before, place),
                number(after(before, "bus (\\d+)"), place),
                number(after(before, "main (\\d+)"), place),
                Stated.text(after(rest, "fed from (.*)$"), place),
                Stated.blank(place),
                "E-1",
                "",
                place);
    }

    private Observation saw(Matcher m) {
        Place.InRow place = new Place.InRow("survey/survey.csv", "", survey.size() + 2);
        String how = " " + (m.group(5) == null ? "" : m.group(5));
        String date = after(how, "(\\d{4}-\\d\\d-\\d\\d)");
        String method = after(how, " (opened|tone|visual|label|unknown)\\b");
        return new Observation(
                Stated.text(m.group(1), place),
                circuit(m.group(2), place),
                Relation.of(m.group(3)).orElseThrow(),
                Stated.text(m.group(4) == null ? "" : m.group(4), place),
                EquipmentKind.of(after(how, "kind (transfer switch|[a-z]+)")).orElse(EquipmentKind.UNKNOWN),
                method.isEmpty() ? Method.OPENED : Method.of(method).orElse(Method.UNKNOWN),
                number(after(how, " (\\d)P\\b"), place),
                number(after(how, " (\\d+)A\\b"), place),
                voltage(how.replaceAll("\\d{4}-\\d\\d-\\d\\d", "").replaceAll("#.*", ""), place),
                Stated.text(after(how, "phase ([A-C]+)"), place),
                Stated.text(after(how, "wire (#\\S+ \\S+)"), place),
                Stated.blank(place),
                after(how, "by (.*)$"),
                Stated.of(LocalDate.parse(date.isEmpty() ? "2024-03-01" : date), date, place),
                "",
                "",
                place);
    }

    private static Stated<CircuitRef> circuit(String text, Place place) {
        if (text == null) return Stated.blank(place);
        return Stated.of(CircuitRef.parse(text).orElseThrow(), text, place);
    }

    private static Stated<Voltage> voltage(String text, Place place) {
        Matcher m = Pattern.compile("(?<![\\d-])(\\d{3}-\\d{3}Y/\\d{3}|\\d{3}Y/\\d{3}|\\d{3}/\\d{3}|\\d{3}V)")
                .matcher(text);
        return m.find() ? Stated.of(Voltage.parse(m.group(1)).orElseThrow(), m.group(1), place) : Stated.blank(place);
    }

    private static Stated<Integer> number(String text, Place place) {
        if (text == null || text.isEmpty()) return Stated.blank(place);
        return Stated.of(Integer.parseInt(text), text, place);
    }

    private static String after(String text, String pattern) {
        Matcher m = Pattern.compile(pattern).matcher(text);
        return m.find() ? m.group(1) : "";
    }
}
