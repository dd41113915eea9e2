package asfound.report.table;

import asfound.audit.Audit;
import asfound.trust.Trace;
import java.util.List;

/** What to trace next, for a spreadsheet, most useful first. */
public final class RetraceRows {

    private static final List<String> COLUMNS = List.of(
            "rank",
            "location",
            "panel",
            "circuit",
            "drawn as",
            "method",
            "why",
            "settles verdict of",
            "settles findings");

    private RetraceRows() {}

    public static Rows of(Audit audit) {
        return new Rows(COLUMNS, audit.plan().stream().map(RetraceRows::row).toList());
    }

    private static List<String> row(Trace t) {
        return List.of(
                Integer.toString(t.rank()),
                t.location().orElse(""),
                t.panel(),
                t.circuit(),
                t.expect(),
                t.method().word(),
                t.why(),
                String.join("; ", t.settles()),
                String.join("; ", t.findings()));
    }
}
