package asfound.report.pdf;

import asfound.audit.Audit;
import asfound.model.Observation;
import asfound.recordset.Source;
import java.time.LocalDate;
import java.util.List;
import java.util.TreeSet;

/** Which data a sheet was made from. It holds no printing date: the same data give the same sheet. */
final class Provenance {

    static final String MISSING =
            Typeface.MISSING + " stands for a character that this sheet's fonts cannot show; the report has it.";

    private Provenance() {}

    /** {@code Data: 12 drawings, 48 survey rows of 2026-03-04 to 2026-03-09 by R. Okafor.} */
    static String of(Audit audit) {
        long drawings = audit.inputs().stream()
                .map(i -> i.source().kind())
                .filter(k -> k != Source.Kind.SURVEY && k != Source.Kind.SETTINGS && k != Source.Kind.UNKNOWN)
                .count();
        return "Data: " + drawings + (drawings == 1 ? " drawing" : " drawings") + "; " + survey(audit.survey());
    }

    /** {@code 48 survey rows of 2026-03-04 to 2026-03-09 by R. Okafor.} */
    static String survey(List<Observation> rows) {
        if (rows.isEmpty()) return "no survey.";
        TreeSet<LocalDate> dates = new TreeSet<>();
        TreeSet<String> people = new TreeSet<>();
        for (Observation o : rows) {
            o.date().value().ifPresent(dates::add);
            if (!o.by().isBlank()) people.add(o.by());
        }
        String when = dates.isEmpty()
                ? " without dates"
                : " of " + dates.first() + (dates.size() > 1 ? " to " + dates.last() : "");
        String who = people.isEmpty()
                ? ""
                : people.size() > 4 ? " by " + people.size() + " people" : " by " + String.join(", ", people);
        return rows.size() + (rows.size() == 1 ? " survey row" : " survey rows") + when + who + ".";
    }
}
