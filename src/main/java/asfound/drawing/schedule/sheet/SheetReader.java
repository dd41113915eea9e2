package asfound.drawing.schedule.sheet;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.device.Circuits;
import asfound.drawing.schedule.device.Draft;
import asfound.drawing.schedule.device.PanelReader;
import asfound.drawing.schedule.doubt.Doubts;
import asfound.drawing.schedule.doubt.Leftovers;
import asfound.drawing.schedule.doubt.Lugs;
import asfound.drawing.schedule.doubt.NamedAlike;
import asfound.drawing.schedule.doubt.OtherLists;
import asfound.drawing.schedule.doubt.Reliability;
import asfound.drawing.schedule.doubt.Stamps;
import asfound.drawing.schedule.doubt.StruckThrough;
import asfound.drawing.schedule.doubt.Unnamed;
import asfound.drawing.schedule.doubt.UnreadTitles;
import asfound.drawing.schedule.header.HeaderText;
import asfound.drawing.schedule.header.Headers;
import asfound.drawing.schedule.phrase.KnownTexts;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.phrase.SheetPhrases;
import asfound.drawing.schedule.row.Leftover;
import asfound.drawing.schedule.table.Side;
import asfound.drawing.schedule.table.Table;
import asfound.drawing.schedule.table.TableFinder;
import asfound.drawing.schedule.text.Value;
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
public final class SheetReader {

    private final Settings settings;
    private final KnownTexts known;

    /** @param known what is known of texts from sheets before; this reader adds to it */
    public SheetReader(Settings settings, KnownTexts known) {
        this.settings = settings;
        this.known = known;
    }

    /** What one sheet gave. */
    public record SheetReading(List<Part> parts, List<Problem> problems) {}

    public SheetReading read(Sheet sheet, String fallbackName) {
        Phrases phrases = SheetPhrases.of(sheet, known);
        TableFinder finder = new TableFinder(sheet, phrases);
        List<Table> tables = finder.find();
        List<Part> parts = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        PanelReader panels = new PanelReader(sheet, phrases, settings);
        List<List<Circuits>> read = tables.stream().map(t -> panels.read(t, "")).toList();
        List<Box> boxes = new ArrayList<>();
        for (int t = 0; t < tables.size(); t++)
            boxes.add(whole(GroupBands.without(phrases, tables.get(t)), read.get(t)));
        List<HeaderText> headers = Headers.of(sheet, phrases, boxes).read();
        Set<Box> labelled = new HashSet<>();
        headers.forEach(h -> labelled.addAll(h.labelled()));
        List<Optional<Problem>> lists = new ArrayList<>();
        for (int t = 0; t < tables.size(); t++)
            lists.add(OtherLists.problem(sheet, phrases, tables.get(t), boxes.get(t), read.get(t)));
        List<List<Leftover>> leftovers = new ArrayList<>();
        for (int t = 0; t < tables.size(); t++) {
            Circuits first = read.get(t).get(0);
            List<Box> others = others(tables, lists, t);
            leftovers.add(
                    Leftovers.of(phrases, tables.get(t), others, first.box().bottom(), first.taken(), labelled));
        }
        Set<Integer> done = new HashSet<>();
        for (int t = 0; t < tables.size(); t++) {
            if (lists.get(t).isPresent()) {
                problems.add(lists.get(t).get());
                continue;
            }
            if (!done.add(t)) continue;
            int other = otherHalf(tables, headers, t, t);
            if (other > 0 && read.get(t).size() == 1 && read.get(other).size() == 1) {
                Table table = tables.get(t);
                Circuits circuits = read.get(t).get(0);
                List<Leftover> strays = leftovers.get(t);
                HeaderText header = headers.get(t);
                for (int last = t; other > 0 && read.get(other).size() == 1; ) {
                    done.add(other);
                    table = Halves.table(table, tables.get(other));
                    circuits = Halves.circuits(circuits, read.get(other).get(0));
                    strays = both(strays, leftovers.get(other));
                    header = header.completed(headers.get(other));
                    last = other;
                    other = otherHalf(tables, headers, t, last);
                }
                parts.add(part(sheet, phrases, table, strays, header, circuits, fallbackName));
            } else
                for (Circuits circuits : read.get(t)) {
                    List<Leftover> own = circuits == read.get(t).get(0) ? leftovers.get(t) : List.of();
                    parts.add(part(sheet, phrases, tables.get(t), own, headers.get(t), circuits, fallbackName));
                }
        }
        List<Directory> directories = parts.stream().map(Part::directory).toList();
        problems.addAll(UnreadTitles.problems(sheet, phrases, directories, boxes));
        problems.addAll(NamedAlike.problems(directories));
        problems.addAll(Unnamed.beside(directories));
        problems.addAll(Stamps.beside(phrases, boxes, sheet::place));
        for (Box box : finder.unexplained())
            problems.add(new Problem(
                    sheet.place(box),
                    "This looks like a schedule and could not be explained: a column of positions without descriptions or"
                            + " ratings beside it.",
                    "Read this part by hand."));
        return new SheetReading(parts, problems);
    }

