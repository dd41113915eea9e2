package asfound.recordset;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * The cells of a workbook whose text is struck through, wholly or in part (ECMA-376-1, 18.4.10): a person sees that it no
 * longer holds, and the text alone does not say so. What a condition strikes through is not known here.
 */
public final class CrossedOut {

    private CrossedOut() {}

    /**
     * A cell.
     *
     * @param row from 1, as the spreadsheet numbers it
     * @param column from 0
     */
    public record Cell(int row, int column) {}

    /** The cells by the sheet's name; none of a workbook whose parts cannot be followed. */
    public static Map<String, List<Cell>> read(Path workbook) {
        Map<String, List<Cell>> out = new HashMap<>();
        try (ZipFile zip = new ZipFile(workbook.toFile())) {
            Styles styles = new Styles();
            WorkbookParts.elements(zip, "xl/styles.xml", styles);
            Texts texts = new Texts();
            WorkbookParts.elements(zip, "xl/sharedStrings.xml", texts);
            for (Map.Entry<String, String> sheet : WorkbookParts.sheets(zip).entrySet()) {
                Cells cells = new Cells(styles.struck, texts.struck);
                WorkbookParts.elements(zip, sheet.getValue(), cells);
                out.put(sheet.getKey(), cells.found);
            }
        } catch (IOException | XMLStreamException | IllegalArgumentException e) {
            return Map.of();
        }
        return out;
    }

    private static boolean isStrike(XMLStreamReader xml) {
        return xml.getLocalName().equals("strike") && WorkbookParts.isOn(xml);
    }

    /** The numbers of the cell formats whose font is struck through. */
    private static final class Styles implements WorkbookParts.Elements {
        private final Set<Integer> struck = new HashSet<>();
        private final Set<Integer> fonts = new HashSet<>();
        private boolean inFonts;
        private boolean inFormats;
        private int font = -1;
        private int format = -1;

        @Override
        public void begin(XMLStreamReader xml) {
            switch (xml.getLocalName()) {
                case "fonts" -> inFonts = true;
                case "cellXfs" -> inFormats = true;
                case "font" -> font += inFonts ? 1 : 0;
                case "xf" -> {
                    if (inFormats) format++;
                    if (inFormats && fonts.contains(number(WorkbookParts.attribute(xml, "fontId")))) struck.add(format);
                }
                default -> {
                    if (inFonts && isStrike(xml)) fonts.add(font);
                }
            }
        }

        @Override
        public void end(String name) {
            if (name.equals("fonts")) inFonts = false;
            if (name.equals("cellXfs")) inFormats = false;
        }
    }

    private static int number(String text) {
        return text.matches("\\d{1,9}") ? Integer.parseInt(text) : -1;
    }

    /** The numbers of the shared texts of which a part is struck through. */
    private static final class Texts implements WorkbookParts.Elements {
        private final Set<Integer> struck = new HashSet<>();
        private int text = -1;

        @Override
        public void begin(XMLStreamReader xml) {
            if (xml.getLocalName().equals("si")) text++;
            else if (isStrike(xml)) struck.add(text);
        }
    }

    private static final class Cells implements WorkbookParts.Elements {
        private final List<Cell> found = new ArrayList<>();
        private final Set<Integer> styles;
        private final Set<Integer> texts;
        private int row;
        private int column;
        private boolean shared;

        Cells(Set<Integer> styles, Set<Integer> texts) {
            this.styles = styles;
            this.texts = texts;
        }

        @Override
        public void begin(XMLStreamReader xml) {
            switch (xml.getLocalName()) {
                case "row" -> {
                    row = Math.max(row + 1, number(WorkbookParts.attribute(xml, "r")));
                    column = -1;
                }
                case "c" -> {
                    String letters = WorkbookParts.attribute(xml, "r").replaceAll("[^A-Z]", "");
                    column = letters.isEmpty() || letters.length() > 3 ? column + 1 : WorkbookParts.column(letters);
                    shared = WorkbookParts.attribute(xml, "t").equals("s");
                    if (styles.contains(number(WorkbookParts.attribute(xml, "s")))) add();
                }
                case "v" -> sharedText(xml);
                default -> {
                    if (isStrike(xml)) add();
                }
            }
        }

        private void sharedText(XMLStreamReader xml) {
            if (!shared || texts.isEmpty()) return;
            try {
                if (texts.contains(number(xml.getElementText().strip()))) add();
            } catch (XMLStreamException damaged) {
                throw new IllegalArgumentException(damaged);
            }
        }

        private void add() {
            Cell cell = new Cell(row, column);
            if (found.isEmpty() || !found.get(found.size() - 1).equals(cell)) found.add(cell);
        }
    }
}
