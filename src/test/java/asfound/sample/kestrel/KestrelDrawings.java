package asfound.sample.kestrel;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The drawings of Kestrel Wharf: which panels there are, and on which sheets they stand. */
final class KestrelDrawings {

    private final Map<String, DrawnPanel> panels = new TreeMap<>();

    KestrelDrawings() {
        // Panels that feed others come after them, since their loads are the others' sums.
        for (String text : List.of(
                FloorPanels.LP_1A,
                FloorPanels.LP_1B,
                FloorPanels.LP_2A,
                FloorPanels.LP_2B,
                FloorPanels.LP_3A,
                FloorPanels.KP_1,
                FloorPanels.ELP_1,
                PowerPanels.HP_1A,
                PowerPanels.HP_1B,
                PowerPanels.HL_1,
                PowerPanels.RP_1,
                PowerPanels.HDP,
                PowerPanels.LDP,
                PowerPanels.EDP)) {
            String name = text.strip().split(" ")[0];
            panels.put(name, PanelText.read(text, name.equals("KP-1") ? 1000 : 0, this::panel));
        }
    }

    DrawnPanel panel(String name) {
        return Optional.ofNullable(panels.get(name))
                .orElseThrow(() -> new IllegalArgumentException("no panel " + name));
    }

    List<DrawnPanel> panels() {
        return List.copyOf(panels.values());
    }

    /** File name to content. */
    Map<String, byte[]> files() {
        Map<String, byte[]> files = new TreeMap<>();
        files.put("E-601.pdf", document(601, "Panel schedules, 208Y/120 V", d -> {
            DunnockSheet.draw(d, "E-601.1", "PANEL SCHEDULES", all("LDP", "LP-1B", "KP-1"));
            DunnockSheet.draw(d, "E-601.2", "PANEL SCHEDULES", all("LP-2A", "LP-2B", "LP-3A"));
        }));
        files.put(
                "E-602.pdf",
                document(
                        602,
                        "Panel schedules, 480Y/277 V",
                        d -> DunnockSheet.draw(d, "E-602", "PANEL SCHEDULES", all("HDP", "HP-1A", "HP-1B"))));
        files.put("EM-01.pdf", document(701, "Emergency panels", d -> {
            BrackwaterSheet.draw(d, "EM-01.1", panel("EDP"));
            BrackwaterSheet.draw(d, "EM-01.2", panel("ELP-1"));
        }));
        files.put("HL-1.pdf", document(702, "Panel HL-1", d -> BrackwaterSheet.draw(d, "HL-1", panel("HL-1"))));
        files.put("LP-1A.pdf", document(703, "Panel LP-1A", d -> BrackwaterSheet.draw(d, "LP-1A", panel("LP-1A"))));
        files.put("RP-1-scan.pdf", document(704, "Scan of a panel card", ScannedSheet::draw));
        return files;
    }

    /** The page that is scanned, as it was before it went through the scanner. */
    byte[] beforeTheScanner() {
        return document(704, "Panel RP-1", d -> BrackwaterSheet.draw(d, "RP-1", panel("RP-1")));
    }

    private List<DrawnPanel> all(String... names) {
        return List.of(names).stream().map(this::panel).toList();
    }

    private static byte[] document(long id, String title, Consumer<PDDocument> pages) {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            document.setDocumentId(id);
            Calendar issued = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
            issued.setTimeInMillis(1_560_470_400_000L);
            document.getDocumentInformation().setTitle("Kestrel Wharf Maker Hall: " + title);
            document.getDocumentInformation().setCreationDate(issued);
            pages.accept(document);
            document.save(bytes, CompressParameters.NO_COMPRESSION);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
