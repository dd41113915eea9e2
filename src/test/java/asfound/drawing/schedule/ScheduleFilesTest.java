package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.model.Directory.Mains;
import asfound.model.Directory.Use;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.recordset.Limit;
import asfound.recordset.Limits;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole files: what is read of them, and what is said where nothing could be. */
class ScheduleFilesTest {

    @TempDir
    private Path folder;

    @Test
    void a_worksheet_with_title_rows_and_joined_cells_is_read_by_its_geometry() throws IOException {
        Path file = folder.resolve("LP-7.xlsx");
        try (OutputStream out = Files.newOutputStream(file);
                Workbook book = new Workbook(out, "test", "1.0")) {
            Worksheet sheet = book.newWorksheet("Sheet1");
            row(sheet, 0, "PANEL LP-7");
            row(sheet, 1, "LOCATION", "Boiler room", "VOLTAGE", "208Y/120");
            row(sheet, 2, "FED FROM", "MDP-4", "MAINS", "MLO");
            row(sheet, 4, "DESCRIPTION", "TRIP", "P", "CKT", "CKT", "P", "TRIP", "DESCRIPTION");
            row(sheet, 5, "Chiller pump", "40", "3", "1", "2", "1", "20", "Boiler lights");
            row(sheet, 6, "", "", "", "3", "4", "1", "20", "Spare");
            row(sheet, 7, "", "", "", "5", "6", "", "", "Space");
            row(sheet, 8, "Sump pump", "20", "1", "7", "8", "1", "15", "");
            for (int column = 0; column < 3; column++)
                sheet.range(5, column, 7, column).merge();
        }
        Directory d = Readings.only(Readings.of(file, Source.Kind.WORKBOOK));
        assertThat(d.panel()).isEqualTo("LP-7");
        assertThat(d.header().location().or("")).isEqualTo("Boiler room");
        assertThat(d.header().fedFrom().or("")).isEqualTo("MDP-4");
        assertThat(d.header().mains().value()).contains(Mains.LUGS);
        assertThat(d.circuits().stream().map(ScheduleFilesTest::inWords))
                .containsExactly(
                        "[1, 3, 5] 40A Chiller pump",
                        "[2] 20A Boiler lights",
                        "[4] 20A Spare",
                        "[6] - Space",
                        "[7] 20A Sump pump",
                        "[8] 15A ");
        assertThat(d.circuits().get(5).use()).isEqualTo(Use.LOAD);
        assertThat(d.circuits().get(1).place()).isEqualTo(Place.row("LP-7.xlsx", "Sheet1", 6));
        assertThat(d.problems()).isEmpty();
    }

    @Test
    void a_list_of_several_panels_gives_a_directory_for_each() throws IOException {
        Path file = folder.resolve("all.csv");
        Files.writeString(
                file,
                "Building list\n\nPanel,Ckt,Description,Poles,Trip\nRP-1,\"1,3\",Oven,2,40\nRP-1,2,Lights,1,20\nRP-2,1,Pump,1,20\n"
                        + "RP-2,2,Fan,1,15\nRP-2,3,Space,,\n");
        List<Directory> read = Readings.of(file, Source.Kind.SCHEDULE_TABLE).directories();
        assertThat(read.stream().map(Directory::panel)).containsExactly("RP-1", "RP-2");
        assertThat(read.get(0).circuits().stream().map(ScheduleFilesTest::inWords))
                .containsExactly("[1, 3] 40A Oven", "[2] 20A Lights");
        assertThat(read.get(1).circuits().get(0).place()).isEqualTo(Place.row("all.csv", 6));
    }

    /** Styles are an optional part of a workbook (ECMA-376-1, 12.3.20). */
    @Test
    void a_workbook_without_styles_is_read() throws IOException {
        Path file = folder.resolve("RP-3.xlsx");
        try (OutputStream out = Files.newOutputStream(file)) {
            PlainWorkbook.write(
                    out,
                    "RP-3",
                    List.of("Circuit", "Description", "Poles", "Trip"),
                    List.of("1", "Lathe", "3", "40"),
                    List.of("2", "Lights", "1", "20"),
                    List.of("4", "Band saw", "1", "20"));
        }
        ScheduleReading reading = Readings.of(file, Source.Kind.WORKBOOK);
        assertThat(reading.problems()).isEmpty();
        assertThat(Readings.only(reading).circuits().stream().map(ScheduleFilesTest::inWords))
                .containsExactly("[1, 3, 5] 40A Lathe", "[2] 20A Lights", "[4] 20A Band saw");
        assertThat(Readings.only(reading).circuits().stream().map(c -> c.place().rowNumber()))
                .as("rows that do not tell their numbers are counted from 1")
                .containsExactly(2, 3, 4);
    }

