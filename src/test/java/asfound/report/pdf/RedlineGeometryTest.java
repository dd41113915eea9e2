package asfound.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import asfound.audit.Audit;
import asfound.finding.Correction;
import asfound.finding.Finding;
import asfound.finding.Severity;
import asfound.model.Box;
import asfound.model.Place;
import asfound.recordset.Source;
import asfound.sample.PrintedSchedule;
import asfound.sample.WhinfellAnnex;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Marks stand at the entries that are wrong, however the page is turned and cropped. */
class RedlineGeometryTest {

    private static final int[] WRONG = {1, 8, 23, 42};

    @TempDir
    Path folder;

    private Redline marked(int turn, double cropX, double cropY) throws IOException {
        PrintedSchedule printed = new PrintedSchedule();
        List<PrintedSchedule.Entry> entries = new ArrayList<>();
        for (int p = 1; p <= 42; p++) entries.add(new PrintedSchedule.Entry(p, "20", "LOAD-" + p));
        Map<Integer, Box> boxes = printed.page("LP-7", "MSB-3", entries, turn, cropX, cropY);
        Path file = folder.resolve("LP-7.pdf");
        printed.save(file);
        printed.document().close();
        List<Finding> findings = new ArrayList<>();
        for (int p : WRONG) findings.add(wrong(p, boxes.get(p)));
        Source source = new Source("LP-7.pdf", file, Source.Kind.PDF, Files.size(file), WhinfellAnnex.sha256(file));
        return new Redline(
                new Audit.Input(source, 1, 0, List.of()),
                "redlines/LP-7.pdf",
                Marks.of("LP-7.pdf", findings, List.of()),
                Optional.empty(),
                Map.of(),
                List.of(),
                "Whinfell Annex");
    }

    private static Finding wrong(int position, Box box) {
        Place place = Place.page("LP-7.pdf", 1, box);
        String circuit = Integer.toString(position);
        return WhinfellAnnex.said(
                "feeds-other",
                Severity.WARNING,
                "LP-7",
                Optional.of(circuit),
                List.of(),
                "LOAD-" + position,
                "PUMP-" + position,
                List.of(place),
                List.of(),
                "LP-7/" + position + " feeds PUMP-" + position + ".",
                "",
                List.of(new Correction(
                        place,
                        "LP-7",
                        circuit,
                        Correction.Field.DESCRIPTION,
                        "LOAD-" + position,
                        "PUMP-" + position,
                        "Traced.")));
    }

    private static List<PDAnnotation> of(PDDocument document, String subtype) throws IOException {
        return document.getPage(1).getAnnotations().stream()
                .filter(a -> a.getSubtype().equals(subtype))
                .toList();
    }

    @ParameterizedTest(name = "turned {0}, cropped at {1}, {2}")
    @CsvSource({"0,0,0", "90,0,0", "180,0,0", "270,0,0", "0,40,-25", "90,40,-25", "180,-15,60", "270,33,47"})
    void each_cloud_holds_the_wrong_entry_and_no_other(int turn, double cropX, double cropY) throws IOException {
        byte[] pdf = Written.redline(marked(turn, cropX, cropY));
        try (PDDocument document = Written.open(pdf)) {
            List<PDAnnotation> clouds = of(document, "Square");
            assertThat(clouds).hasSize(WRONG.length);
            Map<String, Written.Spot> spots = Written.spots(document, 2);
            for (int i = 0; i < WRONG.length; i++) {
                PDRectangle cloud = clouds.get(i).getRectangle();
                for (int p = 1; p <= 42; p++) {
                    Written.Spot spot = spots.get("LOAD-" + p);
                    assertThat(spot).as("LOAD-" + p).isNotNull();
                    assertThat(cloud.contains((float) spot.x(), (float) spot.y()))
                            .as("cloud " + WRONG[i] + ", entry " + p)
                            .isEqualTo(p == WRONG[i]);
                }
                assertThat(clouds.get(i).getContents())
                        .contains("LOAD-" + WRONG[i])
                        .contains("PUMP-" + WRONG[i]);
            }
        }
    }

