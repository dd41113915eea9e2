package asfound.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audit;
import asfound.finding.Finding;
import asfound.finding.Severity;
import asfound.model.Place;
import asfound.recordset.Limits;
import asfound.recordset.Source;
import asfound.sample.WhinfellAnnex;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A marked copy goes to many people: it holds the drawing and the marks, and nothing that acts. */
class RedlineSafetyTest {

    /** What the library says of damaged files is no news here; kept, since loggers are held weakly. */
    private static final Logger LIBRARY = Logger.getLogger("org.apache.pdfbox");

    @TempDir
    Path folder;

    @BeforeAll
    static void hush() {
        LIBRARY.setLevel(Level.OFF);
    }

    @AfterAll
    static void hear() {
        LIBRARY.setLevel(null);
    }

    private Audit.Input input(Path file) throws IOException {
        Source source = new Source(
                "drawings/" + file.getFileName(), file, Source.Kind.PDF, Files.size(file), WhinfellAnnex.sha256(file));
        return new Audit.Input(source, 1, 0, List.of());
    }

    private Redline redline(Path file, List<Mark> marks) throws IOException {
        return new Redline(
                input(file), "redlines/x.pdf", marks, Optional.empty(), Map.of(), List.of(), "Whinfell Annex");
    }

    private Path sample() throws IOException {
        WhinfellAnnex.in(folder);
        return folder.resolve(WhinfellAnnex.SHEET);
    }

    @Test
    void the_same_audit_gives_the_same_bytes_and_the_drawing_stays_as_it_was() throws IOException {
        Audit audit = WhinfellAnnex.in(folder);
        String before = WhinfellAnnex.sha256(folder.resolve(WhinfellAnnex.SHEET));
        assertThat(Written.redline(audit)).isEqualTo(Written.redline(audit));
        assertThat(WhinfellAnnex.sha256(folder.resolve(WhinfellAnnex.SHEET))).isEqualTo(before);
    }

    @Test
    void scripts_actions_and_attachments_are_not_carried_over_and_the_copy_says_so() throws IOException {
        Path file = folder.resolve("hostile.pdf");
        try (PDDocument document = Loader.loadPDF(sample().toFile())) {
            COSDictionary script = new COSDictionary();
            script.setName(COSName.S, "JavaScript");
            script.setItem(COSName.JS, new COSString("app.alert('x')"));
            COSDictionary launch = new COSDictionary();
            launch.setName(COSName.S, "Launch");
            launch.setItem(COSName.F, new COSString("evil-program"));
            COSDictionary attached = new COSDictionary();
            attached.setName(COSName.TYPE, "Filespec");
            attached.setItem(COSName.EF, new COSDictionary());
            COSDictionary triggers = new COSDictionary();
            triggers.setItem(COSName.O, script);
            COSDictionary names = new COSDictionary(), files = new COSDictionary();
            COSArray pairs = new COSArray();
            pairs.add(new COSString("attached"));
            pairs.add(attached);
            files.setItem(COSName.NAMES, pairs);
            names.setItem("EmbeddedFiles", files);
            names.setItem("JavaScript", files);
            COSDictionary catalog = document.getDocumentCatalog().getCOSObject();
            catalog.setItem(COSName.NAMES, names);
            catalog.setItem("OpenAction", script);
            catalog.setItem(COSName.AA, triggers);
            COSDictionary page = document.getPage(0).getCOSObject();
            page.setItem(COSName.AA, triggers);
            page.setItem("AF", attached);
            // an action hidden where only a walk through everything finds it
            page.getCOSDictionary(COSName.RESOURCES).setItem(COSName.PROPERTIES, triggers);
            COSArray annotations = new COSArray();
            for (String kind : new String[] {"Link", "FileAttachment", "Widget", "Screen", "Highlight"})
                annotations.add(annotation(kind, launch, attached));
            page.setItem(COSName.ANNOTS, annotations);
            document.save(file.toFile());
        }
        byte[] pdf = Written.redline(redline(file, List.of()));
        try (PDDocument document = Written.open(pdf)) {
            List<String> all = everything(document);
            assertThat(all)
                    .doesNotContain("/JavaScript", "/JS", "/Launch", "/AA", "/OpenAction", "/EF", "/Filespec", "/AF")
                    .doesNotContain("/FileAttachment", "/Widget", "/Screen", "/Link", "evil-program", "app.alert('x')");
            // what is seen stays: the highlighter's stroke, and the form field as a picture of itself
            assertThat(document.getPage(1).getAnnotations().stream().map(a -> a.getSubtype()))
                    .containsExactly("Stamp", "Highlight");
        }
        assertThat(Written.text(pdf, 1))
                .contains("Not carried over:")
                .contains("attached files")
                .contains("document actions")
                .contains("links");
    }

