package asfound.drawing.schedule;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** The least that is a workbook by ECMA-376-1: no styles, no shared strings, no cell references. */
final class PlainWorkbook {

    private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";
    private static final String OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String CELLS = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.";

    private PlainWorkbook() {}

    @SafeVarargs
    static void write(OutputStream out, String sheet, List<String>... rows) throws IOException {
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            part(
                    zip,
                    "[Content_Types].xml",
                    "<Types xmlns='" + PACKAGE + "content-types'><Default Extension='rels' ContentType='"
                            + "application/vnd.openxmlformats-package.relationships+xml'/>"
                            + "<Override PartName='/xl/workbook.xml' ContentType='" + TYPE + "sheet.main+xml'/>"
                            + "<Override PartName='/xl/worksheets/sheet1.xml' ContentType='" + TYPE
                            + "worksheet+xml'/></Types>");
            part(zip, "_rels/.rels", relation("officeDocument", "xl/workbook.xml"));
            part(
                    zip,
                    "xl/workbook.xml",
                    "<workbook xmlns='" + CELLS + "' xmlns:r='" + OFFICE + "'><sheets><sheet name='" + sheet
                            + "' sheetId='1' r:id='rId1'/></sheets></workbook>");
            part(zip, "xl/_rels/workbook.xml.rels", relation("worksheet", "worksheets/sheet1.xml"));
            part(
                    zip,
                    "xl/worksheets/sheet1.xml",
                    Arrays.stream(rows)
                            .map(PlainWorkbook::row)
                            .collect(Collectors.joining(
                                    "", "<worksheet xmlns='" + CELLS + "'><sheetData>", "</sheetData></worksheet>")));
        }
    }

    private static String row(List<String> cells) {
        return cells.stream()
                .map(c -> "<c t='inlineStr'><is><t>" + c + "</t></is></c>")
                .collect(Collectors.joining("", "<row>", "</row>"));
    }

    private static String relation(String type, String target) {
        return "<Relationships xmlns='" + PACKAGE + "relationships'><Relationship Id='rId1' Type='" + OFFICE + "/"
                + type + "' Target='" + target + "'/></Relationships>";
    }

    private static void part(ZipOutputStream zip, String name, String text) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }
}
