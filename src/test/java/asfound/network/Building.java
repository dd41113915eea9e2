package asfound.network;

import asfound.drawing.Drawings;
import asfound.model.CircuitRef;
import asfound.model.Directory;
import asfound.model.EquipmentKind;
import asfound.model.Observation;
import asfound.model.OneLine;
import asfound.model.Place;
import asfound.model.Stated;
import asfound.recordset.Settings;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Small buildings in few words: drawings and a survey as plain records, for tests. */
public final class Building {

    private final List<Directory> directories = new ArrayList<>();
    private final List<OneLine.Feeder> feeders = new ArrayList<>();
    private final List<OneLine.Listed> listed = new ArrayList<>();
    private final List<Observation> survey = new ArrayList<>();
    private final Map<String, LocalDate> modified = new HashMap<>();
    private final List<String> lifeSafety = new ArrayList<>();

    /** A feeder row; a blank device cannot be opened. */
    public Building feeder(String from, String device, String to) {
        return feeder(from, device, to, false, false);
    }

    public Building tie(String from, String device, String to) {
        return feeder(from, device, to, true, true);
    }

    public Building feeder(String from, String device, String to, boolean open, boolean tie) {
        Place place = Place.row("one-line/feeders.csv", feeders.size() + 2);
        feeders.add(new OneLine.Feeder(
                Stated.text(from, place),
                ref(device, place),
                Stated.text(to, place),
                Stated.blank(),
                Stated.blank(),
                Stated.blank(),
                Stated.blank(),
                Stated.blank(),
                open,
                tie,
                "",
                "",
                place));
        return this;
    }

    private static Stated<CircuitRef> ref(String device, Place place) {
        return Stated.text(device, place).read(CircuitRef::parse);
    }

    public Building equipment(String name, EquipmentKind kind) {
        return equipment(name, kind, "");
    }

    public Building equipment(String name, EquipmentKind kind, String fedFrom) {
        Place place = Place.row("one-line/equipment.csv", listed.size() + 2);
        listed.add(new OneLine.Listed(
                Stated.text(name, place),
                kind,
                Stated.blank(),
                Stated.blank(),
                Stated.blank(),
                Stated.text(fedFrom, place),
                Stated.blank(),
                "",
                "",
                place));
        return this;
    }

    /** A directory; entries as {@code "7-9-11 LP-2A"}, {@code "5 SPARE"}, {@code "6 SPACE"}. */
    public Building panel(String panel, String fedFrom, String... entries) {
        return panel(panel, fedFrom, 1.0, entries);
    }

    public Building panel(String panel, String fedFrom, double confidence, String... entries) {
        Place place = Place.page("drawings/" + panel.replace('/', '-') + ".pdf", 1);
        List<Directory.Circuit> circuits = new ArrayList<>();
        for (String entry : entries) {
            int blank = entry.indexOf(' ');
            List<Integer> positions =
                    CircuitRef.parse(entry.substring(0, blank)).orElseThrow().positions();
            String text = entry.substring(blank + 1);
            Directory.Use use = text.equals("SPARE")
                    ? Directory.Use.SPARE
                    : text.equals("SPACE") ? Directory.Use.SPACE : Directory.Use.LOAD;
            circuits.add(new Directory.Circuit(
                    positions, "", positions.size(), Stated.blank(), Stated.text(text, place), use, List.of(), place));
        }
        Directory.Header none = Directory.Header.empty();
        Directory.Header header = new Directory.Header(
                Stated.text(panel, place),
                none.location(),
                Stated.text(fedFrom, place),
                none.voltage(),
                none.phases(),
                none.wires(),
                none.busA(),
                none.mainA(),
                none.mains(),
                none.interruptingKA(),
                none.mounting());
        directories.add(new Directory(
                panel, header, circuits, Directory.Totals.none(), place, confidence, List.of(), List.of()));
        return this;
    }

    /** A row seen by tone: {@code saw("MDP", "7", "feeds", "LP-2A")}. */
    public Building saw(String panel, String circuit, String relation, String found) {
        return saw(panel, circuit, relation, found, EquipmentKind.UNKNOWN, "tone", "2024-06-01");
    }

    public Building saw(String panel, String circuit, String relation, String found, EquipmentKind kind) {
        return saw(panel, circuit, relation, found, kind, "tone", "2024-06-01");
    }

    public Building saw(
            String panel,
            String circuit,
            String relation,
            String found,
            EquipmentKind kind,
            String method,
            String day) {
        Place.InRow place = new Place.InRow("survey/survey.csv", "", survey.size() + 2);
        survey.add(new Observation(
                Stated.text(panel, place),
                ref(circuit, place),
                Observation.Relation.of(relation).orElseThrow(),
                Stated.text(found, place),
                kind,
                Observation.Method.of(method).orElseThrow(),
                Stated.blank(),
                Stated.blank(),
                Stated.blank(),
                Stated.blank(),
                Stated.blank(),
                Stated.blank(),
                "J. Moreau",
                day.isEmpty() ? Stated.blank(place) : Stated.of(LocalDate.parse(day), day, place),
                "",
                "",
                place));
        return this;
    }

    public Building modified(String equipment, String day) {
        modified.put(equipment, LocalDate.parse(day));
        return this;
    }

    public Building lifeSafety(String equipment) {
        lifeSafety.add(equipment);
        return this;
    }

    public Drawings drawings() {
        return new Drawings(directories, new OneLine(feeders, listed));
    }

    public List<Observation> survey() {
        return List.copyOf(survey);
    }

    public Settings settings() {
        return new Settings(
                Optional.empty(),
                Map.of(),
                List.of(),
                List.of(),
                Map.of(),
                Map.copyOf(modified),
                Optional.empty(),
                List.copyOf(lifeSafety),
                Optional.empty());
    }

    public Network network() {
        return Networks.build(drawings(), survey(), settings());
    }
}
