package asfound.drawing.schedule;

import asfound.drawing.page.Sheet;
import asfound.model.Box;
import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.model.Stated;
import asfound.recordset.Settings;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the directories that stand on one sheet. */
final class SheetReader {

    private final Settings settings;

    SheetReader(Settings settings) {
        this.settings = settings;
    }

    /** What one sheet gave. */
    record SheetReading(List<Directory> directories, List<Problem> problems) {}

    SheetReading read(Sheet sheet, String fallbackName) {
        List<Phrase> phrases = Phrase.of(sheet);
        TableFinder finder = new TableFinder(sheet, phrases);
        List<Table> tables = finder.find();
        List<Directory> directories = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        PanelReader panels = new PanelReader(sheet, phrases, settings);
        List<List<PanelReader.Circuits>> read =
                tables.stream().map(t -> panels.read(t, "")).toList();
        List<Box> boxes = tables.stream().map(Table::box).toList();
        List<HeaderText> headers = Headers.of(sheet, phrases, boxes).read();
        Set<Integer> done = new HashSet<>();
        for (int t = 0; t < tables.size(); t++) {
            Optional<Phrase> foreign = ForeignTables.title(phrases, boxes.get(t));
            if (foreign.isPresent()) {
                problems.add(notAPanel(sheet, foreign.get()));
                continue;
            }
            if (!done.add(t)) continue;
            int other = otherHalf(tables, headers, t);
            if (other > 0 && read.get(t).size() == 1 && read.get(other).size() == 1) {
                done.add(other);
                directories.add(directory(
                        sheet,
                        phrases,
                        Halves.table(tables.get(t), tables.get(other)),
                        headers.get(t),
                        Halves.circuits(read.get(t).get(0), read.get(other).get(0)),
                        fallbackName));
            } else
                for (PanelReader.Circuits circuits : read.get(t))
                    directories.add(directory(sheet, phrases, tables.get(t), headers.get(t), circuits, fallbackName));
        }
        problems.addAll(UnreadTitles.problems(sheet, phrases, directories, boxes));
        for (int i = 0; i < directories.size(); i++)
            for (int j = 0; j < i; j++)
                if (directories.get(i).panel().equals(directories.get(j).panel()))
                    problems.add(new Problem(
                            directories.get(i).place(),
                            "Two directories on this sheet were both read as '"
                                    + directories.get(i).panel() + "'.",
                            "Look which of them has another name."));
        for (Box box : finder.unexplained())
            problems.add(new Problem(
                    sheet.place(box),
                    "This looks like a schedule and could not be explained: a column of positions without descriptions or"
                            + " ratings beside it.",
                    "Read this part by hand."));
        return new SheetReading(directories, problems);
    }

    /** The table below that completes one without a name of its own; 0 where none does. */
    private static int otherHalf(List<Table> tables, List<HeaderText> headers, int t) {
        for (int o = t + 1; o < tables.size(); o++)
            if (!headers.get(o).header().designation().isStated() && Halves.complete(tables.get(t), tables.get(o)))
                return o;
        return 0;
    }

    private static Problem notAPanel(Sheet sheet, Phrase title) {
        return new Problem(
                sheet.place(title.box()),
                "The table headed '" + title.text() + "' was not taken for a panel's directory.",
                "If it is one, read it by hand.");
    }

    private static Directory directory(
            Sheet sheet,
            List<Phrase> phrases,
            Table table,
            HeaderText header,
            PanelReader.Circuits circuits,
            String fallback) {
        List<Circuit> out = new ArrayList<>();
        Place place = sheet.place(circuits.box());
        for (Draft d : circuits.drafts()) {
            Place where = sheet.place(d.box());
            out.add(new Circuit(
                    d.positions(),
                    d.label(),
                    d.poles(),
                    placed(d.ratingA(), where),
                    d.description().isEmpty() ? Stated.blank(where) : Stated.text(d.description(), where),
                    d.use(),
                    d.loads().stream().map(l -> placed(l, where)).toList(),
                    where));
        }
        Directory.Header head = circuits.name().isEmpty() ? header.header() : named(circuits.name(), place);
        String panel = head.designation().or(fallback);
        Reliability relied = Reliability.of(circuits, table, head.designation().isStated(), sheet::place);
        List<Problem> problems = new ArrayList<>(relied.problems());
        problems.addAll(Lugs.problems(phrases, circuits.box(), sheet::place));
        return new Directory(panel, head, out, header.totals(), place, relied.confidence(), relied.unread(), problems);
    }

    /** The header of one panel of a combined list: its name alone. */
    private static Directory.Header named(String name, Place place) {
        Directory.Header none = Directory.Header.empty();
        return new Directory.Header(
                Stated.text(name, place),
                none.location(),
                none.fedFrom(),
                none.voltage(),
                none.phases(),
                none.wires(),
                none.busA(),
                none.mainA(),
                none.mains(),
                none.interruptingKA(),
                none.mounting());
    }

    private static <T> Stated<T> placed(Stated<T> stated, Place where) {
        return new Stated<>(stated.value(), stated.raw(), Optional.of(where));
    }
}
