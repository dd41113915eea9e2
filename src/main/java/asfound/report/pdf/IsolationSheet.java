package asfound.report.pdf;

import asfound.audit.Audit;
import asfound.isolation.NamedElsewhere;
import asfound.isolation.Verdict;
import asfound.isolation.Verdict.Standing;
import asfound.model.Place;
import asfound.network.Device;
import asfound.network.Equipment;
import asfound.report.Unread;
import java.io.IOException;
import java.io.OutputStream;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * One sheet for the person who is to isolate one equipment: the verdict in the largest type, every point drawn and found
 * with its evidence, the ways of supply as a picture, other sources, blanks for lock, tag and test. A second page is
 * begun where the points leave no room, rather than anything left out.
 */
public final class IsolationSheet {

    private static final double MARGIN = IsolationFoot.MARGIN;
    /** Room for what stands below the picture, and the smallest scale at which it can be read: words of 4.2 points. */
    private static final double AFTER = 160, AFTER_LENGTHWISE = 140, SMALLEST = 0.6;

    private final Audit audit;
    private final Verdict verdict;
    private final Equipment equipment;
    private final SheetFile file;
    private final Paper paper;
    private Flow flow;

    private IsolationSheet(Audit audit, Verdict verdict, Equipment equipment, SheetFile file, Paper paper) {
        this.audit = audit;
        this.verdict = verdict;
        this.equipment = equipment;
        this.file = file;
        this.paper = paper;
    }

    /** The sheet on Letter paper. */
    public static void write(Audit audit, String equipment, OutputStream out) throws IOException {
        write(audit, equipment, Paper.LETTER, out);
    }

    /**
     * Writes the sheet.
     *
     * @param equipment by its one name or another way in which it is written, in any case
     * @throws NoSuchElementException where the record set has no such equipment, or no verdict for it; the message says
     *     which
     */
    public static void write(Audit audit, String equipment, Paper paper, OutputStream out) throws IOException {
        Equipment named = Named.find(audit.network(), equipment);
        Verdict verdict = audit.verdicts().stream()
                .filter(v -> v.equipment().equals(named.name()))
                .findFirst()
                .orElseThrow(
                        () -> new NoSuchElementException(
                                named.name()
                                        + " is a source of supply: no isolation verdict is given for it. Name the equipment it feeds."));
        try (SheetFile file = new SheetFile("Isolation sheet: " + named.name())) {
            new IsolationSheet(audit, verdict, named, file, paper).draw();
            file.write(out);
        }
    }

    /** Upright on one page, else lengthwise on one page; else rather a page of its own than a picture that nobody can read. */
    private void draw() {
        SupplyPaths paths = SupplyPaths.of(audit.network(), equipment.name());
        PathPicture picture = new PathPicture(paths, equipment.name(), points(false), points(true), file.typeface());
        if (!fits(this::upright, AFTER, paths, picture) && !fits(this::lengthwise, AFTER_LENGTHWISE, paths, picture)) {
            begin(this::upright);
            sources(paths);
            record();
            Flow own = lengthwise();
            picture(own, picture, paths, scale(own, picture, own.free() - 80 - lines(paths)));
        }
        IsolationFoot.draw(file, audit, equipment.name());
    }

    /** Room for what is said about lines that are not drawn. */
    private static double lines(SupplyPaths paths) {
        return paths.linesNotShown() > 0 ? 14 : 0;
    }

    private Flow upright() {
        return new Flow(() -> file.page(paper), MARGIN, MARGIN - 6, IsolationFoot.ROOM);
    }

    private Flow lengthwise() {
        return new Flow(() -> file.lengthwise(paper), MARGIN, MARGIN - 12, IsolationFoot.ROOM_LENGTHWISE);
    }

    /** Draws the whole sheet where the picture has room beside the rest; gives whether it had. */
    private boolean fits(Supplier<Flow> on, double after, SupplyPaths paths, PathPicture picture) {
        begin(on);
        double scale = scale(flow, picture, flow.free() - after - lines(paths));
        boolean noLargerOnItsOwn = flow.isLengthwise() && scale == flow.width() / picture.width();
        if (scale < SMALLEST && !noLargerOnItsOwn) return false;
        picture(flow, picture, paths, scale);
        sources(paths);
        record();
        return true;
    }

    private void begin(Supplier<Flow> on) {
        file.pages().clear();
        flow = on.get();
        new IsolationHead(flow, equipment, verdict, audit.recordSet().building()).draw();
        points();
    }

    private static double scale(Flow flow, PathPicture picture, double room) {
        return Math.min(1.25, Math.min(flow.width() / picture.width(), room / picture.height()));
    }

    private Set<Device> points(boolean asFound) {
        return new LinkedHashSet<>(asFound ? verdict.foundPoints().orElse(List.of()) : verdict.drawnPoints());
    }

