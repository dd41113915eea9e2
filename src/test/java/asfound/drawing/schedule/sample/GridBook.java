package asfound.drawing.schedule.sample;

import asfound.drawing.schedule.sample.GridLayout.Figures;
import asfound.drawing.schedule.sample.GridPaper.Cell;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes papers as a workbook by ECMA-376-1, with the ways to keep a text or a number in a cell that it allows. */
final class GridBook {

    private static final String HEAD = "<?xml version='1.0' encoding='UTF-8' standalone='yes'?>";
    private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";
    private static final String OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String CELLS = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
    private static final String STRUCK = " s='1'";
    /** Day and month; day, month and year; month and year: as numbers of formats that every spreadsheet knows. */
    private static final int[] DAYS = {16, 14, 15};

    private static final LocalDate FIRST_DAY = LocalDate.of(1899, 12, 30);

    private final Figures figures;
    private final Random random;
    private final List<String> shared = new ArrayList<>();
    /** How texts are kept: 0 shared, 1 in the cell, 2 shared in parts, 3 as the last value of a formula. */
    private final int manner;

    private GridBook(Figures figures, Random random) {
        this.figures = figures;
        this.random = random;
        manner = random.nextInt(5);
    }

    static void write(Path file, List<GridPaper> papers, Figures figures, Random random) throws IOException {
        GridBook book = new GridBook(figures, random);
        StringBuilder types = new StringBuilder(), sheets = new StringBuilder(), relations = new StringBuilder();
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            for (int i = 1; i <= papers.size(); i++) {
                String part = "worksheets/sheet" + i + ".xml";
                types.append(type("xl/" + part, "worksheet"));
                sheets.append("<sheet name='" + escaped(papers.get(i - 1).name()) + "' sheetId='" + i + "' r:id='rId"
                        + i + "'/>");
                relations.append(relation(i, "worksheet", part));
                part(zip, "xl/" + part, book.worksheet(papers.get(i - 1)));
            }
            part(
                    zip,
                    "[Content_Types].xml",
                    HEAD + "<Types xmlns='" + PACKAGE + "content-types'><Default Extension='rels' ContentType='"
                            + "application/vnd.openxmlformats-package.relationships+xml'/>"
                            + type("xl/workbook.xml", "sheet.main") + type("xl/styles.xml", "styles")
                            + type("xl/sharedStrings.xml", "sharedStrings") + types + "</Types>");
            part(zip, "_rels/.rels", relations(relation(1, "officeDocument", "xl/workbook.xml")));
            part(
                    zip,
                    "xl/workbook.xml",
                    HEAD + "<workbook xmlns='" + CELLS + "' xmlns:r='" + OFFICE + "'><sheets>" + sheets
                            + "</sheets></workbook>");
            int n = papers.size();
            part(
                    zip,
                    "xl/_rels/workbook.xml.rels",
                    relations(relations
                            + relation(n + 1, "styles", "styles.xml")
                            + relation(n + 2, "sharedStrings", "sharedStrings.xml")));
            part(zip, "xl/styles.xml", styles());
            part(
                    zip,
                    "xl/sharedStrings.xml",
                    book.shared.stream()
                            .collect(Collectors.joining("", HEAD + "<sst xmlns='" + CELLS + "'>", "</sst>")));
        }
    }

    private static String styles() {
        return HEAD + "<styleSheet xmlns='" + CELLS
                + "'><fonts><font><sz val='11'/></font><font><strike/><sz val='11'/>"
                + "</font></fonts><fills><fill/></fills><borders><border/></borders><cellStyleXfs><xf/></cellStyleXfs>"
                + "<cellXfs><xf numFmtId='0' fontId='0'/><xf numFmtId='0' fontId='1'/>"
                + Arrays.stream(DAYS)
                        .mapToObj(f -> "<xf numFmtId='" + f + "' fontId='0' applyNumberFormat='1'/>")
                        .collect(Collectors.joining())
                + "</cellXfs></styleSheet>";
    }

    private String worksheet(GridPaper paper) {
        StringBuilder out = new StringBuilder(HEAD + "<worksheet xmlns='" + CELLS + "'>");
        if (!paper.hiddenColumns().isEmpty()) {
            out.append("<cols>");
            for (int c : paper.hiddenColumns())
                out.append("<col min='" + (c + 1) + "' max='" + (c + 1) + "' hidden='1' width='9'/>");
            out.append("</cols>");
        }
        out.append("<sheetData>");
        paper.rows().forEach((row, cells) -> {
            String hidden = paper.hiddenRows().contains(row) ? " hidden='1'" : "";
            out.append("<row r='" + (row + 1) + "'" + hidden + ">");
            for (Map.Entry<Integer, Cell> e : cells.entrySet())
                out.append(cell(reference(row, e.getKey()), e.getValue()));
            out.append("</row>");
        });
        out.append("</sheetData>");
        if (!paper.joined().isEmpty()) {
            out.append("<mergeCells>");
            for (GridPaper.Joined j : paper.joined())
                out.append("<mergeCell ref='" + reference(j.top(), j.left()) + ":" + reference(j.bottom(), j.right())
                        + "'/>");
            out.append("</mergeCells>");
        }
        return out.append("</worksheet>").toString();
    }

    private String cell(String at, Cell cell) {
        if (cell.day().isPresent()) {
            int style = 2 + Math.floorMod(manner, DAYS.length);
            return "<c r='" + at + "' s='" + style + "'><v>" + (cell.day().get().toEpochDay() - FIRST_DAY.toEpochDay())
                    + "</v></c>";
        }
        String style = cell.struck() ? STRUCK : "", open = "<c r='" + at + "'" + style;
        if (cell.figure() && figures != Figures.TEXTS) {
            boolean formula = figures == Figures.FORMULAS;
            return open + ">" + (formula ? "<f>0+" + cell.text() + "</f>" : "") + "<v>" + kept(cell.text())
                    + "</v></c>";
        }
        String text = "<t xml:space='preserve'>" + escaped(cell.text()) + "</t>";
        return switch (manner) {
            case 1 -> open + " t='inlineStr'><is>" + text + "</is></c>";
            case 2 -> open + " t='s'><v>" + shared(parts(cell.text())) + "</v></c>";
            case 3 -> open + " t='str'><f>T(A1)</f><v>" + escaped(cell.text()) + "</v></c>";
            default -> open + " t='s'><v>" + shared(text) + "</v></c>";
        };
    }

    /** A number as a workbook keeps it: with a point and a zero, or off by what a sum of binary fractions is off. */
    private String kept(String figure) {
        if (figures == Figures.DECIMALS && !figure.contains(".")) return figure + ".0";
        return figures == Figures.FORMULAS && figure.contains(".") && random.nextInt(4) == 0
                ? figure + "00000000000001"
                : figure;
    }

    private int shared(String text) {
        shared.add("<si>" + text + "</si>");
        return shared.size() - 1;
    }

    private String parts(String text) {
        int cut = random.nextInt(text.length() + 1);
        String head = text.substring(0, cut), rest = text.substring(cut);
        return "<r><t xml:space='preserve'>" + escaped(head) + "</t></r><r><rPr><b/></rPr><t xml:space='preserve'>"
                + escaped(rest) + "</t></r>";
    }

    static String reference(int row, int column) {
        String letters = column < 26
                ? String.valueOf((char) ('A' + column))
                : "" + (char) ('A' + column / 26 - 1) + (char) ('A' + column % 26);
        return letters + (row + 1);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace("'", "&apos;")
                .replace("\"", "&quot;");
    }

    private static String type(String part, String kind) {
        return "<Override PartName='/" + part + "' ContentType='" + TYPE + kind + "+xml'/>";
    }

    private static String relation(int id, String type, String target) {
        return "<Relationship Id='rId" + id + "' Type='" + OFFICE + "/" + type + "' Target='" + target + "'/>";
    }

    private static String relations(String inside) {
        return HEAD + "<Relationships xmlns='" + PACKAGE + "relationships'>" + inside + "</Relationships>";
    }

    private static void part(ZipOutputStream zip, String name, String text) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }
}
