package asfound.drawing.schedule.cell;

import asfound.drawing.schedule.phrase.KnownTexts;
import asfound.drawing.schedule.sheet.Extent;
import asfound.drawing.schedule.sheet.Names;
import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.drawing.schedule.sheet.SheetReader;
import asfound.model.Directory;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.recordset.CrossedOut;
import asfound.recordset.Grid;
import asfound.recordset.GridReading;
import asfound.recordset.Grids;
import asfound.recordset.Limit;
import asfound.recordset.Limits;
import asfound.recordset.MergedCells;
import asfound.recordset.Patience;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Reads the schedules of a workbook or of a text table. */
public final class TableFileReader {

    private final Settings settings;
    private final Limits limits;

    public TableFileReader(Settings settings, Limits limits) {
        this.settings = settings;
        this.limits = limits;
    }

    public ScheduleReading read(Source source) {
        try {
            return Patience.within(limits.fileTime(), () -> patiently(source))
                    .orElseGet(() -> nothing(
                            source,
                            "Reading the file took longer than "
                                    + limits.fileTime().toSeconds() + " s, the limit for one file; it was not read.",
                            "Split the file, or " + Limit.FILE_SECONDS.raise() + "."));
        } catch (Exception | StackOverflowError e) {
            return nothing(
                    source,
                    "The table could not be explained (" + e.getClass().getSimpleName() + "); it was not read.",
                    "Save it once more from the program that made it, or split it.");
        }
    }

    private static ScheduleReading nothing(Source source, String message, String remedy) {
        Problem given = new Problem(Place.file(source.file()), message, remedy);
        return new ScheduleReading(List.of(), List.of(given), 0);
    }

    private ScheduleReading patiently(Source source) {
        GridReading grids = Grids.read(source, limits);
        List<Directory> directories = new ArrayList<>();
        List<Problem> problems = new ArrayList<>(grids.problems());
        Map<String, List<MergedCells.Area>> merged =
                source.kind() == Source.Kind.WORKBOOK && !grids.grids().isEmpty()
                        ? MergedCells.read(source.path(), limits.amount(Limit.JOINED_CELLS))
                        : Map.of();
        Map<String, List<CrossedOut.Cell>> crossed =
                source.kind() == Source.Kind.WORKBOOK && !grids.grids().isEmpty()
                        ? CrossedOut.read(source.path())
                        : Map.of();
        SheetReader reader = new SheetReader(settings, new KnownTexts());
        for (Grid written : grids.grids()) {
            ChangedPositions changed = ChangedPositions.of(written);
            Grid grid = changed.grid();
            if (merged.getOrDefault(grid.sheet(), List.of()).size() > limits.amount(Limit.JOINED_CELLS)) {
                problems.add(tooManyJoined(grid));
                continue;
            }
            String name = grid.sheet().isEmpty() ? Names.ofFile(source.file()) : grid.sheet();
            SheetReader.SheetReading read =
                    reader.read(GridSheet.of(grid, merged.getOrDefault(grid.sheet(), List.of())), name);
            CrossedOutRows struck = new CrossedOutRows(grid, crossed.getOrDefault(grid.sheet(), List.of()));
            List<Directory> own = read.parts().stream()
                    .map(Extent::checked)
                    .map(struck::doubted)
                    .toList();
            own = HeadingsBeside.doubted(grid, own);
            directories.addAll(own);
            problems.addAll(read.problems());
            problems.addAll(struck.problems());
            if (!own.isEmpty()) {
                problems.addAll(changed.problems());
                problems.addAll(UnreadTables.problems(grid, own));
            }
            PassedOver.problem(grid, own).ifPresent(problems::add);
            if (own.isEmpty() && read.problems().isEmpty() && !grid.rows().isEmpty()) problems.add(notRecognised(grid));
        }
        return new ScheduleReading(directories, problems, grids.grids().size());
    }

    private Problem tooManyJoined(Grid grid) {
        return new Problem(
                Place.row(grid.file(), grid.sheet(), 1),
                "The sheet has more than " + limits.amount(Limit.JOINED_CELLS)
                        + " blocks of joined cells, the limit for one sheet; it was not read.",
                "Part the cells that need not be joined, or " + Limit.JOINED_CELLS.raise() + ".");
    }

    private static Problem notRecognised(Grid grid) {
        return new Problem(
                grid.place(grid.rows().get(0)),
                "No panel schedule was recognised in this " + (grid.sheet().isEmpty() ? "table" : "sheet") + ".",
                "If it is one, name its columns under 'columns' in record.yaml, or read it by hand.");
    }
}
