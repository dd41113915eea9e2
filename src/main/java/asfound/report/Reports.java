package asfound.report;

import asfound.audit.Audit;
import asfound.audit.Stages;
import asfound.report.folder.Stage;
import asfound.report.page.PageWriter;
import asfound.report.pdf.Redline;
import asfound.report.pdf.RedlineWriter;
import asfound.report.pdf.Redlines;
import asfound.report.table.CorrectionRows;
import asfound.report.table.CorrectionsWorkbook;
import asfound.report.table.CsvFile;
import asfound.report.table.IsolationRows;
import asfound.report.table.RetraceRows;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The files of a report, each written by the one class that knows it. */
public final class Reports {

    private Reports() {}

    /** Writes every file of the report; it is whole when this returns. */
    public static void write(Audit audit, Stage stage, Stages progress) throws IOException {
        progress.at("writing the data", 0, 0);
        file(stage, "audit.json", out -> AuditJson.write(audit, out));
        file(stage, "corrections.csv", out -> CsvFile.write(CorrectionRows.of(audit), out));
        file(stage, "corrections.xlsx", out -> CorrectionsWorkbook.write(audit, out));
        file(stage, "isolation.csv", out -> CsvFile.write(IsolationRows.of(audit), IsolationRows.CAUTION, out));
        file(stage, "retrace.csv", out -> CsvFile.write(RetraceRows.of(audit), out));
        List<Redline> redlines = Redlines.of(audit);
        int done = 0;
        for (Redline redline : redlines) {
            progress.at("marking " + redline.drawing(), done++, redlines.size());
            file(stage, redline.name(), out -> RedlineWriter.write(redline, out));
        }
        progress.at("writing the report page", 0, 0);
        file(stage, "index.html", out -> {
            Writer page = new OutputStreamWriter(out, StandardCharsets.UTF_8);
            PageWriter.write(audit, page);
            page.flush();
        });
    }

    /** Writes one file and leaves the stream open. */
    @FunctionalInterface
    private interface Part {
        void writeTo(OutputStream out) throws IOException;
    }

    private static void file(Stage stage, String name, Part part) throws IOException {
        try (OutputStream out = stage.create(name)) {
            part.writeTo(out);
        }
    }
}