    /** Where the other tables stand. */
    private static List<Box> others(List<Table> tables, List<Optional<Problem>> lists, int own) {
        List<Box> out = new ArrayList<>();
        for (int t = 0; t < tables.size(); t++)
            if (t != own) out.addAll(Leftovers.areas(tables.get(t), lists.get(t).isPresent()));
        return out;
    }

    /** A table with the rows below its last position, which no header has a part in. */
    private static Box whole(Box table, List<Circuits> read) {
        double foot = read.stream().mapToDouble(c -> c.box().bottom()).reduce(table.bottom(), Math::max);
        Box rows = read.stream().map(Circuits::box).reduce(table, Box::union);
        return new Box(rows.x(), table.y(), rows.w(), foot - table.y());
    }

    /** The table further on that completes the last part of one, without another's name; 0 where none does. */
    private static int otherHalf(List<Table> tables, List<HeaderText> headers, int first, int last) {
        for (int o = last + 1; o < tables.size(); o++) {
            Stated<String> name = headers.get(o).header().designation();
            boolean own =
                    name.isStated() && !name.equals(headers.get(first).header().designation());
            if (!own && Halves.complete(tables.get(last), tables.get(o))) return o;
        }
        return 0;
    }

    private static List<Leftover> both(List<Leftover> a, List<Leftover> b) {
        List<Leftover> out = new ArrayList<>(a);
        out.addAll(b);
        return out;
    }

    private static Part part(
            Sheet sheet,
            Phrases phrases,
            Table table,
            List<Leftover> leftovers,
            HeaderText header,
            Circuits circuits,
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
        Directory.Header head =
                circuits.name().isEmpty() ? header.header() : new ListedPanel(sheet, phrases, table, circuits).header();
        String panel = head.designation().or(fallback);
        Doubts relied =
                Reliability.of(circuits, leftovers, table, head.designation().isStated(), sheet::place);
        List<Problem> problems = new ArrayList<>(relied.problems());
        StruckThrough struck = StruckThrough.of(sheet, phrases, circuits.drafts(), header.labelled());
        problems.addAll(struck.problems());
        Stamps stamps = Stamps.over(phrases, circuits.box(), sheet::place);
        problems.addAll(stamps.problems());
        for (Value v : header.unread())
            problems.add(new Problem(
                    sheet.place(v.box()),
                    "The header was not understood here: '" + v.text() + "' as "
                            + v.field().words() + ".",
                    "Look at the drawing at this place."));
        problems.addAll(Lugs.problems(phrases, circuits.box(), sheet::place));
        Directory read = new Directory(
                panel,
                head,
                out,
                header.totals(),
                place,
                stamps.confidence(struck.confidence(relied.confidence())),
                struck.with(relied.unread()),
                problems);
        return new Part(
                read,
                isRowEach(table),
                isPaired(table),
                header.positions().orElse(0),
                !circuits.name().isEmpty());
    }

    private static boolean isRowEach(Table table) {
        return table.sides().stream()
                .flatMap(s -> s.spine().tokens().stream())
                .allMatch(t -> t.text().numbers().size() == 1);
    }

    private static boolean isPaired(Table table) {
        return table.sides().size() == 2
                && table.sides().stream().map(Side::spine).allMatch(s -> s.isOdd() || s.isEven());
    }

    private static <T> Stated<T> placed(Stated<T> stated, Place where) {
        return new Stated<>(stated.value(), stated.raw(), Optional.of(where));
    }
}
