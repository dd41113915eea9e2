package asfound.report.pdf;

import asfound.audit.Audit;
import asfound.model.Directory;
import asfound.model.Problem;
import asfound.network.DeviceRecord;
import asfound.network.Equipment;
import asfound.report.Cautions;
import asfound.report.Unread;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The back of a door card: what each traced entry rests on, and what is not known. */
final class CardBack {

    private static final double MARGIN = 42, FOOT = 60;

    private CardBack() {}

    static void draw(
            Audit audit,
            Equipment panel,
            List<Directory> directories,
            List<CardEntry> entries,
            SheetFile file,
            Paper paper) {
        int before = file.pages().size();
        Flow flow = new Flow(() -> file.page(paper), MARGIN, MARGIN, FOOT);
        flow.text("BACK OF THE CARD: WHAT IT RESTS ON", Type.bold(8.5).in(Tint.SOFT))
                .skip(2);
        flow.text(panel.name() + ", " + audit.recordSet().building(), Type.bold(15))
                .skip(3);
        long traced = count(entries, CardEntry.State.TRACED), doubtful = count(entries, CardEntry.State.DOUBTFUL);
        flow.text(
                entries.size() + (entries.size() == 1 ? " entry: " : " entries: ") + traced + " traced, "
                        + count(entries, CardEntry.State.DRAWN) + " drawn and not traced, " + doubtful + " in doubt. "
                        + "A traced entry says what was seen on its date, and nothing of later changes.",
                Type.plain(9.5));
        for (Directory d : directories)
            for (Problem p :
                    new java.util.TreeSet<>(Unread.of(audit).in(d.place().file())))
                flow.text("Not read: " + p.inWords(), Type.bold(8.5));
        List<List<String>> rows = new ArrayList<>();
        for (DeviceRecord r : audit.network().devices()) {
            if (!r.device().in().equals(panel.name())) continue;
            String drawn = r.showings().stream()
                    .map(s ->
                            s.serves().map(v -> v.text()).orElse(s.use().name().toLowerCase(java.util.Locale.ROOT)))
                    .distinct()
                    .collect(Collectors.joining(" / "));
            for (DeviceRecord.Sighting s : r.sightings())
                rows.add(List.of(
                        r.device().key(),
                        drawn.isEmpty() ? "not drawn" : drawn,
                        Evidence.what(s.observation())
                                + (s.traces() ? "" : s.stale() ? " (out of date)" : " (no trace)"),
                        Evidence.how(s.observation()),
                        s.observation().place().inWords()));
        }
        flow.heading("What was seen at each device", 30);
        if (rows.isEmpty()) flow.text("No survey row names a device of this panel.", Type.plain(9));
        else
            flow.table(
                    new double[] {0.08, 0.22, 0.24, 0.25, 0.21},
                    List.of("Circuit", "Drawn", "Seen", "How, when, who", "Row"),
                    rows,
                    Type.plain(8.2));
        for (Canvas canvas : file.pages().subList(before, file.pages().size())) foot(canvas);
    }

    private static void foot(Canvas canvas) {
        double w = canvas.width() - 2 * MARGIN;
        canvas.line(
                MARGIN, canvas.height() - FOOT + 8, canvas.width() - MARGIN, canvas.height() - FOOT + 8, Pen.HAIRLINE);
        Paragraph.of(
                        Cautions.WORK_AID + " " + Cautions.PARAGRAPH,
                        Type.plain(7.5).in(Tint.SOFT),
                        w,
                        canvas.typeface())
                .draw(canvas, MARGIN, canvas.height() - FOOT + 12);
    }

    private static long count(List<CardEntry> entries, CardEntry.State state) {
        return entries.stream().filter(e -> e.state() == state).count();
    }
}
