package asfound.report.pdf;

import asfound.audit.Audit;
import asfound.report.Cautions;
import asfound.report.table.CsvFile;
import asfound.report.table.Rows;
import asfound.trust.Trace;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The next traces as a sheet for the field: printed, with fields to fill by hand, or as a survey table that {@code audit}
 * reads when it is filled. What the drawing says is there to look for; it stands in a column that no reader takes for
 * what was found.
 */
public final class SurveySheet {

    private static final List<String> COLUMNS = List.of(
            "panel",
            "circuit",
            "relation",
            "found",
            "kind",
            "method",
            "poles",
            "rating_a",
            "voltage",
            "phase",
            "wire",
            "location",
            "by",
            "date",
            "note",
            "photo",
            "plan rank",
            "drawn as, to look for",
            "settled by",
            "why");

    private SurveySheet() {}

    /** The plan's first {@code limit} traces, grouped by location in the order in which the plan first comes there. */
    private static Map<String, List<Trace>> byLocation(Audit audit, int limit) {
        Map<String, List<Trace>> groups = new LinkedHashMap<>();
        audit.plan().stream()
                .limit(Math.max(0, limit))
                .forEach(t -> groups.computeIfAbsent(t.location().orElse(""), l -> new ArrayList<>())
                        .add(t));
        return groups;
    }

    /** The survey table with panel, circuit and location filled and everything that is to be seen left blank. */
    public static void writeCsv(Audit audit, int limit, OutputStream out) throws IOException {
        List<List<String>> rows = byLocation(audit, limit).values().stream()
                .flatMap(List::stream)
                .map(SurveySheet::row)
                .toList();
        CsvFile.write(new Rows(COLUMNS, rows), Cautions.SHORT, out);
    }

    private static List<String> row(Trace trace) {
        List<String> row = new ArrayList<>(java.util.Collections.nCopies(COLUMNS.size(), ""));
        row.set(0, trace.panel());
        row.set(1, trace.circuit());
        row.set(11, trace.location().orElse(""));
        row.set(16, Integer.toString(trace.rank()));
        row.set(17, trace.expect());
        row.set(18, trace.method().word());
        row.set(19, trace.why());
        return row;
    }

    /** The printed sheet on Letter paper, lengthwise. */
    public static void writePdf(Audit audit, int limit, OutputStream out) throws IOException {
        writePdf(audit, limit, Paper.LETTER, out);
    }

    public static void writePdf(Audit audit, int limit, Paper paper, OutputStream out) throws IOException {
        try (SheetFile file = new SheetFile("Survey sheet: " + audit.recordSet().building())) {
            new SurveyPages(audit, file, paper).draw(byLocation(audit, limit), Math.max(0, limit));
            file.write(out);
        }
    }
}