    private static COSDictionary annotation(String kind, COSDictionary action, COSDictionary attached) {
        COSDictionary annotation = new COSDictionary();
        annotation.setName(COSName.SUBTYPE, kind);
        annotation.setItem(COSName.A, action);
        annotation.setItem("FS", attached);
        annotation.setItem(
                COSName.RECT, new org.apache.pdfbox.pdmodel.common.PDRectangle(10, 10, 50, 20).getCOSArray());
        COSDictionary appearance = new COSDictionary();
        annotation.setItem(COSName.AP, appearance);
        return annotation;
    }

    /** Every name, key and string that a reader of the file can come upon. */
    private static List<String> everything(PDDocument document) {
        List<String> all = new ArrayList<>();
        for (COSObjectKey key : document.getDocument().getXrefTable().keySet()) {
            COSObject object = document.getDocument().getObjectFromPool(key);
            gather(object.getObject(), all, 0);
        }
        gather(document.getDocument().getTrailer(), all, 0);
        return all;
    }

    private static void gather(COSBase base, List<String> all, int depth) {
        if (depth > 20) return;
        if (base instanceof COSName name) all.add("/" + name.getName());
        if (base instanceof COSString string) all.add(string.getString());
        if (base instanceof COSArray array) for (COSBase each : array) gather(each, all, depth + 1);
        if (base instanceof COSDictionary d) {
            for (COSName key : d.keySet()) {
                all.add("/" + key.getName());
                gather(d.getItem(key), all, depth + 1);
            }
        }
    }

    @Test
    void a_drawing_protected_without_a_password_to_open_it_is_marked_and_the_copy_says_that_it_was()
            throws IOException {
        Path file = protectedCopy("");
        byte[] pdf = Written.redline(redline(file, List.of()));
        try (PDDocument document = Written.open(pdf)) {
            assertThat(document.isEncrypted()).isFalse();
            assertThat(document.getNumberOfPages()).isEqualTo(4);
        }
        assertThat(Written.text(pdf, 1)).contains("The drawing was protected");
        assertThat(Written.text(pdf, 2)).contains("PANEL LP-2A");
    }

    @Test
    void a_drawing_that_needs_a_password_gives_its_summary_alone_and_says_why() throws IOException {
        assertAlone(redline(protectedCopy("secret"), List.of()), "protected by a password");
    }

    @Test
    void a_broken_drawing_gives_its_summary_alone_and_says_why() throws IOException {
        Path file = folder.resolve("broken.pdf");
        Files.writeString(file, "%PDF-1.7\nnothing that follows is a drawing");
        assertAlone(redline(file, List.of()), "cannot be copied");
    }

    @Test
    void a_drawing_that_changed_after_it_was_read_is_not_marked_with_places_that_may_no_longer_be_right()
            throws IOException {
        Path file = sample();
        Redline redline = redline(file, List.of());
        Files.write(file, "\n".getBytes(), java.nio.file.StandardOpenOption.APPEND);
        assertAlone(redline, "changed while it was audited");
    }