    private void points() {
        Set<Device> drawn = points(false), found = points(true), all = new LinkedHashSet<>(found);
        all.addAll(drawn);
        flow.heading("Points: open, lock, tag, test", 60);
        String set = "Drawn: " + list(drawn, "the drawings give none") + ".   Found: "
                + (verdict.foundPoints().isEmpty()
                        ? "not known, its supply was not traced or nothing parts it"
                        : list(found, "none needed"))
                + "."
                + (verdict.otherSets() ? " Other drawn sets as small stand further up; these are the nearest." : "");
        flow.text(set, Type.plain(9)).skip(3);
        notRead();
        if (all.isEmpty()) return;
        List<List<String>> rows = all.stream()
                .map(d -> PointRows.row(audit, d, drawn, found, verdict.standing()))
                .toList();
        flow.blanks(PointRows.WIDTHS, PointRows.HEAD, rows, Type.plain(8.2), PointRows.WRITTEN, 27);
    }

    /** What could not be read is not absent: it may hold another supply. */
    private void notRead() {
        Unread unread = Unread.of(audit);
        List<String> own = equipment.drawnAt().stream()
                .map(Place::file)
                .distinct()
                .filter(f -> !unread.in(f).isEmpty())
                .sorted()
                .toList();
        int all = unread.all().size();
        if (all == 0) return;
        String doubt = own.isEmpty()
                ? ""
                : ", some of it in a drawing of " + equipment.name() + " (" + String.join(", ", own) + ")";
        flow.text(
                "Not everything was read: " + all + (all == 1 ? " problem" : " problems") + " in this record set"
                        + doubt + ". What was not read may hold another supply; the report lists it.",
                Type.bold(8.8));
        flow.skip(3);
    }

    private static String list(Set<Device> devices, String none) {
        return devices.isEmpty() ? none : devices.stream().map(Device::label).collect(Collectors.joining(" and "));
    }

    private static void picture(Flow flow, PathPicture picture, SupplyPaths paths, double fits) {
        flow.heading("Ways of supply, as drawn and as found", 100);
        picture.draw(flow.canvas(), flow.left() + (flow.width() - picture.width() * fits) / 2, flow.y() + 2, fits);
        flow.skip(picture.height() * fits + 7);
        PathLegend.draw(flow.canvas(), flow.left(), flow.y());
        flow.skip(PathLegend.HEIGHT);
        if (paths.notShown() > 0)
            flow.text(
                    "Further up there are " + paths.notShown()
                            + " more pieces of equipment that this picture has no room for; the report shows them.",
                    Type.bold(8.5));
        if (paths.linesNotShown() > 0)
            flow.text(
                    "Where many alike lie between the same two, five are drawn: " + paths.linesNotShown()
                            + " more are not in this picture; the report shows them.",
                    Type.bold(8.5));
    }

    private void sources(SupplyPaths paths) {
        flow.heading("Sources and what else goes dark", 24);
        String live = verdict.liveFrom().isEmpty()
                ? ""
                : (verdict.standing() == Standing.FAILS ? "Still reach it" : "May still reach it")
                        + " with the drawn points open: " + String.join(", ", verdict.liveFrom()) + ". ";
        String all = paths.sources().isEmpty()
                ? "No source of its supply is known: look for one."
                : "Sources on these ways: "
                        + paths.sources().stream()
                                .map(e -> e.name() + " (" + e.kind().word() + ")")
                                .collect(Collectors.joining(", "))
                        + ".";
        String unknown = paths.unknown().isEmpty()
                ? ""
                : " Of unknown supply: "
                        + paths.unknown().stream().map(Equipment::name).collect(Collectors.joining(", ")) + ".";
        String dark = verdict.alsoDark().isEmpty()
                ? "Nothing else is known to lose supply with the drawn points open."
                : "Also loses supply with the drawn points open: " + String.join(", ", verdict.alsoDark()) + ".";
        String named = NamedElsewhere.inWords(new NamedElsewhere(audit.network()).of(verdict));
        if (!named.isEmpty()) dark = "Named by other circuits, which may bring supply into it: " + named + ". " + dark;
        if (flow.isLengthwise()) flow.text(live + all + unknown + " " + dark, Type.plain(9));
        else flow.text(live + all + unknown, Type.plain(9)).text(dark, Type.plain(9));
    }

    /** Blanks for what the records cannot say. */
    private void record() {
        flow.need(40);
        flow.skip(8);
        String[] labels = {
            "Tester proven before / after", "Dead, tested at (point, time)", "By (name, signature)", "Date"
        };
        double[] shares = {0.24, 0.32, 0.28, 0.16};
        double x = flow.left(), y = flow.y();
        for (int i = 0; i < labels.length; i++) {
            double w = shares[i] * flow.width();
            flow.canvas().text(labels[i], x, y + 6, Type.plain(7).in(Tint.SOFT));
            flow.canvas().line(x, y + 27, x + w - 8, y + 27, Pen.FINE);
            x += w;
        }
        flow.skip(30);
    }
}
