package asfound.report.pdf;

import asfound.audit.Audit;
import asfound.model.Directory;
import asfound.model.Natural;
import asfound.model.Stated;
import asfound.network.Equipment;
import asfound.recordset.Settings;
import asfound.report.Cautions;
import asfound.report.pdf.CardEntry.State;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The corrected directory for the panel's door, to be read at arm's length, with the supply's origin and a sign for what
 * was traced; behind it a page with the evidence. A panel of more than 42 circuits goes on to a second card rather than
 * into smaller type.
 */
public final class DoorCard {

    private static final double MARGIN = 36, FOOT = 92;

    private final Audit audit;
    private final Equipment panel;
    private final List<Directory> directories;
    private final SheetFile file;
    private final Paper paper;

    private DoorCard(Audit audit, Equipment panel, SheetFile file, Paper paper) {
        this.audit = audit;
        this.panel = panel;
        this.file = file;
        this.paper = paper;
        this.directories = audit.drawings().directories().stream()
                .filter(d -> Stream.concat(Stream.of(panel.name()), panel.alsoWritten().stream())
                        .anyMatch(d.panel()::equalsIgnoreCase))
                .toList();
    }

    /**
     * Writes the card.
     *
     * @param panel by its one name or another way in which it is written, in any case
     * @throws NoSuchElementException where the record set has no such panel, or nothing is known of its circuits
     */
    public static void write(Audit audit, String panel, Paper paper, OutputStream out) throws IOException {
        Equipment equipment = Named.find(audit.network(), panel);
        List<CardEntry> entries = CorrectedDirectory.of(audit, equipment);
        if (entries.isEmpty())
            throw new NoSuchElementException("Nothing is known of the circuits of " + equipment.name()
                    + ": no schedule, one-line or survey row names a device in it.");
        try (SheetFile file = new SheetFile("Circuit directory: " + equipment.name())) {
            new DoorCard(audit, equipment, file, paper).draw(entries);
            file.write(out);
        }
    }

    private void draw(List<CardEntry> entries) {
        boolean ways = entries.stream()
                .anyMatch(e -> !e.positions().isEmpty() && !e.label().isBlank());
        List<CardEntry> numbered =
                entries.stream().filter(e -> !e.positions().isEmpty()).toList();
        List<CardEntry> named =
                entries.stream().filter(e -> e.positions().isEmpty()).toList();
        Flow flow = new Flow(this::front, MARGIN, 0, FOOT);
        head(flow);
        // without a schedule nothing is known of the positions between
        boolean grid = !ways && !directories.isEmpty();
        if (!numbered.isEmpty() && grid) {
            boolean down = audit.recordSet().settings().numbering().orElse(null) == Settings.Numbering.DOWN;
            new CardGrid(numbered, down).draw(flow, () -> head(flow));
        }
        List<CardEntry> listed = grid ? named : entries;
        if (!listed.isEmpty()) CardGrid.list(listed, flow, () -> head(flow));
        int fronts = file.pages().size();
        for (int i = 0; i < fronts; i++) foot(file.pages().get(i), i + 1, fronts);
        CardBack.draw(audit, panel, directories, entries, file, paper);
    }

    private Canvas front() {
        return file.page(paper);
    }

    private void head(Flow flow) {
        Canvas canvas = flow.canvas();
        double x = flow.left(), right = flow.right();
        flow.skip(30 - flow.y());
        canvas.text(panel.name(), x, 54, Type.bold(26));
        canvas.textRight(
                "CIRCUIT DIRECTORY" + (file.pages().size() > 1 ? ", continued" : ""),
                right,
                42,
                Type.bold(9).in(Tint.SOFT));
        canvas.textRight(audit.recordSet().building(), right, 54, Type.plain(9.5));
        flow.skip(31);
        flow.text(rated(), Type.plain(10));
        supply(flow);
        flow.skip(5);
    }

