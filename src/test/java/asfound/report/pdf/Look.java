package asfound.report.pdf;

import asfound.audit.Audit;
import asfound.recordset.Limits;
import asfound.sample.WhinfellAnnex;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes every sheet of the sample building into a folder, to be looked at. */
public final class Look {

    private Look() {}

    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]);
        Files.createDirectories(folder);
        Audit audit = WhinfellAnnex.in(folder.resolve("set"));
        for (Redline redline : Redlines.of(audit)) {
            Path file = folder.resolve(redline.name());
            Files.createDirectories(file.getParent());
            try (OutputStream out = Files.newOutputStream(file)) {
                RedlineWriter.write(redline, Limits.usual(), out).ifPresent(System.out::println);
            }
        }
        for (String equipment : new String[] {"LP-2A", "LP-EM", "MSB"})
            try (OutputStream out = Files.newOutputStream(folder.resolve("isolate-" + equipment + ".pdf"))) {
                IsolationSheet.write(audit, equipment, out);
            }
        for (String panel : new String[] {"LP-2A", "LP-EM", "MSB"})
            try (OutputStream out = Files.newOutputStream(folder.resolve("card-" + panel + ".pdf"))) {
                DoorCard.write(audit, panel, panel.equals("LP-EM") ? Paper.A4 : Paper.LETTER, out);
            }
        try (OutputStream out = Files.newOutputStream(folder.resolve("survey.pdf"))) {
            SurveySheet.writePdf(audit, 100, out);
        }
        try (OutputStream out = Files.newOutputStream(folder.resolve("survey.csv"))) {
            SurveySheet.writeCsv(audit, 100, out);
        }
    }
}
