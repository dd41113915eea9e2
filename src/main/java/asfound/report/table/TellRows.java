package asfound.report.table;

import asfound.audit.Audit;
import asfound.audit.Reliance;
import asfound.audit.ToBeTold;
import asfound.finding.Finding;
import java.util.List;

/** For each finding, the lockout records, door cards and drawings that its correction touches, with a column for the tick. */
final class TellRows {

    static final List<String> COLUMNS = List.of(
            "finding id",
            "severity",
            "what",
            "lockout records of",
            "and any that name",
            "door cards of",
            "drawings",
            "told");

    private TellRows() {}

    static List<List<String>> of(Audit audit) {
        Reliance reliance = Reliance.of(audit);
        return audit.findings().stream().map(f -> row(f, reliance.of(f))).toList();
    }

    private static List<String> row(Finding f, ToBeTold told) {
        return List.of(
                f.id(),
                f.severity().word(),
                f.message(),
                told.leavesLockout() ? "none: no isolation point changes" : String.join(", ", told.equipment()),
                String.join(", ", told.devices()),
                String.join(", ", told.cards()),
                String.join(", ", told.drawings()),
                "");
    }
}
