package asfound.sample;

import asfound.drawing.Drawings;
import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.model.Observation;
import asfound.model.OneLine;
import asfound.model.Stated;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes drawings and survey to a folder as a record set, the way someone kept them: all feeders, all equipment and all
 * observations in one table each; or each table in pieces, over folders and with separators of chance.
 */
public final class RecordSetFiles {

    private static final List<String> FEEDERS =
            List.of("from", "device", "to", "rating_a", "poles", "voltage", "wire", "normally", "sheet", "note");
    private static final List<String> EQUIPMENT =
            List.of("name", "kind", "voltage", "bus_a", "main_a", "fed_from", "location", "sheet", "note");
    private static final List<String> SURVEY = List.of(
            "panel",
            "circuit",
            "relation",
            "found",
            "kind",
            "method",
            "poles",
            "rating_a",
            "voltage",
            "phase",
            "by",
            "date");
    private static final List<String> SCHEDULE =
            List.of("Circuit", "Poles", "Rating", "Description", "VA A", "VA B", "VA C");

    private final Path root;
    private final Random random;
    private int files;

    private RecordSetFiles(Path root, Random random) {
        this.root = root;
        this.random = random;
    }

    /** Everything in as few files as there can be. */
    public static Path whole(Path root, Drawings drawings, List<Observation> survey, Map<String, LocalDate> modified) {
        return new RecordSetFiles(root, null).write(drawings, survey, modified);
    }

    /** The same rows dealt out over several files in several folders; {@code seed} says how. */
    public static Path split(
            Path root, Drawings drawings, List<Observation> survey, Map<String, LocalDate> modified, long seed) {
        return new RecordSetFiles(root, new Random(seed)).write(drawings, survey, modified);
    }

    private Path write(Drawings drawings, List<Observation> survey, Map<String, LocalDate> modified) {
        drawings.directories().forEach(this::directory);
        table("one-line", "feeders", FEEDERS, rows(drawings.oneLine().feeders(), RecordSetFiles::feeder));
        table("one-line", "equipment", EQUIPMENT, rows(drawings.oneLine().equipment(), RecordSetFiles::listed));
        table("survey", "survey", SURVEY, rows(survey, RecordSetFiles::observation));
        if (!modified.isEmpty())
            text(
                    "record.yaml",
                    new TreeMap<>(modified)
                            .entrySet().stream()
                                    .map(e -> "  \"" + e.getKey() + "\": " + e.getValue() + "\n")
                                    .collect(Collectors.joining("", "modified:\n", "")));
        return root;
    }

    private static <T> List<List<?>> rows(List<T> of, java.util.function.Function<T, List<?>> row) {
        List<List<?>> rows = new ArrayList<>();
        of.forEach(o -> rows.add(row.apply(o)));
        return rows;
    }

    private static List<?> feeder(OneLine.Feeder f) {
        return List.of(
                f.from().raw(),
                f.device().raw(),
                f.to().raw(),
                said(f.ratingA()),
                said(f.poles()),
                f.voltage().raw(),
                f.wire().raw(),
                f.normallyOpen() ? "open" : "",
                f.sheet(),
                f.tie() ? "tie" : f.note());
    }

    private static List<?> listed(OneLine.Listed e) {
        return List.of(
                e.name().raw(),
                e.kind().word(),
                e.voltage().raw(),
                said(e.busA()),
                said(e.mainA()),
                e.fedFrom().raw(),
                e.location().raw(),
                e.sheet(),
                e.note());
    }

    private static List<?> observation(Observation o) {
        return List.of(
                o.panel().raw(),
                o.circuit().raw(),
                o.relation().word(),
                o.found().raw(),
                o.kind().word(),
                o.method().word(),
                said(o.poles()),
                said(o.ratingA()),
                o.voltage().raw(),
                o.phase().raw(),
                o.by(),
                o.date().raw());
    }

    private static String said(Stated<?> value) {
        return value.value().map(Object::toString).orElse(value.raw());
    }

    private void directory(Directory d) {
        List<List<?>> rows = new ArrayList<>();
        rows.add(List.of("PANEL", d.header().designation().raw()));
        if (!d.header().fedFrom().isBlank())
            rows.add(List.of("FED FROM", d.header().fedFrom().raw()));
        if (!d.header().voltage().isBlank())
            rows.add(List.of("VOLTAGE", d.header().voltage().raw()));
        if (!d.header().busA().isBlank())
            rows.add(List.of("BUS", said(d.header().busA()) + "A"));
        rows.add(SCHEDULE);
        for (Circuit c : d.circuits()) rows.add(circuit(c));
        file("drawings", "panel", null, rows);
    }

    private static List<?> circuit(Circuit c) {
        List<Object> cells = new ArrayList<>(List.of(
                c.positions().stream().map(String::valueOf).collect(Collectors.joining(",")),
                c.poles(),
                said(c.ratingA()),
                c.use() == Directory.Use.LOAD
                        ? c.description().raw()
                        : c.use().name().toUpperCase(java.util.Locale.ROOT)));
        for (int i = 0; i < 3; i++)
            cells.add(i < c.loadVA().size() ? said(c.loadVA().get(i)) : "");
        return cells;
    }

    private void table(String folder, String name, List<String> head, List<List<?>> rows) {
        if (rows.isEmpty()) return;
        if (random == null) {
            file(folder, name, head, rows);
            return;
        }
        List<List<?>> dealt = new ArrayList<>(rows);
        Collections.shuffle(dealt, random);
        int pieces = 1 + random.nextInt(Math.min(4, dealt.size()));
        for (int i = 0; i < pieces; i++) {
            int from = dealt.size() * i / pieces, to = dealt.size() * (i + 1) / pieces;
            file(folder, name, head, dealt.subList(from, to));
        }
    }

    private void file(String folder, String name, List<String> head, List<List<?>> rows) {
        String below = random == null ? "" : List.of("", "north/", "sheets/B/").get(random.nextInt(3));
        char separator = random == null ? ',' : ",;\t".charAt(random.nextInt(3));
        Path file = root.resolve(folder + "/" + below + name + "-" + ++files + ".csv");
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(separator).get();
        try {
            Files.createDirectories(file.getParent());
            try (Writer out = Files.newBufferedWriter(file);
                    CSVPrinter csv = new CSVPrinter(out, format)) {
                if (head != null) csv.printRecord(head);
                csv.printRecords(rows);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void text(String name, String text) {
        try {
            Files.createDirectories(root);
            Files.writeString(root.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
