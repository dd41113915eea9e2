package asfound.report.pdf;

import asfound.audit.Audit;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.report.folder.Stage;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;

/** The marked drawings of a report. */
public final class RedlineFiles {

    private RedlineFiles() {}

    /**
     * Writes one for each PDF of the record set.
     *
     * @return a problem for each whose own pages could not be copied; its summary is written all the same
     */
    public static List<Problem> write(Audit audit, Stage stage) throws IOException {
        List<Problem> problems = new ArrayList<>();
        for (Redline redline : Redlines.of(audit)) {
            try (OutputStream out = stage.create(redline.name())) {
                RedlineWriter.write(redline, out)
                        .ifPresent(why -> problems.add(new Problem(Place.file(redline.drawing()), why, "")));
            }
        }
        return problems;
    }
}