    @ParameterizedTest(name = "turned {0}, cropped at {1}, {2}")
    @CsvSource({"0,0,0", "90,40,-25", "180,-15,60", "270,33,47"})
    void the_right_value_is_written_beside_and_covers_no_word(int turn, double cropX, double cropY) throws IOException {
        byte[] pdf = Written.redline(marked(turn, cropX, cropY));
        try (PDDocument document = Written.open(pdf)) {
            Map<String, Written.Spot> spots = Written.spots(document, 2);
            List<PDAnnotation> clouds = of(document, "Square"), notes = of(document, "FreeText");
            assertThat(notes).hasSize(WRONG.length);
            for (int i = 0; i < WRONG.length; i++) {
                assertThat(notes.get(i).getContents()).isEqualTo((i + 1) + " PUMP-" + WRONG[i]);
                PDRectangle note = notes.get(i).getRectangle(),
                        cloud = clouds.get(i).getRectangle();
                double apart = Math.hypot(
                        gap(note.getLowerLeftX(), note.getUpperRightX(), cloud.getLowerLeftX(), cloud.getUpperRightX()),
                        gap(
                                note.getLowerLeftY(),
                                note.getUpperRightY(),
                                cloud.getLowerLeftY(),
                                cloud.getUpperRightY()));
                assertThat(apart).isLessThan(8);
                spots.forEach((text, word) -> assertThat(note.contains((float) word.x(), (float) word.y()))
                        .as("note over " + text)
                        .isFalse());
            }
        }
    }

    private static double gap(double a0, double a1, double b0, double b1) {
        return Math.max(0, Math.max(a0 - b1, b0 - a1));
    }

    /** Painted by another part of the library: what differs from the drawing lies within clouds and notes alone. */
    @ParameterizedTest(name = "turned {0}, cropped at {1}, {2}")
    @CsvSource({"0,0,0", "90,40,-25", "180,-15,60", "270,33,47"})
    void nothing_changes_outside_the_marks_as_displayed(int turn, double cropX, double cropY) throws IOException {
        Redline redline = marked(turn, cropX, cropY);
        byte[] pdf = Written.redline(redline);
        try (PDDocument before = Loader.loadPDF(folder.resolve("LP-7.pdf").toFile());
                PDDocument after = Written.open(pdf)) {
            BufferedImage plain = new PDFRenderer(before).renderImage(0, 1),
                    marked = new PDFRenderer(after).renderImage(1, 1);
            assertThat(marked.getWidth()).isEqualTo(612);
            assertThat(marked.getHeight()).isEqualTo(792);
            PageFrame frame = PageFrame.of(after.getPage(1));
            List<Box> marks = after.getPage(1).getAnnotations().stream()
                    .map(a -> frame.toDisplay(a.getRectangle()))
                    .toList();
            int red = 0;
            for (int y = 0; y < 792; y++) {
                for (int x = 0; x < 612; x++) {
                    if (plain.getRGB(x, y) == marked.getRGB(x, y)) continue;
                    red++;
                    double px = x + 0.5, py = y + 0.5;
                    assertThat(marks.stream()
                                    .anyMatch(m ->
                                            new Box(m.x() - 1.5, m.y() - 1.5, m.w() + 3, m.h() + 3).contains(px, py)))
                            .as("changed at " + x + ", " + y)
                            .isTrue();
                }
            }
            assertThat(red).isGreaterThan(400);
        }
    }

    @Test
    void the_content_under_the_marks_is_the_drawings_own_to_the_byte() throws IOException {
        byte[] pdf = Written.redline(marked(90, 40, -25));
        try (PDDocument before = Loader.loadPDF(folder.resolve("LP-7.pdf").toFile());
                PDDocument after = Written.open(pdf)) {
            assertThat(after.getPage(1).getContents().readAllBytes())
                    .isEqualTo(before.getPage(0).getContents().readAllBytes());
            assertThat(after.getPage(1).getMediaBox().toString())
                    .isEqualTo(before.getPage(0).getMediaBox().toString());
            assertThat(after.getPage(1).getCropBox().toString())
                    .isEqualTo(before.getPage(0).getCropBox().toString());
            assertThat(after.getPage(1).getRotation()).isEqualTo(90);
            assertThat(after.getPage(0).getRotation()).isZero();
        }
    }

