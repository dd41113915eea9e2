package asfound.report;

import asfound.audit.Audit;
import asfound.audit.Stages;
import asfound.recordset.Limits;
import asfound.report.folder.Stage;
import asfound.report.page.PageWriter;
import asfound.report.pdf.Redline;
import asfound.report.pdf.RedlineWriter;
import asfound.report.pdf.Redlines;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The files of a report, each written by the one class that knows it. */
public final class Reports {

    private Reports() {}

    /**
     * Writes every file of the report.
     *
     * @param limits how much copying one drawing may ask for
     * @return what the reader should know of the files themselves: drawings whose pages could not be copied, and why
     */
    public static List<String> write(Audit audit, Limits limits, Stage stage, Stages progress) throws IOException {
        progress.at("writing the data", 0, 0);
        DataFiles.write(audit, stage);
        List<String> notes = new ArrayList<>();
        List<Redline> redlines = Redlines.of(audit);
        for (Redline redline : redlines) {
            progress.at("marking " + redline.drawing(), redlines.indexOf(redline), redlines.size());
            try (OutputStream out = stage.create(redline.name())) {
                RedlineWriter.write(redline, limits, out).ifPresent(why -> notes.add(redline.drawing() + ": " + why));
            }
        }
        progress.at("writing the report page", 0, 0);
        try (Writer page = new OutputStreamWriter(stage.create("index.html"), StandardCharsets.UTF_8)) {
            PageWriter.write(audit, page);
        }
        return notes;
    }
}