    /** Whatever is done to a drawing's bytes: there is a marked copy or a summary that says why not, and it opens. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void a_damaged_drawing_never_stops_the_report(long seed) throws IOException {
        byte[] bytes = Files.readAllBytes(sample());
        Random random = new Random(seed);
        int damaged = 1 + random.nextInt(60);
        for (int i = 0; i < damaged; i++) bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        if (seed % 3 == 0) bytes = Arrays.copyOf(bytes, bytes.length / 4 + random.nextInt(bytes.length / 2));
        Path file = folder.resolve("damaged.pdf");
        Files.write(file, bytes);
        Audit audit = WhinfellAnnex.in(folder);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        RedlineWriter.write(
                redline(file, Marks.of(WhinfellAnnex.SHEET, audit.findings(), List.of())), Limits.usual(), out);
        try (PDDocument document = Written.open(out.toByteArray())) {
            assertThat(document.getNumberOfPages()).as("seed " + seed).isPositive();
        }
        assertThat(Written.text(out.toByteArray(), 1)).as("seed " + seed).contains("MARKED DRAWING");
    }

    private static void assertAlone(Redline redline, String why) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertThat(RedlineWriter.write(redline, Limits.usual(), out))
                .isPresent()
                .get()
                .asString()
                .contains(why);
        assertThat(Written.text(out.toByteArray())).contains(why).contains("Test for absence of voltage");
        try (PDDocument document = Written.open(out.toByteArray())) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
        }
    }

    private Path protectedCopy(String toOpen) throws IOException {
        Path file = folder.resolve("protected.pdf");
        try (PDDocument document = Loader.loadPDF(sample().toFile())) {
            StandardProtectionPolicy policy = new StandardProtectionPolicy("owner", toOpen, new AccessPermission());
            policy.setEncryptionKeyLength(128);
            document.protect(policy);
            document.save(file.toFile());
        }
        return file;
    }

    @Test
    void a_summary_that_is_too_long_goes_on_behind_the_drawing_and_the_pages_keep_their_numbers() throws IOException {
        Path file = sample();
        List<Finding> findings = new ArrayList<>();
        for (int i = 1; i <= 120; i++) {
            Place place = Place.page("drawings/E-601.pdf", 2);
            findings.add(WhinfellAnnex.said(
                    "vague-entry",
                    Severity.NOTICE,
                    "LP-2B",
                    Optional.of(Integer.toString(i)),
                    List.of(),
                    "RECEPT",
                    "",
                    List.of(place),
                    List.of(),
                    "Vague.",
                    "Say more of entry " + i + ".",
                    List.of()));
        }
        byte[] pdf = Written.redline(redline(file, Marks.of("drawings/E-601.pdf", findings, List.of())));
        assertThat(Written.text(pdf, Redline.pageOf(2))).contains("PANEL LP-2B");
        assertThat(Written.text(pdf, 1)).contains("the list goes on behind the drawing");
        String all = Written.text(pdf);
        for (int i = 1; i <= 120; i++) assertThat(all).contains("Say more of entry " + i + ".");
    }

    @Test
    void no_character_of_a_drawing_or_survey_can_stop_a_sheet_and_none_is_dropped_unseen() throws IOException {
        String odd = "a\u0000b\u202Ec \uD800 \uD83D\uDD0C 会議室 שלום Ωμ \uE000 \u0007";
        try (PDDocument document = new PDDocument()) {
            Typeface typeface = new Typeface(document);
            Canvas canvas = new Canvas(typeface, 400, 100);
            canvas.text(odd, 10, 50, Type.bold(12));
            PDPage page = SheetFile.page(document, canvas);
            document.addPage(page);
            typeface.embed();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            assertThat(typeface.hasMissing()).isTrue();
            assertThat(Written.text(out.toByteArray()))
                    .contains("a□b□c □ □ □□□")
                    .contains("Ωμ □ □");
        }
        assertThat(Visible.of("\u00A0two\t\n words ")).isEqualTo("two words ");
    }

    @Test
    void two_drawings_of_one_name_in_two_folders_get_two_files_and_workbooks_none() throws IOException {
        Audit audit = WhinfellAnnex.in(folder);
        assertThat(Redlines.of(audit)).extracting(Redline::name).containsExactly("redlines/E-601.pdf");
        assertThat(Redlines.notMarked(audit)).containsExactly("drawings/HP-1.xlsx");
        Source first = audit.inputs().get(0).source();
        List<Audit.Input> inputs = new ArrayList<>();
        for (String name : List.of("a/LP.pdf", "b/lp.PDF", "c/../evil\\\u0000.pdf", "d/.pdf"))
            inputs.add(new Audit.Input(new Source(name, first.path(), Source.Kind.PDF, 1, ""), 1, 0, List.of()));
        Audit many = new Audit(
                audit.recordSet(),
                inputs,
                audit.drawings(),
                audit.survey(),
                audit.network(),
                audit.verdicts(),
                audit.drawingVerdicts(),
                audit.findings(),
                audit.accepted(),
                audit.unclear(),
                audit.coverage(),
                audit.plan());
        assertThat(Redlines.of(many))
                .extracting(Redline::name)
                .containsExactly("redlines/LP.pdf", "redlines/lp (2).pdf", "redlines/evil__.pdf", "redlines/_.pdf");
    }

    @Test
    void the_page_that_fails_bears_the_stamp_and_says_which_panel() throws IOException {
        try (PDDocument document = Written.open(Written.redline(WhinfellAnnex.in(folder)))) {
            assertThat(stamps(document, 2))
                    .containsExactly("DO NOT USE FOR ISOLATION LP-2A: isolating by this drawing"
                            + " leaves equipment live, on the evidence. Page 1 of this file gives the reasons.");
            assertThat(stamps(document, 4))
                    .hasSize(1)
                    .allSatisfy(s -> assertThat(s).startsWith("NOT PROVEN FOR ISOLATION LP-EM"));
        }
    }

    private static List<String> stamps(PDDocument document, int page) throws IOException {
        return document.getPage(page - 1).getAnnotations().stream()
                .filter(a -> a.getSubtype().equals("Stamp"))
                .map(a -> a.getContents().replaceAll("\\s+", " "))
                .toList();
    }
}
