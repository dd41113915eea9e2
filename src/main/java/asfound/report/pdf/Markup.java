package asfound.report.pdf;

import asfound.finding.Correction;
import asfound.finding.Finding;
import asfound.model.Box;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationMarkup;

/** Lays out the marks of one page: clouds where the entries are, the stamp and the notes where there is room for them. */
final class Markup {

    private final Redpen pen;
    private final PageFrame frame;
    private final Occupied occupied;
    private final Typeface typeface;

    Markup(Redpen pen, PageFrame frame, Occupied occupied, Typeface typeface) {
        this.pen = pen;
        this.frame = frame;
        this.occupied = occupied;
        this.typeface = typeface;
    }

    void draw(List<Mark> marks, Optional<Redline.PageVerdict> verdict) throws IOException {
        double size = textSize(marks);
        if (verdict.isPresent()) stamp(verdict.get());
        List<PDAnnotationMarkup> clouds = new ArrayList<>();
        for (Mark mark : marks) {
            if (mark.box().isEmpty()) {
                clouds.add(null);
                continue;
            }
            Box box = frame.within(mark.box().get());
            clouds.add(pen.cloud(box, name(mark, "cloud"), subject(mark), comment(mark)));
        }
        for (int i = 0; i < marks.size(); i++) note(marks.get(i), clouds.get(i), size);
        pen.lift();
    }

    private void note(Mark mark, PDAnnotationMarkup cloud, double size) throws IOException {
        Box entry = mark.box()
                .or(() -> mark.near().map(Markup::below))
                .map(frame::within)
                .orElseGet(() -> new Box(0, 0, frame.width(), 1));
        Occupied.Room best = null;
        Note chosen = null;
        for (double most : new double[] {size * 42, size * 22, size * 13}) {
            Note note = Note.of(mark, size, Math.min(most, frame.width() * 0.8), typeface);
            Optional<Occupied.Room> room = occupied.room(note.width(), note.height(), entry);
            if (room.isEmpty() || (best != null && room.get().cost() >= best.cost())) continue;
            best = room.get();
            chosen = note;
        }
        if (chosen == null) {
            // a page too small for the note: it is written over its top edge rather than left out
            chosen = Note.of(mark, Math.max(3, size / 2), frame.width(), typeface);
            best = new Occupied.Room(new Box(0, 0, chosen.width(), chosen.height()), 0);
        }
        double[][] leader = mark.box().isPresent() ? Leader.between(best.box(), entry, occupied) : null;
        PDAnnotationMarkup note = pen.note(chosen, best.box(), leader, name(mark, "note"), subject(mark), values(mark));
        occupied.add(best.box(), Occupied.NOTE);
        PDAnnotationMarkup answered = cloud == null ? note : cloud;
        for (Finding finding : mark.findings()) pen.reply(answered, finding);
    }

    /** Where an entry is to be added: under the panel's last row. */
    private static Box below(Box directory) {
        return new Box(directory.x(), directory.bottom() + 3, directory.w(), 12);
    }

    private void stamp(Redline.PageVerdict verdict) throws IOException {
        double scale = Math.max(0.5, Math.min(frame.width(), frame.height()) / 612);
        Box top = new Box(0, 0, frame.width(), frame.height() * 0.04);
        Occupied.Room best = null;
        Stamp chosen = null;
        for (double size : new double[] {20, 16, 13, 10, 8}) {
            Stamp stamp = new Stamp(verdict.state(), verdict.equipment(), size * scale);
            Optional<Occupied.Room> room = occupied.room(stamp.width(typeface), stamp.height(), top);
            // a smaller stamp must save a good deal of way or ink to be preferred
            double cost = room.map(r -> r.cost() + (20 - size) * 40 * scale).orElse(Double.MAX_VALUE);
            if (room.isEmpty() || (best != null && cost >= best.cost())) continue;
            best = new Occupied.Room(room.get().box(), cost);
            chosen = stamp;
        }
        if (chosen == null) {
            chosen = new Stamp(verdict.state(), verdict.equipment(), 8 * scale);
            best = new Occupied.Room(frame.within(new Box(0, 0, chosen.width(typeface), chosen.height())), 0);
        }
        occupied.add(best.box(), Occupied.NOTE);
        pen.stamp(chosen, best.box());
    }

    /** Fits into a row of the page's tables, so that a note can stand in its own entry. */
    private double textSize(List<Mark> marks) {
        double scale = Math.max(1, Math.min(frame.width(), frame.height()) / 900);
        double row =
                marks.stream().flatMap(m -> m.rowPitch().stream()).findFirst().orElse(12 * scale);
        return Math.max(6.5, Math.min(11 * scale, row * 0.55));
    }

    private static String name(Mark mark, String what) {
        return what + "-" + mark.number();
    }

    private static String subject(Mark mark) {
        return mark.number() + " " + mark.at() + " " + mark.severity().word();
    }

    private static String values(Mark mark) {
        return mark.number() + "  " + String.join("\n", mark.beside());
    }

    private static String comment(Mark mark) {
        return mark.notes().stream().map(Markup::line).distinct().collect(Collectors.joining("\n"))
                + "\n"
                + mark.findings().stream()
                        .map(f -> f.message() + " [" + f.id() + "]")
                        .distinct()
                        .collect(Collectors.joining("\n"));
    }

    private static String line(Mark.Note note) {
        return note.correction()
                .map(Markup::change)
                .orElseGet(() -> "look first: " + note.finding().correction());
    }

    private static String change(Correction c) {
        String reads = c.field().word() + ": reads \"" + c.reads() + "\"";
        return c.shouldRead().isEmpty() ? reads + ", take out" : reads + ", should read \"" + c.shouldRead() + "\"";
    }
}