    /** Two readers that share nothing with ours: qpdf for the annotations, poppler for the words as displayed. */
    @ParameterizedTest(name = "turned {0}, cropped at {1}, {2}")
    @CsvSource({"0,0,0", "90,0,0", "0,40,-25", "90,40,-25", "180,-15,60", "270,33,47"})
    void other_readers_find_the_marks_at_the_entries(int turn, double cropX, double cropY) throws Exception {
        assumeTrue(runs("qpdf") && runs("pdftotext"), "qpdf and poppler are not installed");
        Path file = folder.resolve("marked.pdf");
        Files.write(file, Written.redline(marked(turn, cropX, cropY)));
        JsonNode objects = new ObjectMapper()
                .readTree(output("qpdf", "--json=2", "--json-key=qpdf", file.toString()))
                .get("qpdf")
                .get(1);
        Map<String, double[]> words = words(output("pdftotext", "-bbox", "-cropbox", "-f", "2", file.toString(), "-"));
        int clouds = 0, replies = 0, notes = 0;
        for (JsonNode object : objects) {
            JsonNode value = object.path("value");
            if (value.path("/Subtype").asText().equals("/FreeText")) notes++;
            if (value.path("/Subtype").asText().equals("/Text") && value.has("/IRT")) replies++;
            if (!value.path("/Subtype").asText().equals("/Square")) continue;
            JsonNode effect = value.path("/BE");
            if (effect.isTextual())
                effect = objects.path("obj:" + effect.asText()).path("value");
            assertThat(effect.path("/S").asText()).isEqualTo("/C");
            int number = Integer.parseInt(value.path("/NM").asText().replace("u:cloud-", ""));
            JsonNode r = value.path("/Rect");
            double[] crop = {cropX, cropY};
            double[] shown = displayed(r, turn, crop);
            clouds++;
            double[] word = words.get("LOAD-" + WRONG[number - 1]);
            assertThat(word).isNotNull();
            assertThat(word[0]).isBetween(shown[0], shown[2]);
            assertThat(word[1]).isBetween(shown[1] - 1, shown[3]);
            assertThat(word[2]).isBetween(shown[0], shown[2]);
            assertThat(word[3]).isBetween(shown[1], shown[3] + 1);
        }
        assertThat(clouds).isEqualTo(WRONG.length);
        assertThat(notes).isEqualTo(WRONG.length);
        assertThat(replies).isEqualTo(WRONG.length);
    }

    /** By hand, for pages of 612 x 792 as displayed: left, top, right, bottom. */
    private static double[] displayed(JsonNode r, int turn, double[] crop) {
        double x0 = r.get(0).asDouble() - crop[0], y0 = r.get(1).asDouble() - crop[1];
        double x1 = r.get(2).asDouble() - crop[0], y1 = r.get(3).asDouble() - crop[1];
        return switch (turn) {
            case 90 -> new double[] {y0, x0, y1, x1};
            case 180 -> new double[] {612 - x1, y0, 612 - x0, y1};
            case 270 -> new double[] {612 - y1, 792 - x1, 612 - y0, 792 - x0};
            default -> new double[] {x0, 792 - y1, x1, 792 - y0};
        };
    }

    private static Map<String, double[]> words(String bbox) {
        Map<String, double[]> words = new java.util.HashMap<>();
        Matcher m = Pattern.compile("xMin=\"(.+?)\" yMin=\"(.+?)\" xMax=\"(.+?)\" yMax=\"(.+?)\">(.+?)</word>")
                .matcher(bbox);
        while (m.find()) {
            double[] box = new double[4];
            for (int i = 0; i < 4; i++) box[i] = Double.parseDouble(m.group(i + 1));
            words.putIfAbsent(m.group(5), box);
        }
        return words;
    }

    private static boolean runs(String tool) {
        try {
            Process process = new ProcessBuilder(tool, "--version")
                    .redirectErrorStream(true)
                    .start();
            process.getInputStream().readAllBytes();
            process.waitFor();
            return true;
        } catch (IOException | InterruptedException e) {
            return false;
        }
    }

    private static String output(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String out = new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        process.waitFor();
        return out;
    }
}
