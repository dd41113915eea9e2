package asfound.drawing.schedule.sample;

import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import asfound.model.Place;
import asfound.model.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Compares what was read of a workbook or text table with what was written, sheet by sheet: what is said of one sheet
 * excuses nothing on another.
 *
 * @param different all differences, whether or not a word was said
 * @param silent those of which nothing was said
 * @param alarms what was said of sheets that were read exactly
 */
record GridCheck(List<String> different, List<String> silent, List<String> alarms) {

    private static final Pattern ROWS = Pattern.compile("(?i)\\brows? (\\d+(?:, \\d+)*)");

    static GridCheck of(GridSheets.Drawn drawn, ScheduleReading reading) {
        GridCheck check = new GridCheck(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        SampleCheck.Shown shown = shown(drawn.layout());
        boolean book = drawn.layout().kind() == GridLayout.Kind.WORKBOOK;
        for (GridSheets.Written sheet : drawn.sheets()) check.sheet(sheet, shown, of(sheet, reading, book));
        return check;
    }

    private static SampleCheck.Shown shown(GridLayout layout) {
        boolean totals = layout.totals() != GridLayout.TotalStyle.NONE;
        return new SampleCheck.Shown(
                layout.loads() != GridLayout.LoadStyle.NONE, layout.loads().isByPhase(), totals);
    }

    /** What was read of one sheet; what is said of rows is put in terms of the positions that stand in them. */
    private static ScheduleReading of(GridSheets.Written sheet, ScheduleReading whole, boolean book) {
        String name = book ? sheet.paper().name() : "";
        List<Directory> directories = whole.directories().stream()
                .filter(d -> isOn(d.place(), name))
                .map(d -> new Directory(
                        d.panel(),
                        d.header(),
                        d.circuits(),
                        d.totals(),
                        d.place(),
                        d.confidence(),
                        d.unread(),
                        d.problems().stream().map(p -> inPositions(p, sheet)).toList()))
                .toList();
        List<Problem> problems = whole.problems().stream()
                .filter(p -> isOn(p.place(), name))
                .map(p -> inPositions(p, sheet))
                .toList();
        return new ScheduleReading(directories, problems, 1);
    }

    private static boolean isOn(Place place, String sheet) {
        return !(place instanceof Place.InRow r) || r.sheet().equals(sheet);
    }

    private static Problem inPositions(Problem p, GridSheets.Written sheet) {
        TreeSet<Integer> positions = new TreeSet<>();
        Matcher m = ROWS.matcher(p.message());
        while (m.find())
            for (String row : m.group(1).split(", "))
                positions.addAll(sheet.paper().positionsIn(Integer.parseInt(row) - 1));
        return positions.isEmpty() ? p : new Problem(p.place(), p.message() + " " + positions, p.remedy());
    }

    private void sheet(GridSheets.Written sheet, SampleCheck.Shown shown, ScheduleReading read) {
        List<String> here = SampleCheck.differences(sheet.panels(), shown, read);
        different.addAll(here);
        List<Problem> said = new ArrayList<>(read.problems());
        read.directories().forEach(d -> said.addAll(d.problems()));
        List<String> unsaid = new ArrayList<>();
        if (sheet.panels().isEmpty() && said.isEmpty()) unsaid.add("a sheet that is no schedule is passed over");
        sheet.crossedOut().forEach((panel, positions) -> {
            if (said.stream().noneMatch(p -> p.message().contains("crossed out") && SaidOf.positions(p, positions, "")))
                unsaid.add(panel + " at " + positions + ": crossed out, and read as if it were not");
        });
        unsaid.addAll(SampleCheck.silentDifferences(sheet.panels(), shown, read));
        silent.addAll(unsaid);
        boolean exact = here.isEmpty()
                && !sheet.panels().isEmpty()
                && sheet.crossedOut().isEmpty();
        if (exact) said.forEach(p -> alarms.add(p.message()));
    }

    /** Whether nothing differs and nothing was said. */
    boolean isExact() {
        return different.isEmpty() && silent.isEmpty() && alarms.isEmpty();
    }
}
