package asfound.command;

import asfound.drawing.schedule.ScheduleReader;
import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.recordset.NothingToDoException;
import asfound.recordset.RecordSets;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import asfound.report.reading.ReadingPictures;
import asfound.report.reading.ReadingRows;
import asfound.report.reading.Readings;
import asfound.report.reading.ReadingsJson;
import asfound.report.table.CsvFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code asfound read}: what was read from drawings, and nothing else. */
@Command(
        name = "read",
        description = "Prints what is read from panel schedules (PDF, .xlsx, CSV), to check a reading by.",
        mixinStandardHelpOptions = true,
        footerHeading = "%nExample:%n",
        footer = "  asfound read drawings/LP-2A.pdf --format json --show pictures")
final class ReadCommand implements Callable<Integer> {

    private enum Format {
        CSV,
        JSON
    }

    @Spec
    private CommandSpec spec;

    @Mixin
    private LimitsOption limits;

    @Parameters(paramLabel = "<file>", arity = "1..*", description = "drawings: PDF, .xlsx or CSV")
    private List<Path> files;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            defaultValue = "csv",
            description = "${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE})")
    private Format format;

    @Option(
            names = "--show",
            paramLabel = "DIR",
            description = "write each page as a picture with what was read drawn over it")
    private Path show;

    @Override
    public Integer call() throws Exception {
        List<Directory> directories = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        ScheduleReader reader = new ScheduleReader(Settings.none(), limits.limits());
        int opened = 0;
        for (Path file : files) {
            List<Problem> own = new ArrayList<>();
            try {
                Source source = RecordSets.single(file, limits.limits(), own);
                opened++;
                ScheduleReading read = read(reader, source, own);
                directories.addAll(read.directories());
                if (show != null) pictures(source, read, opened, own);
            } catch (NothingToDoException missing) {
                if (files.size() == 1) throw missing;
                own.add(new Problem(Place.file(file.toString()), missing.getMessage(), ""));
            }
            problems.addAll(own);
        }
        if (opened == 0) throw new NothingToDoException("None of the " + files.size() + " files could be opened.");
        print(new Readings(directories, problems));
        return 0;
    }

    private static ScheduleReading read(ScheduleReader reader, Source source, List<Problem> own) {
        boolean other = source.kind() == Source.Kind.SURVEY
                || source.kind() == Source.Kind.FEEDERS
                || source.kind() == Source.Kind.SETTINGS;
        if (other) {
            own.add(new Problem(
                    Place.file(source.file()),
                    "The file is no drawing of a panel but "
                            + source.kind().name().toLowerCase(java.util.Locale.ROOT) + ".",
                    "Give a panel schedule: PDF, .xlsx or CSV."));
            return new ScheduleReading(List.of(), List.of(), 0);
        }
        ScheduleReading read = reader.read(source);
        Optional<Problem> changed = RecordSets.changed(source);
        if (changed.isPresent()) {
            own.add(changed.get());
            return new ScheduleReading(List.of(), List.of(), 0);
        }
        // a table of unknown columns that turns out to be a schedule needs no word about its kind
        if (!read.directories().isEmpty() && source.kind() == Source.Kind.UNKNOWN) own.clear();
        own.addAll(read.problems());
        if (read.directories().isEmpty() && own.isEmpty())
            own.add(new Problem(Place.file(source.file()), "No panel schedule was found in the file.", ""));
        return read;
    }

    private void pictures(Source source, ScheduleReading read, int number, List<Problem> own) {
        if (source.kind() != Source.Kind.PDF) {
            own.add(new Problem(Place.file(source.file()), "Pictures are drawn of PDF pages only.", ""));
            return;
        }
        try {
            String stem = source.file().replaceAll("(?i)\\.pdf$", "").replaceAll("[^\\p{L}\\p{N}._-]+", "_");
            ReadingPictures.write(
                    source.path(), files.size() == 1 ? stem : number + "-" + stem, read.directories(), show);
        } catch (IOException e) {
            own.add(new Problem(
                    Place.file(source.file()),
                    "No pictures could be written into " + show + ".",
                    "Give a folder that may be written to."));
        }
    }

    private void print(Readings readings) throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        if (format == Format.JSON) ReadingsJson.write(readings, bytes);
        else {
            CsvFile.write(ReadingRows.of(readings), bytes);
            PrintWriter err = spec.commandLine().getErr();
            readings.everyProblem().forEach(p -> err.println(p.inWords()));
        }
        out.print(bytes.toString(StandardCharsets.UTF_8));
        out.flush();
    }
}
