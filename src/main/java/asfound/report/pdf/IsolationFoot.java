package asfound.report.pdf;

import asfound.audit.Audit;
import asfound.report.Cautions;
import java.util.List;

/** The foot of every page of an isolation sheet: the cautions, whose data it rests on, and which page it is of how many. */
final class IsolationFoot {

    /** The sheet's margins, and what the foot takes of the page's height. */
    static final double MARGIN = 40, ROOM = 98, ROOM_LENGTHWISE = 84;

    private IsolationFoot() {}

    static void draw(SheetFile file, Audit audit, String equipment) {
        List<Canvas> pages = file.pages();
        for (int i = 0; i < pages.size(); i++) {
            Canvas canvas = pages.get(i);
            double foot = canvas.width() > canvas.height() ? ROOM_LENGTHWISE : ROOM;
            double w = canvas.width() - 2 * MARGIN, y = canvas.height() - foot + 8;
            canvas.line(MARGIN, y, canvas.width() - MARGIN, y, Pen.FIRM);
            y = Paragraph.of(Cautions.WORK_AID + " " + Cautions.AGREES, Type.bold(8.2), w, canvas.typeface())
                    .draw(canvas, MARGIN, y + 4);
            y = Paragraph.of(Cautions.PARAGRAPH, Type.plain(8.2), w, canvas.typeface())
                    .draw(canvas, MARGIN, y + 1.5);
            String data = Provenance.of(audit) + (file.typeface().hasMissing() ? " " + Provenance.MISSING : "");
            y = Paragraph.of(data, Type.plain(7).in(Tint.SOFT), w, canvas.typeface())
                    .draw(canvas, MARGIN, y + 2);
            String number = pages.size() == 1
                    ? "Made by asfound. One page."
                    : "Made by asfound. " + equipment + ", page " + (i + 1) + " of " + pages.size()
                            + ": use them together only.";
            canvas.textRight(
                    number,
                    canvas.width() - MARGIN,
                    canvas.height() - 20,
                    Type.plain(7).in(Tint.SOFT));
        }
    }
}
