package asfound.sample;

import asfound.drawing.Drawings;
import asfound.model.Box;
import asfound.model.CircuitRef;
import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.model.Directory.Use;
import asfound.model.EquipmentKind;
import asfound.model.OneLine;
import asfound.model.Place;
import asfound.model.Stated;
import asfound.model.Voltage;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;

/** Draws a building: a schedule for each board, feeders and equipment of the one-line. */
final class PaperWriter {

    private final Campus campus;
    private final RandomGenerator random;
    private final List<OneLine.Feeder> feeders = new ArrayList<>();
    private final List<OneLine.Listed> listed = new ArrayList<>();

    PaperWriter(Campus campus, RandomGenerator random) {
        this.campus = campus;
        this.random = random;
    }

    Drawings drawings() {
        List<Directory> directories = new ArrayList<>();
        for (Board b : campus.boards) {
            if (!b.drawn) continue;
            list(b);
            if (b.hasSchedule()) directories.add(directory(b));
            for (Slot s : b.slots) if (s.drawnTo != null) feeder(b.name, s.circuit(), s.drawnTo.name, s);
        }
        for (String[] row : campus.furtherRows) feeder(row[0], row[1], row[2], null);
        return Building.drawings(directories, feeders, listed);
    }

    private Directory directory(Board b) {
        Place page = Place.page("drawings/" + b.name + ".pdf", 1);
        List<Circuit> circuits = new ArrayList<>();
        Stream.concat(b.slots.stream(), b.clashing.stream())
                .sorted(java.util.Comparator.comparing(s -> s.positions.get(0)))
                .forEach(s -> circuits.add(circuit(s, page.file(), circuits.size())));
        double[] phases = new double[3];
        for (Circuit c : circuits)
            for (int i = 0; i < c.loadVA().size(); i++)
                phases[i] += c.loadVA().get(i).or(0.0);
        double total = phases[0] + phases[1] + phases[2];
        List<Stated<Double>> byPhase = new ArrayList<>();
        for (double va : phases) byPhase.add(va(va, page));
        String printed = random.nextInt(3) == 0 ? "PANEL " + b.name : b.name;
        return new Directory(
                b.kind == EquipmentKind.PANEL ? printed : b.name,
                header(b, page),
                circuits,
                new Directory.Totals(byPhase, va(b.totalsWrong ? total + 1500 : total, page), Stated.blank(page)),
                page,
                1,
                List.of(),
                List.of());
    }

    private Directory.Header header(Board b, Place page) {
        Directory.Header none = Directory.Header.empty();
        String fedFrom = b.headerSays != null
                ? b.headerSays
                : b.parent != null ? Writings.supply(b.parent, random) : b.behind != null ? b.behind.name : "";
        return new Directory.Header(
                Stated.text(b.name, page),
                none.location(),
                Stated.text(fedFrom, page),
                Stated.of(Voltage.parse(b.voltage).orElseThrow(), b.voltage, page),
                Stated.of(3, "3", page),
                Stated.of(4, "4", page),
                Stated.of(b.bus, Integer.toString(b.bus), page),
                none.mainA(),
                none.mains(),
                none.interruptingKA(),
                none.mounting());
    }

    private Circuit circuit(Slot s, String file, int line) {
        Place at = Place.page(file, 1, new Box(s.positions.get(0) % 2 == 1 ? 40 : 320, 100 + 12 * line, 240, 12));
        String text = s.drawnText != null
                ? s.drawnText
                : s.drawnTo != null
                        ? Writings.entry(s.drawnTo, random)
                        : s.drawnLoad != null ? s.drawnLoad.drafted() : "";
        List<Stated<Double>> loads = new ArrayList<>();
        if (s.loadVA.length > 0)
            for (int i = 0; i < 3; i++)
                loads.add(i == SurveyWriter.phaseIndex(s) ? va(s.loadVA[0], at) : Stated.blank(at));
        return new Circuit(
                s.positions,
                "",
                s.poles(),
                s.use == Use.SPACE ? Stated.blank(at) : Stated.of(s.rating, Integer.toString(s.rating), at),
                s.use == Use.LOAD ? Stated.text(text, at) : Stated.blank(at),
                s.use,
                loads,
                at);
    }

    private static Stated<Double> va(double va, Place at) {
        return Stated.of(va, Long.toString(Math.round(va)), at);
    }

    private void feeder(String from, String device, String to, Slot slot) {
        Place at = Place.row("one-line/feeders.csv", feeders.size() + 2);
        int rating = slot == null ? 0 : slot.oneLineRating != null ? slot.oneLineRating : slot.rating;
        feeders.add(new OneLine.Feeder(
                Stated.text(from, at),
                Stated.text(device, at).read(CircuitRef::parse),
                Stated.text(to, at),
                slot == null ? Stated.blank(at) : Stated.of(rating, Integer.toString(rating), at),
                slot == null ? Stated.blank(at) : Stated.of(slot.poles(), Integer.toString(slot.poles()), at),
                Stated.blank(at),
                Stated.blank(at),
                Stated.blank(at),
                false,
                false,
                "E-1",
                "",
                at));
    }

    /** A transformer is listed with both its sides. */
    private static Stated<Voltage> listedVoltage(Board b, Place at) {
        String text = b.kind == EquipmentKind.TRANSFORMER
                ? Campus.HIGH + " - " + Campus.LOW
                : b.hasSchedule() ? b.voltage : "";
        return text.isEmpty() ? Stated.blank(at) : Stated.of(Voltage.parse(text).orElseThrow(), text, at);
    }

    private void list(Board b) {
        Place at = Place.row("one-line/equipment.csv", listed.size() + 2);
        int bus = b.listedBus != null ? b.listedBus : b.bus;
        listed.add(new OneLine.Listed(
                Stated.text(b.name, at),
                b.kind,
                listedVoltage(b, at),
                b.hasSchedule() ? Stated.of(bus, Integer.toString(bus), at) : Stated.blank(at),
                Stated.blank(at),
                Stated.blank(at),
                Stated.blank(at),
                "E-1",
                "",
                at));
    }
}
