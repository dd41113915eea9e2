package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import asfound.model.Problem;
import asfound.recordset.Limits;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** What is read of a file with the usual limits and without settings, and what tests ask of it. */
final class Readings {

    private Readings() {}

    static ScheduleReading of(Path file, Source.Kind kind) throws IOException {
        Source source = new Source(file.getFileName().toString(), file, kind, Files.size(file), "");
        return new ScheduleReader(Settings.none(), Limits.usual()).read(source);
    }

    /** The one directory of a table as it stands in a CSV file. */
    static Directory table(String csv) throws IOException {
        Path file = Files.createTempFile("table", ".csv");
        try {
            Files.writeString(file, csv);
            return only(of(file, Source.Kind.SCHEDULE_TABLE));
        } finally {
            Files.delete(file);
        }
    }

    static Directory only(ScheduleReading read) {
        assertThat(read.directories()).as(() -> read.problems().toString()).hasSize(1);
        return read.directories().get(0);
    }

    /** Each circuit by its positions and its description: {@code [1, 3] Lathe}. */
    static List<String> circuits(Directory d) {
        return d.circuits().stream()
                .map(c -> c.positions() + " " + c.description().or(""))
                .toList();
    }

    /** What all phases of each circuit take together, in VA. */
    static List<Double> loads(Directory d) {
        return d.circuits().stream()
                .map(c -> c.loadVA().stream()
                        .mapToDouble(l -> l.value().orElse(0.0))
                        .sum())
                .toList();
    }

    static List<String> said(List<Problem> problems) {
        return problems.stream().map(Problem::message).toList();
    }
}
