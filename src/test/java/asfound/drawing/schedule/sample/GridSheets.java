package asfound.drawing.schedule.sample;

import asfound.drawing.schedule.sample.GridLayout.Arrangement;
import asfound.drawing.schedule.sample.GridLayout.Beside;
import asfound.drawing.schedule.sample.GridLayout.HeaderPlace;
import asfound.drawing.schedule.sample.GridLayout.HeaderStyle;
import asfound.drawing.schedule.sample.SamplePanel.SampleCircuit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;

/** Puts random panels into random workbooks and text tables, one for each seed. */
final class GridSheets {

    private static final String[] NOTES = {
        "Lock-on device", "See E-502", "GFCI", "Verify in field", "Existing", "N", "via contactor C-1", "AFCI", "Note 3"
    };

    private final Random random;
    private final GridLayout layout;
    private final GridWords words;
    private final GridHabits habits;
    private final List<Written> sheets = new ArrayList<>();

    private GridSheets(long seed) {
        random = new Random(seed * 0x9E3779B97F4A7C15L + 0x2545F4914F6CDD1DL);
        layout = GridLayout.random(random);
        words = new GridWords(random);
        habits = GridHabits.random(seed, layout);
    }

    /**
     * A worksheet, or a text table.
     *
     * @param crossedOut the positions of a panel that are struck through
     */
    record Written(GridPaper paper, List<SamplePanel> panels, Map<String, TreeSet<Integer>> crossedOut) {}

    /** What was written. */
    record Drawn(GridLayout layout, GridHabits habits, List<Written> sheets) {}

    /** The usual ending of the file that a seed gives. */
    static String ending(long seed) {
        return new GridSheets(seed).layout.kind() == GridLayout.Kind.WORKBOOK ? ".xlsx" : ".csv";
    }

    static Drawn draw(long seed, Path file) throws IOException {
        GridSheets sheets = new GridSheets(seed);
        sheets.compose();
        List<GridPaper> papers = sheets.sheets.stream().map(Written::paper).toList();
        if (sheets.layout.kind() == GridLayout.Kind.WORKBOOK)
            GridBook.write(file, papers, sheets.layout.figures(), sheets.random);
        else GridText.write(file, papers.get(0), sheets.layout, sheets.habits, sheets.random);
        return new Drawn(sheets.layout, sheets.habits, sheets.sheets);
    }

    private void compose() {
        SamplePanels source = new SamplePanels(random);
        List<SamplePanel> panels = new ArrayList<>();
        boolean board = layout.sides().isBoard();
        for (int i = 0; i < layout.panels(); i++)
            panels.add(accented(source.panel(10 * i, layout.sides().step(), board, layout.upper())));
        if (layout.otherSheets()) sheets.add(other());
        if (layout.arrangement() == Arrangement.SHEETS)
            for (SamplePanel p : panels) sheet(p.name().replace("/", "-"), List.of(p));
        else sheet(random.nextBoolean() ? "Sheet1" : "Schedules", panels);
        if (layout.otherSheets() && random.nextBoolean()) sheets.add(other());
    }

    private SamplePanel accented(SamplePanel p) {
        if (!layout.accents()) return p;
        Map<String, String> header = new java.util.LinkedHashMap<>(p.header());
        header.computeIfPresent("location", (k, v) -> v.replace("oom", "oöm"));
        List<SampleCircuit> circuits = p.circuits().stream()
                .map(c -> new SampleCircuit(
                        c.positions(),
                        c.rating(),
                        c.description().replace("ecept", "écept").replace("ights", "ights, Küche"),
                        c.use(),
                        c.vaPerPole(),
                        c.wire()))
                .toList();
        return new SamplePanel(p.name(), p.ways(), p.step(), p.phases(), p.iec(), header, circuits);
    }

    private void sheet(String name, List<SamplePanel> panels) {
        Written written = new Written(new GridPaper(name), panels, new HashMap<>());
        sheets.add(written);
        int row = layout.indented() ? 1 + random.nextInt(3) : 0, column = layout.indented() ? 1 + random.nextInt(2) : 0;
        if (layout.titles()) {
            written.paper().text(row++, column, "HARTWELL CLINIC, EAST WING");
            written.paper().text(row++, column, "ELECTRICAL SCHEDULES - ISSUED 12 MAY 2021");
            row += random.nextInt(2);
        }
        int top = row;
        int headed = -1,
                most = panels.stream().mapToInt(SamplePanel::phases).max().orElse(3);
        for (SamplePanel panel : panels) {
            boolean combined = layout.arrangement() == Arrangement.COMBINED;
            int phases = combined ? most : panel.phases();
            GridTable table = new GridTable(panel, phases, layout, habits, words);
            GridBlock block = new GridBlock(written, panel, table, layout, habits, words, random);
            int[] end = combined ? block.rows(row, column, headed++ < 0) : block.whole(row, column);
            if (layout.arrangement() == Arrangement.BESIDE) {
                column = end[1] + 1 + random.nextInt(2);
                row = top;
            } else row = end[0] + (combined ? 0 : 1 + random.nextInt(3));
        }
    }

    /** A worksheet that is no schedule. */
    private Written other() {
        boolean notes = random.nextBoolean();
        GridPaper paper = new GridPaper(notes ? "Notes" + sheets.size() : "Revisions" + sheets.size());
        String[] lines = {
            "All breakers 10 kAIC minimum.", "Provide lock-on devices.", "Balance phases within 10%.", "See E-001."
        };
        paper.text(0, 0, notes ? "GENERAL NOTES" : "Rev");
        if (!notes) {
            paper.text(0, 1, "Date");
            paper.text(0, 2, "Description");
            paper.text(0, 3, "By");
        }
        for (int i = 0; i < lines.length; i++) {
            if (notes && random.nextInt(4) == 0) paper.text(i + 1, 0, (i + 1) + ". " + lines[i]);
            else {
                paper.figure(i + 1, 0, Integer.toString(i + 1));
                if (!notes) paper.text(i + 1, 1, "2021-05-1" + i);
                paper.text(i + 1, notes ? 1 : 2, notes ? lines[i] : "Issued for review " + i);
                if (!notes) paper.text(i + 1, 3, "R. Moss");
            }
        }
        return new Written(paper, List.of(), Map.of());
    }

    static String note(Random random, GridLayout layout) {
        if (random.nextInt(5) > 0) return "";
        return layout.beside() == Beside.KEYED_NOTES
                ? Integer.toString(1 + random.nextInt(6))
                : GridLayout.any(random, NOTES);
    }

    static boolean isTitled(GridLayout layout, Random random) {
        return layout.header() == HeaderStyle.RUNNING
                || layout.headerPlace() != HeaderPlace.ABOVE
                || random.nextBoolean();
    }
}
