package asfound.drawing.schedule.offices;

import asfound.drawing.schedule.ScheduleReader;
import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.recordset.Limits;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Reads the kept sheets of many offices and compares. As a program it prints the score of each set of them:
 * {@code OfficeSheets [FOLDER]}, by default the kept ones.
 */
final class OfficeSheets {

    static final Path KEPT = Path.of("src/test/resources/asfound/offices");

    private OfficeSheets() {}

    /** Every sheet by set and name, with the comparison. */
    static Map<String, OfficeCheck.Result> read(Path folder) throws IOException {
        List<Path> truths;
        try (Stream<Path> files = Files.walk(folder)) {
            truths = files.filter(f -> f.getParent().endsWith("truth")).sorted().toList();
        }
        Map<String, OfficeCheck.Result> results = new TreeMap<>();
        for (Path truth : truths) {
            OfficeTruth said = OfficeTruth.of(truth);
            Path set = truth.getParent().getParent();
            String name = set.getFileName() + "/" + said.file();
            results.put(name, OfficeCheck.of(said, reading(set.resolve(said.file()))));
        }
        return results;
    }

    private static ScheduleReading reading(Path file) throws IOException {
        String name = file.getFileName().toString();
        Source.Kind kind = name.endsWith(".pdf")
                ? Source.Kind.PDF
                : name.endsWith(".xlsx") ? Source.Kind.WORKBOOK : Source.Kind.SCHEDULE_TABLE;
        Source source = new Source(name, file, kind, Files.size(file), "");
        return new ScheduleReader(Settings.none(), Limits.usual()).read(source);
    }

    public static void main(String[] args) throws IOException {
        Map<String, Tally> sets = new TreeMap<>();
        Map<String, Integer> silent = new TreeMap<>();
        read(args.length > 0 ? Path.of(args[0]) : KEPT).forEach((name, result) -> {
            String set = name.substring(0, name.indexOf('/'));
            sets.computeIfAbsent(set, s -> new Tally()).add(result.tally());
            silent.merge(set, result.silent().isEmpty() ? 0 : 1, Integer::sum);
            result.silent().forEach(d -> System.out.println(name + " SILENT " + d));
            result.told().forEach(d -> System.out.println(name + " told " + d));
        });
        sets.forEach((set, t) -> System.out.printf(
                "%s: circuits F1 %.3f, header %.3f, directories that are not there %d, sheets silently wrong %d%n",
                set, t.f1(), t.headers(), t.inventedDirectories(), silent.get(set)));
    }
}
