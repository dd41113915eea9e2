package asfound.report;

import asfound.audit.Audit;
import asfound.report.folder.Stage;
import asfound.report.table.CorrectionRows;
import asfound.report.table.CorrectionsWorkbook;
import asfound.report.table.CsvFile;
import asfound.report.table.IsolationRows;
import asfound.report.table.RetraceRows;
import java.io.IOException;
import java.io.OutputStream;

/** The files of a report that are for programs and spreadsheets. */
public final class DataFiles {

    private DataFiles() {}

    /** Writes all of them. */
    public static void write(Audit audit, Stage stage) throws IOException {
        file(stage, "audit.json", out -> AuditJson.write(audit, out));
        file(stage, "corrections.csv", out -> CsvFile.write(CorrectionRows.of(audit), out));
        file(stage, "corrections.xlsx", out -> CorrectionsWorkbook.write(audit, out));
        file(stage, "isolation.csv", out -> CsvFile.write(IsolationRows.of(audit), IsolationRows.CAUTION, out));
        file(stage, "retrace.csv", out -> CsvFile.write(RetraceRows.of(audit), out));
    }

    private interface Writing {
        void to(OutputStream out) throws IOException;
    }

    private static void file(Stage stage, String name, Writing writing) throws IOException {
        try (OutputStream out = stage.create(name)) {
            writing.to(out);
        }
    }
}