    /** {@code Electrical room 104; 208Y/120 V, 3 phase, 4 wire; bus 225 A; main lugs only}. */
    private String rated() {
        List<String> parts = new ArrayList<>();
        header(d -> d.header().location()).ifPresent(parts::add);
        header(d -> d.header().voltage()).ifPresent(v -> parts.add(v.inWords() + " V"));
        header(d -> d.header().phases()).ifPresent(p -> parts.add(p + " phase"));
        header(d -> d.header().wires()).ifPresent(w -> parts.add(w + " wire"));
        header(d -> d.header().busA()).ifPresent(a -> parts.add("bus " + a + " A"));
        header(d -> d.header().mainA()).ifPresent(a -> parts.add("main " + a + " A"));
        header(d -> d.header().mains())
                .filter(m -> m == Directory.Mains.LUGS)
                .ifPresent(m -> parts.add("main lugs only"));
        return String.join("  ·  ", parts);
    }

    private <T> Optional<T> header(java.util.function.Function<Directory, Stated<T>> field) {
        return directories.stream().map(field).flatMap(s -> s.value().stream()).findFirst();
    }

    private void supply(Flow flow) {
        List<PanelSupply> supplies = PanelSupply.of(audit.network(), panel.name());
        flow.skip(5);
        double top = flow.y();
        List<PanelSupply> shown =
                supplies.isEmpty() ? List.of(new PanelSupply("not known: find its supply", State.DOUBTFUL)) : supplies;
        double high = shown.size() * 17 + 8 + (supplies.size() > 1 ? 13 : 0);
        Canvas canvas = flow.canvas();
        canvas.box(flow.left() + 0.6, top, flow.width() - 1.2, high, Pen.FIRM);
        double y = top + 16;
        canvas.text("FED FROM", flow.left() + 8, y, Type.bold(11));
        for (PanelSupply supply : shown) {
            Sign.draw(canvas, supply.state(), flow.left() + 80, y - 4, 4);
            canvas.text(supply.words(), flow.left() + 92, y, Type.bold(12));
            canvas.textRight(supply.state().meaning, flow.right() - 8, y, Type.plain(8.5));
            y += 17;
        }
        if (supplies.size() > 1)
            canvas.text(
                    "MORE THAN ONE SUPPLY: opening one leaves the panel live.",
                    flow.left() + 92,
                    y - 3,
                    Type.bold(9.5));
        flow.skip(high);
    }

    private void foot(Canvas canvas, int number, int of) {
        double w = canvas.width() - 2 * MARGIN, y = canvas.height() - FOOT + 8;
        canvas.line(MARGIN, y, canvas.width() - MARGIN, y, Pen.FIRM);
        double x = MARGIN + 4;
        for (State state : State.values()) {
            Sign.draw(canvas, state, x, y + 10, 3.8);
            canvas.text(state.meaning, x + 9, y + 13, Type.plain(9));
            x += 20 + canvas.typeface().width(state.meaning, Type.plain(9)) + 8;
        }
        y = Paragraph.of(Cautions.PARAGRAPH, Type.plain(8), w, canvas.typeface())
                .draw(canvas, MARGIN, y + 19);
        y = Paragraph.of(source(), Type.plain(7.5).in(Tint.SOFT), w, canvas.typeface())
                .draw(canvas, MARGIN, y + 2);
        canvas.text(
                "Checked at the panel by ____________________  date ____________",
                MARGIN,
                canvas.height() - 16,
                Type.plain(8));
        canvas.textRight(
                panel.name() + ", card " + number + " of " + of
                        + ". Made by asfound: a work aid, no procedure and no permit.",
                canvas.width() - MARGIN,
                canvas.height() - 16,
                Type.plain(7.2).in(Tint.SOFT));
    }

    private String source() {
        String drawings = directories.isEmpty()
                ? "no schedule"
                : directories.stream()
                        .map(d -> d.place().inWords() + hash(d.place().file()))
                        .distinct()
                        .sorted(Natural.ORDER)
                        .collect(Collectors.joining("; "));
        String rows = Provenance.survey(audit.survey().stream()
                .filter(o -> Named.is(panel, o.panel().raw()))
                .toList());
        return "Source: " + drawings + "; " + rows + (file.typeface().hasMissing() ? " " + Provenance.MISSING : "");
    }

    private String hash(String drawing) {
        return audit.inputs().stream()
                .filter(i -> i.source().file().equals(drawing))
                .map(i -> i.source().sha256())
                .map(h -> " (SHA-256 " + h.substring(0, Math.min(12, h.length())) + ")")
                .findFirst()
                .orElse("");
    }
}
