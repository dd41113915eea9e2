package asfound.sample.kestrel;

import static asfound.sample.kestrel.Sheet.BOLD;
import static asfound.sample.kestrel.Sheet.PLAIN;

import asfound.sample.kestrel.DrawnPanel.DrawnCircuit;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * How the invented office of Dunnock and Rill draws its panel schedules: up to four to a sheet of 24 by 18 inches, circuit
 * numbers at the outer edges, phase letters down the middle, a title block down the right side.
 */
final class DunnockSheet {

    private static final double WIDTH = 1728, HEIGHT = 1296, MARGIN = 36, TITLE = 170;
    private static final double ROW = 15.5;
    private static final double[] SIDE = {30, 206, 50, 22, 36};
    private static final double MIDDLE = 24;
    private static final String[] HEADS = {"CKT", "LOAD DESCRIPTION", "LOAD VA", "P", "TRIP A"};
    private static final String[] PHASES = {"A", "B", "C"};

    private DunnockSheet() {}

    static void draw(PDDocument document, String number, String title, List<DrawnPanel> panels) {
        try (Sheet sheet = new Sheet(document, WIDTH, HEIGHT)) {
            border(sheet, number, title);
            if (panels.size() == 3) notes(sheet, MARGIN + 20 + 738, MARGIN + 36 + 590);
            for (int i = 0; i < panels.size(); i++)
                panel(sheet, panels.get(i), MARGIN + 20 + (i % 2) * 738, MARGIN + 36 + (i / 2) * 590);
        }
    }

    private static void border(Sheet sheet, String number, String title) {
        double right = WIDTH - MARGIN, bottom = HEIGHT - MARGIN, block = right - TITLE;
        sheet.box(MARGIN, MARGIN, right - MARGIN, bottom - MARGIN, 2.5);
        sheet.line(block, MARGIN, block, bottom, 1.5);
        for (int zone = 0; zone < 8; zone++)
            sheet.centred(PLAIN, 8, MARGIN + (zone + 0.5) * (block - MARGIN) / 8, MARGIN - 8, "" + (zone + 1));
        for (int zone = 0; zone < 6; zone++)
            sheet.centred(
                    PLAIN, 8, MARGIN - 12, MARGIN + (zone + 0.5) * (bottom - MARGIN) / 6, "" + (char) ('A' + zone));
        double middle = block + TITLE / 2;
        sheet.centred(BOLD, 13, middle, 90, "DUNNOCK & RILL");
        sheet.centred(PLAIN, 8, middle, 104, "ELECTRICAL ENGINEERS");
        sheet.line(block, 130, right, 130, 0.8);
        sheet.centred(BOLD, 12, middle, 200, "KESTREL WHARF");
        sheet.centred(BOLD, 12, middle, 216, "MAKER HALL");
        sheet.centred(PLAIN, 8, middle, 232, "1 ROPEWALK QUAY");
        sheet.line(block, 700, right, 700, 0.8);
        sheet.text(BOLD, 7.5, block + 10, 714, "REV   DATE            ISSUE");
        sheet.text(PLAIN, 7.5, block + 10, 730, "0       2019-02-11    FOR TENDER");
        sheet.text(PLAIN, 7.5, block + 10, 744, "1       2019-06-14    RECORD DRAWING");
        sheet.line(block, 1040, right, 1040, 0.8);
        sheet.text(PLAIN, 7.5, block + 10, 1056, "DRAWN  T.M.        CHECKED  A.R.");
        sheet.text(PLAIN, 7.5, block + 10, 1070, "SCALE  NONE       JOB  1847");
        sheet.line(block, 1086, right, 1086, 0.8);
        sheet.centred(BOLD, 11, middle, 1130, title);
        sheet.centred(BOLD, 30, middle, 1200, number);
    }

    private static void notes(Sheet sheet, double x, double y) {
        String[] lines = {
            "LOADS ARE CONNECTED LOADS IN VOLT-AMPERES, ONE FIGURE FOR EACH POLE.",
            "MCB: MAIN CIRCUIT BREAKER. MLO: MAIN LUGS ONLY. P: POLES.",
            "SEE E-501 FOR THE ONE-LINE DIAGRAM AND FEEDER SIZES.",
            "PROVIDE A TYPED DIRECTORY IN EACH PANEL DOOR.",
            "PANELS OF THE EMERGENCY SYSTEM: SEE THE CONTRACTOR'S SHEETS EM-01."
        };
        sheet.text(BOLD, 11, x, y, "NOTES");
        for (int i = 0; i < lines.length; i++) sheet.text(PLAIN, 8.5, x, y + 18 + i * 14, (i + 1) + ".  " + lines[i]);
    }

    private static void panel(Sheet sheet, DrawnPanel panel, double x, double y) {
        sheet.text(BOLD, 15, x, y, "PANEL " + panel.name());
        double top = header(sheet, panel, x, y + 8) + 6;
        double bottom = directory(sheet, panel, x, top);
        totals(sheet, panel, x, bottom + 16);
    }

