package asfound.recordset;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

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
            Map<String, String> targets = attributes(zip, "xl/_rels/workbook.xml.rels", "Relationship", "Id", "Target");
            Map<String, String> sheets = attributes(zip, "xl/workbook.xml", "sheet", "name", "id");
            for (Map.Entry<String, String> sheet : sheets.entrySet()) {
                String target = targets.getOrDefault(sheet.getValue(), "");
                String part = target.startsWith("/") ? target.substring(1) : "xl/" + target;
                out.put(sheet.getKey(), areas(zip, part, most));
            }
        } catch (IOException | XMLStreamException | IllegalArgumentException e) {
            return Map.of();
        }
        return out;
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        return factory;
    }

    private interface OnElement {
        void at(XMLStreamReader xml);
    }

    private static void elements(ZipFile zip, String part, OnElement on) throws IOException, XMLStreamException {
        ZipEntry entry = zip.getEntry(part);
        if (entry == null) return;
        try (InputStream in = zip.getInputStream(entry)) {
            XMLStreamReader xml = factory().createXMLStreamReader(in);
            while (xml.hasNext()) if (xml.next() == XMLStreamConstants.START_ELEMENT) on.at(xml);
        }
    }

    private static Map<String, String> attributes(ZipFile zip, String part, String element, String key, String value)
            throws IOException, XMLStreamException {
        Map<String, String> out = new HashMap<>();
        elements(zip, part, xml -> {
            if (xml.getLocalName().equals(element)) out.put(attribute(xml, key), attribute(xml, value));
        });
        return out;
    }

    private static String attribute(XMLStreamReader xml, String name) {
        for (int i = 0; i < xml.getAttributeCount(); i++)
            if (xml.getAttributeLocalName(i).equals(name)) return xml.getAttributeValue(i);
        return "";
    }

    private static List<Area> areas(ZipFile zip, String part, long most) throws IOException, XMLStreamException {
        List<Area> out = new ArrayList<>();
        elements(zip, part, xml -> {
            if (!xml.getLocalName().equals("mergeCell") || out.size() > most) return;
            Matcher m = AREA.matcher(attribute(xml, "ref"));
            if (m.matches())
                out.add(new Area(
                        Integer.parseInt(m.group(2)),
                        column(m.group(1)),
                        Integer.parseInt(m.group(4)),
                        column(m.group(3))));
        });
        return out;
    }

    private static int column(String letters) {
        int n = 0;
        for (char c : letters.toCharArray()) n = n * 26 + (c - 'A' + 1);
        return n - 1;
    }
}