    @Test
    void a_directory_of_which_most_ratings_were_not_read_says_so_once() throws IOException {
        Path file = folder.resolve("RP-8.csv");
        Files.writeString(file, "Circuit,Description,Poles,Trpi\n1,Lathe,1,\n2,Lights,1,\n3,Band saw,1,\n4,Fan,1,\n");
        ScheduleReading reading = Readings.of(file, Source.Kind.SCHEDULE_TABLE);
        assertThat(Stream.concat(
                                reading.problems().stream(),
                                reading.directories().stream().flatMap(d -> d.problems().stream()))
                        .map(Problem::message)
                        .filter(m -> m.contains("rating")))
                .containsExactly("Most circuits were read without a rating.");
    }

    @Test
    void a_name_that_stands_alone_over_the_labels_names_the_panel() throws IOException {
        String labels = "LOCATION:,Boiler room,FED FROM:,MDP-4\n",
                rows = "Circuit,Description,Poles,Trip\n1,Lathe,1,20\n2,Lights,1,20\n3,Fan,1,20\n";
        assertThat(table("L2A\n" + labels + rows).header().designation().or("")).isEqualTo("L2A");
        assertThat(table("2HA - Electrical panel\n" + labels + rows)
                        .header()
                        .designation()
                        .or(""))
                .isEqualTo("2HA");
        assertThat(table("Sub-distribution board KP9\n" + labels + rows)
                        .header()
                        .designation()
                        .or(""))
                .isEqualTo("KP9");
        // two that look like names, and a rating, name nothing
        assertThat(table("L2A,L2B\n" + labels + rows).header().designation().isBlank())
                .isTrue();
        assertThat(table("225A\n" + labels + rows).header().designation().isBlank())
                .isTrue();
    }

    @Test
    void a_column_of_kinds_of_device_is_no_description() throws IOException {
        Directory d = table("DB KP9\nCircuit,Consumer,Protective device,In (A),Poles\n"
                + "1,Water heater,RCBO type C,32,1\n2,Copier,RCBO type C,6,1\n3,Kiln,RCBO type C,16,1\n");
        assertThat(d.circuits().stream().map(ScheduleFilesTest::inWords))
                .containsExactly("[1] 32A Water heater", "[2] 6A Copier", "[3] 16A Kiln");
    }

    /** Common practice on boards with ways: one device's line takes all phases of its way, and empty ways are marked. */
    @Test
    void where_spaces_are_written_out_a_blank_phase_belongs_to_the_device_above_it() throws IOException {
        String head =
                "BOARD DB-4\nWay,Circuit description,Type,Rating (A)\n1L1,Kiln,C,63\n1L2,,,\n1L3,,,\n2L1,Lights,C,10\n2L2,Fan,C,10\n";
        assertThat(table(head + "2L3,Space,,\n").circuits().stream().map(ScheduleFilesTest::inWords))
                .containsExactly("[1, 2, 3] 63A Kiln", "[4] 10A Lights", "[5] 10A Fan", "[6] - Space");
    }

    @Test
    void a_side_that_begins_with_a_mark_carries_on_a_device_that_is_not_there() throws IOException {
        Directory d =
                table("PANEL L8A\nCircuit,Description,Trip\n8,-,-\n9,Lathe,20\n10,Fan,20\n11,Lights,20\n12,Saw,20\n");
        assertThat(d.isDoubtful()).isTrue();
        assertThat(d.problems().stream().map(Problem::message))
                .contains("Position 8 could not be read in full: a mark carries on a device that begins elsewhere.");
    }

    private Directory table(String text) throws IOException {
        Path file = folder.resolve("sheet.csv");
        Files.writeString(file, text);
        return Readings.only(Readings.of(file, Source.Kind.SCHEDULE_TABLE));
    }