    private static double width() {
        double side = 0;
        for (double w : SIDE) side += w;
        return 2 * side + MIDDLE;
    }

    private static double header(Sheet sheet, DrawnPanel panel, double x, double y) {
        String[][] cells = {
            {"DESIGNATION:", panel.name(), "LOCATION:", panel.location(), "FED FROM:", panel.fedFrom()},
            {"VOLTAGE:", panel.voltage() + " V", "PHASES:", "3", "WIRES:", "4"},
            {
                "BUS RATING:",
                panel.busA() + " A",
                "MAINS:",
                panel.mainA().map(a -> a + " A MCB").orElse("MLO"),
                "A.I.C.:",
                panel.interruptingKA() + " kA"
            },
            {"MOUNTING:", panel.mounting(), "NEUTRAL:", "100 %", "GROUND BAR:", "YES"}
        };
        double third = width() / 3;
        for (int row = 0; row < cells.length; row++)
            for (int col = 0; col < 3; col++) {
                sheet.box(x + col * third, y + row * ROW, third, ROW, 0.6);
                sheet.text(BOLD, 7.5, x + col * third + 4, y + row * ROW + 11, cells[row][2 * col]);
                sheet.text(PLAIN, 8, x + col * third + 74, y + row * ROW + 11, cells[row][2 * col + 1]);
            }
        return y + cells.length * ROW;
    }

    private static double directory(Sheet sheet, DrawnPanel panel, double x, double y) {
        int rows = panel.size() / 2;
        double bottom = y + (rows + 1) * ROW;
        sheet.shade(x, y, width(), ROW, 0.88);
        for (int row = 0; row <= rows + 1; row++) sheet.line(x, y + row * ROW, x + width(), y + row * ROW, 0.6);
        for (int side = 0; side < 2; side++) {
            for (int col = 0; col < SIDE.length; col++) {
                double from = left(x, side, col);
                sheet.line(from, y, from, bottom, 0.6);
                sheet.line(from + SIDE[col], y, from + SIDE[col], bottom, 0.6);
                sheet.centred(BOLD, 7, from + SIDE[col] / 2, y + 10.5, HEADS[col]);
            }
        }
        sheet.centred(BOLD, 7, x + width() / 2, y + 10.5, "PH");
        for (int row = 0; row < rows; row++) {
            double base = y + (row + 1) * ROW + 11;
            sheet.centred(PLAIN, 8, x + width() / 2, base, PHASES[row % 3]);
            for (int side = 0; side < 2; side++)
                sheet.centred(PLAIN, 8, left(x, side, 0) + SIDE[0] / 2, base, "" + (2 * row + 1 + side));
        }
        for (DrawnCircuit circuit : panel.circuits()) circuit(sheet, circuit, x, y + ROW);
        return bottom;
    }

    private static void circuit(Sheet sheet, DrawnCircuit circuit, double x, double y) {
        int side = (circuit.position() + 1) % 2;
        for (int pole = 0; pole < circuit.poles(); pole++) {
            double base = y + ((circuit.position() - 1) / 2 + pole) * ROW + 11;
            if (pole == 0) {
                sheet.text(PLAIN, 7.5, left(x, side, 1) + 4, base, circuit.description());
                if (!circuit.isSpace()) {
                    sheet.centred(PLAIN, 8, left(x, side, 3) + SIDE[3] / 2, base, "" + circuit.poles());
                    sheet.centred(PLAIN, 8, left(x, side, 4) + SIDE[4] / 2, base, "" + circuit.ratingA());
                }
            }
            int va = circuit.poleVA().get(pole);
            if (va > 0) sheet.toTheLeftOf(PLAIN, 8, left(x, side, 2) + SIDE[2] - 4, base, "" + va);
        }
    }

    /** Left edge of a column; the right side mirrors the left one. */
    private static double left(double x, int side, int col) {
        double before = 0;
        for (int c = 0; c < col; c++) before += SIDE[c];
        return side == 0 ? x + before : x + width() - before - SIDE[col];
    }

    private static void totals(Sheet sheet, DrawnPanel panel, double x, double y) {
        String[] figures = {
            "CONNECTED LOAD",
            "PHASE A: " + va(panel.phaseVA(0)),
            "PHASE B: " + va(panel.phaseVA(1) + panel.printedB()),
            "PHASE C: " + va(panel.phaseVA(2)),
            "TOTAL: " + va(panel.totalVA() + panel.printedB()),
            "AMPERES: " + panel.amperes() + " A"
        };
        for (int i = 0; i < figures.length; i++)
            sheet.text(i == 0 ? BOLD : PLAIN, 8, x + i * width() / 6, y, figures[i]);
    }

    private static String va(int va) {
        return String.format(Locale.ROOT, "%,d VA", va);
    }
}
