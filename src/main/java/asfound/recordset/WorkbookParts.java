package asfound.recordset;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** The parts of an Office Open XML workbook, for what the library that reads its cells does not tell. */
final class WorkbookParts {

    private static final String RELATIONS = "xl/_rels/workbook.xml.rels";

    private WorkbookParts() {}

    /** What to do where an element begins, and where one ends. */
    interface Elements {
        void begin(XMLStreamReader xml);

        default void end(String name) {}
    }

    /** The part of each sheet, by the sheet's name. */
    static Map<String, String> sheets(ZipFile zip) throws IOException, XMLStreamException {
        Map<String, String> targets = attributes(zip, RELATIONS, "Relationship", "Id", "Target"), out = new TreeMap<>();
        attributes(zip, "xl/workbook.xml", "sheet", "name", "id")
                .forEach((name, id) -> out.put(name, part(targets.getOrDefault(id, ""))));
        return out;
    }

    private static String part(String target) {
        return target.startsWith("/") ? target.substring(1) : "xl/" + target;
    }

    private static Map<String, String> attributes(ZipFile zip, String part, String element, String key, String value)
            throws IOException, XMLStreamException {
        Map<String, String> out = new HashMap<>();
        elements(zip, part, xml -> {
            if (xml.getLocalName().equals(element)) out.put(attribute(xml, key), attribute(xml, value));
        });
        return out;
    }

    /** Goes through a part; through nothing where the workbook has none of that name. */
    static void elements(ZipFile zip, String part, Elements on) throws IOException, XMLStreamException {
        ZipEntry entry = zip.getEntry(part);
        if (entry == null) return;
        try (InputStream in = zip.getInputStream(entry)) {
            XMLStreamReader xml = factory().createXMLStreamReader(in);
            while (xml.hasNext()) {
                int event = xml.next();
                if (event == XMLStreamConstants.START_ELEMENT) on.begin(xml);
                else if (event == XMLStreamConstants.END_ELEMENT) on.end(xml.getLocalName());
            }
        }
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        return factory;
    }

    /** An attribute by its local name; empty where the element has none of it. */
    static String attribute(XMLStreamReader xml, String name) {
        for (int i = 0; i < xml.getAttributeCount(); i++)
            if (xml.getAttributeLocalName(i).equals(name)) return xml.getAttributeValue(i);
        return "";
    }

    /** A setting that holds where it stands without a value (ECMA-376-1, 18.18.5 and 22.9.2.7). */
    static boolean isOn(XMLStreamReader xml) {
        String value = attribute(xml, "val");
        return !value.equals("0") && !value.equals("false") && !value.equals("off");
    }

    /** The number of a column from its letters, from 0. */
    static int column(String letters) {
        int n = 0;
        for (char c : letters.toCharArray()) n = n * 26 + (c - 'A' + 1);
        return n - 1;
    }
}