    @Test
    void a_supply_in_running_text_ends_with_its_sentence() throws IOException {
        assertThat(fedFrom("Fed from HDP-1. 480Y/277V, 3PH, 4W, 400A bus.")).isEqualTo("HDP-1");
        assertThat(fedFrom("Fed from MDP. 208Y/120V, 3PH, 4W.")).isEqualTo("MDP");
        assertThat(fedFrom("FED FROM MDP CKT. 12, 225A BUS")).isEqualTo("MDP CKT. 12");
        assertThat(fedFrom("225A bus, fed from HDP-1.")).isEqualTo("HDP-1");
    }

    private String fedFrom(String running) throws IOException {
        Path file = folder.resolve("RP-9.csv");
        Files.writeString(
                file,
                "PANEL RP-9\n\"" + running
                        + "\"\nCircuit,Description,Poles,Trip\n1,Lathe,1,20\n2,Lights,1,20\n3,Fan,1,20\n");
        return Readings.only(Readings.of(file, Source.Kind.SCHEDULE_TABLE))
                .header()
                .fedFrom()
                .or("");
    }

    @Test
    void a_page_that_is_a_picture_is_reported_with_its_number() throws IOException {
        Path file = folder.resolve("scan.pdf");
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage();
            document.addPage(page);
            BufferedImage grey = new BufferedImage(60, 80, BufferedImage.TYPE_BYTE_GRAY);
            try (PDPageContentStream out = new PDPageContentStream(document, page)) {
                out.drawImage(LosslessFactory.createFromImage(document, grey), 0, 0, 612, 792);
            }
            document.save(file.toFile());
        }
        ScheduleReading read = Readings.of(file, Source.Kind.PDF);
        assertThat(read.directories()).isEmpty();
        assertThat(read.problems().stream().map(Problem::inWords))
                .containsExactly(
                        "scan.pdf, page 1: The page has no readable text: it is a picture. Read this page by hand, or get it with"
                                + " its text (exported, not scanned).");
    }

    @Test
    void a_page_of_notes_is_no_schedule() throws IOException {
        Path file = text(
                "NOTES",
                "1. Test every circuit.",
                "2. Label every panel.",
                "3. Lock spare devices off.",
                "4. See E-2.");
        ScheduleReading read = Readings.of(file, Source.Kind.PDF);
        assertThat(read.directories()).isEmpty();
        assertThat(read.problems().stream().map(Problem::message))
                .containsExactly("No panel schedule was recognised on this page.");
    }

    @Test
    void a_locked_or_broken_file_says_so_and_what_to_do() throws IOException {
        Path locked = folder.resolve("locked.pdf");
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage());
            document.protect(new StandardProtectionPolicy("owner", "user", new AccessPermission()));
            document.save(locked.toFile());
        }
        assertThat(Readings.of(locked, Source.Kind.PDF).problems().get(0).inWords())
                .isEqualTo("locked.pdf: The PDF is locked with a password. Save a copy without a password.");
        Path broken = Files.writeString(folder.resolve("broken.pdf"), "%PDF-1.7\nnothing");
        assertThat(Readings.of(broken, Source.Kind.PDF).problems()).isNotEmpty();
        assertThat(Readings.of(broken, Source.Kind.PDF).directories()).isEmpty();
    }

    @Test
    void pages_past_a_limit_are_reported_and_not_passed_over() throws IOException {
        Path file = folder.resolve("long.pdf");
        try (PDDocument document = new PDDocument()) {
            for (int i = 0; i < 12; i++) document.addPage(new PDPage());
            document.save(file.toFile());
        }
        Limits few = Limits.usual().with(Limit.PAGES, 10);
        Limits noTime = Limits.usual().with(Limit.PAGES, 100).with(Limit.FILE_SECONDS, 0);
        assertThat(new ScheduleReader(Settings.none(), few)
                        .read(source(file, Source.Kind.PDF)).problems().stream().map(Problem::message))
                .contains("Only the first 10 of 12 pages were read.");
        assertThat(new ScheduleReader(Settings.none(), noTime)
                        .read(source(file, Source.Kind.PDF)).problems().stream().map(Problem::inWords))
                .singleElement()
                .asString()
                .contains("long.pdf: Reading the file took longer than 0 s", "--allow file-seconds=NUMBER");
    }

    @Test
    void a_device_whose_poles_stand_over_another_entry_is_read_as_drawn_and_reported() throws IOException {
        Path file = folder.resolve("clash.csv");
        Files.writeString(
                file,
                "Panel,Ckt,Description,Poles,Trip\nRP-1,1,Oven,2,40\nRP-1,2,Lights,1,20\nRP-1,3,Pump,1,20\nRP-1,4,Spare,1,20\n");
        Directory d = Readings.only(Readings.of(file, Source.Kind.SCHEDULE_TABLE));
        assertThat(d.circuits().stream().map(ScheduleFilesTest::inWords))
                .containsExactly("[1, 3] 40A Oven", "[2] 20A Lights", "[3] 20A Pump", "[4] 20A Spare");
        assertThat(d.unread()).contains(1);
        assertThat(d.problems().stream().map(Problem::message))
                .anyMatch(m -> m.contains("2 poles, and position 3 has an entry of its own"));
    }

    @Test
    void load_columns_in_the_middle_are_shared_out_to_both_sides() throws IOException {
        Path file = folder.resolve("middle.csv");
        Files.writeString(
                file,
                "PANEL: P1\nCKT,DESCRIPTION,TRIP,POLES,A,,B,,C,,POLES,TRIP,DESCRIPTION,CKT\n"
                        + "1,Lights,20,1,510,640,,,,,1,20,Recept,2\n3,Pump,30,3,,,810,720,,,1,20,Fan,4\n"
                        + "5,,,,,,,,810,430,1,20,Heater,6\n7,,,,810,310,,,,,1,15,Door,8\n");
        Directory d = Readings.only(Readings.of(file, Source.Kind.SCHEDULE_TABLE));
        assertThat(d.circuits().stream()
                        .map(c -> c.positions() + " " + c.totalVA().or(0.0)))
                .containsExactly("[1] 510.0", "[2] 640.0", "[3, 5, 7] 2430.0", "[4] 720.0", "[6] 430.0", "[8] 310.0");
    }

    @Test
    void a_board_with_ways_and_phases_is_counted_across_its_ways() throws IOException {
        Path file = folder.resolve("board.csv");
        Files.writeString(
                file,
                "Distribution board,DB-2\nWay,Type,Rating (A),Description\n1L1,B,16,Sockets\n1L2,C,10,Lights\n1L3,B,32,Cooker\n"
                        + "2L1/L2/L3,D,40,Lift\n3L1,,,Spare\n");
        Directory d = Readings.only(Readings.of(file, Source.Kind.SCHEDULE_TABLE));
        assertThat(d.circuits().stream().map(c -> c.label() + " " + inWords(c)))
                .containsExactly(
                        "1L1 [1] 16A Sockets",
                        "1L2 [2] 10A Lights",
                        "1L3 [3] 32A Cooker",
                        "2L1/L2/L3 [4, 5, 6] 40A Lift",
                        "3L1 [7] - Spare");
    }

    private Path text(String... lines) throws IOException {
        Path file = folder.resolve("text.pdf");
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage();
            document.addPage(page);
            try (PDPageContentStream out = new PDPageContentStream(document, page)) {
                for (int i = 0; i < lines.length; i++) {
                    out.beginText();
                    out.setFont(new PDType1Font(FontName.HELVETICA), 9);
                    out.newLineAtOffset(72, 700 - 14 * i);
                    out.showText(lines[i]);
                    out.endText();
                }
            }
            document.save(file.toFile());
        }
        return file;
    }

    private static void row(Worksheet sheet, int row, String... cells) {
        for (int c = 0; c < cells.length; c++) if (!cells[c].isEmpty()) sheet.value(row, c, cells[c]);
    }

    private static String inWords(Circuit c) {
        return c.positions() + " " + c.ratingA().value().map(a -> a + "A").orElse("-") + " "
                + c.description().or("");
    }

    private static Source source(Path file, Source.Kind kind) throws IOException {
        return new Source(file.getFileName().toString(), file, kind, Files.size(file), "");
    }
}
