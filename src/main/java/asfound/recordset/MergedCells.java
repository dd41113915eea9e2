package asfound.recordset;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLStreamException;

/** The joined cells of a workbook's sheets, which tell what spans several rows or columns. */
public final class MergedCells {

    private static final Pattern AREA =
            Pattern.compile("\\$?([A-Z]{1,3})\\$?(\\d{1,7}):\\$?([A-Z]{1,3})\\$?(\\d{1,7})");

    private MergedCells() {}

    /**
     * A block of cells that are one.
     *
     * @param firstRow from 1, as the spreadsheet numbers it
     * @param firstColumn from 0
     */
    public record Area(int firstRow, int firstColumn, int lastRow, int lastColumn) {}

    /**
     * The joined cells by the sheet's name. A workbook whose parts cannot be followed has none: its cells stand alone.
     *
     * @param most of one sheet; a sheet with more of them has one more here
     */
    public static Map<String, List<Area>> read(Path workbook, long most) {
        Map<String, List<Area>> out = new HashMap<>();
        try (ZipFile zip = new ZipFile(workbook.toFile())) {
            for (Map.Entry<String, String> sheet : WorkbookParts.sheets(zip).entrySet())
                out.put(sheet.getKey(), areas(zip, sheet.getValue(), most));
        } catch (IOException | XMLStreamException | IllegalArgumentException e) {
            return Map.of();
        }
        return out;
    }

    private static List<Area> areas(ZipFile zip, String part, long most) throws IOException, XMLStreamException {
        List<Area> out = new ArrayList<>();
        WorkbookParts.elements(zip, part, xml -> {
            if (!xml.getLocalName().equals("mergeCell") || out.size() > most) return;
            Matcher m = AREA.matcher(WorkbookParts.attribute(xml, "ref"));
            if (m.matches())
                out.add(new Area(
                        Integer.parseInt(m.group(2)),
                        WorkbookParts.column(m.group(1)),
                        Integer.parseInt(m.group(4)),
                        WorkbookParts.column(m.group(3))));
        });
        return out;
    }
}
