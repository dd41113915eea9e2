package asfound.sample.kestrel;

import static asfound.sample.kestrel.Sheet.BOLD;
import static asfound.sample.kestrel.Sheet.PLAIN;

import asfound.sample.kestrel.DrawnPanel.DrawnCircuit;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * How the invented contractor Brackwater draws its panel schedules: one to a letter page, circuit numbers in the middle,
 * loads in kVA in a column for each phase (the others greyed out), rating and poles in one cell.
 */
final class BrackwaterSheet {

    private static final double WIDTH = 792, HEIGHT = 612, MARGIN = 30, ROW = 16.5;
    private static final double[] SIDE = {178, 41, 41, 41, 38, 27};
    private static final String[] HEADS = {"LOAD SERVED", "A kVA", "B kVA", "C kVA", "A/P", "NO."};

    private BrackwaterSheet() {}

    static void draw(PDDocument document, String number, DrawnPanel panel) {
        try (Sheet sheet = new Sheet(document, WIDTH, HEIGHT)) {
            sheet.centred(BOLD, 15, WIDTH / 2, 46, "PANELBOARD " + panel.name());
            double top = header(sheet, panel, 58) + 8;
            double bottom = directory(sheet, panel, top);
            totals(sheet, panel, bottom + 15);
            foot(sheet, number, panel);
        }
    }

    private static double header(Sheet sheet, DrawnPanel panel, double y) {
        String[][] cells = {
            {"LOCATION", panel.location(), "SUPPLIED FROM", panel.fedFrom(), "MOUNTING", panel.mounting()},
            {
                "SYSTEM",
                panel.voltage() + "V, 3PH, 4W",
                "BUS AMPS",
                "" + panel.busA(),
                "SCCR",
                panel.interruptingKA() + "kA"
            },
            {
                "PANEL",
                panel.name(),
                "MAIN",
                panel.mainA().map(a -> a + "A M.C.B.").orElse("LUGS ONLY"),
                "POLE SPACES",
                "" + panel.size()
            }
        };
        double third = (WIDTH - 2 * MARGIN) / 3;
        for (int row = 0; row < 3; row++)
            for (int col = 0; col < 3; col++) {
                double x = MARGIN + col * third, at = y + row * ROW;
                sheet.shade(x, at, 82, ROW, 0.9);
                sheet.box(x, at, 82, ROW, 0.5);
                sheet.box(x + 82, at, third - 82, ROW, 0.5);
                sheet.text(BOLD, 7, x + 4, at + 11.5, cells[row][2 * col]);
                sheet.text(PLAIN, 8, x + 86, at + 11.5, cells[row][2 * col + 1]);
            }
        return y + 3 * ROW;
    }

    private static double directory(Sheet sheet, DrawnPanel panel, double y) {
        int rows = panel.size() / 2;
        for (int side = 0; side < 2; side++)
            for (int col = 0; col < SIDE.length; col++) {
                sheet.shade(left(side, col), y, SIDE[col], ROW, 0.75);
                sheet.box(left(side, col), y, SIDE[col], ROW, 0.5);
                sheet.centred(BOLD, 7, left(side, col) + SIDE[col] / 2, y + 11.5, HEADS[col]);
                for (int row = 0; row < rows; row++) {
                    double at = y + (row + 1) * ROW;
                    if (col >= 1 && col <= 3 && col - 1 != row % 3)
                        sheet.shade(left(side, col), at, SIDE[col], ROW, 0.8);
                    sheet.box(left(side, col), at, SIDE[col], ROW, 0.5);
                }
            }
        for (int position = 1; position <= panel.size(); position++) {
            int side = (position + 1) % 2;
            double base = y + ((position + 1) / 2) * ROW + 11.5;
            sheet.centred(PLAIN, 8, left(side, 5) + SIDE[5] / 2, base, "" + position);
        }
        for (DrawnCircuit circuit : panel.circuits()) circuit(sheet, circuit, y + ROW);
        return y + (rows + 1) * ROW;
    }

    private static void circuit(Sheet sheet, DrawnCircuit circuit, double y) {
        int side = (circuit.position() + 1) % 2;
        for (int pole = 0; pole < circuit.poles(); pole++) {
            int position = circuit.position() + 2 * pole;
            double base = y + ((position - 1) / 2) * ROW + 11.5;
            sheet.text(PLAIN, 7.5, left(side, 0) + 4, base, pole == 0 ? circuit.description() : "-");
            if (!circuit.isSpace()) {
                String device = pole == 0 ? circuit.ratingA() + "/" + circuit.poles() : "-";
                sheet.centred(PLAIN, 8, left(side, 4) + SIDE[4] / 2, base, device);
            }
            int col = 1 + DrawnPanel.phase(position), va = circuit.poleVA().get(pole);
            if (va > 0) sheet.toTheLeftOf(PLAIN, 8, left(side, col) + SIDE[col] - 4, base, kva(va));
        }
    }

    private static double left(int side, int col) {
        double before = 0;
        for (int c = 0; c < col; c++) before += SIDE[c];
        return side == 0 ? MARGIN + before : WIDTH - MARGIN - before - SIDE[col];
    }

    private static void totals(Sheet sheet, DrawnPanel panel, double y) {
        String[] figures = {
            "PHASE A: " + kva(panel.phaseVA(0)) + " kVA",
            "PHASE B: " + kva(panel.phaseVA(1) + panel.printedB()) + " kVA",
            "PHASE C: " + kva(panel.phaseVA(2)) + " kVA",
            "TOTAL CONNECTED: " + kva(panel.totalVA() + panel.printedB()) + " kVA",
            "AMPS: " + panel.amperes()
        };
        for (int i = 0; i < figures.length; i++) sheet.text(BOLD, 8, MARGIN + i * 146, y, figures[i]);
    }

    private static String kva(int va) {
        return String.format(Locale.ROOT, "%.2f", va / 1000.0);
    }

    private static void foot(Sheet sheet, String number, DrawnPanel panel) {
        double y = HEIGHT - 52;
        sheet.box(MARGIN, y, WIDTH - 2 * MARGIN, 26, 1.2);
        sheet.text(BOLD, 9, MARGIN + 8, y + 16, "BRACKWATER ELECTRIC");
        sheet.text(PLAIN, 8, MARGIN + 150, y + 16, "Kestrel Wharf Maker Hall, contractor's record drawing, 2019-05-30");
        sheet.toTheLeftOf(BOLD, 12, WIDTH - MARGIN - 8, y + 17, number);
    }
}
