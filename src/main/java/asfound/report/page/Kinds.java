package asfound.report.page;

import asfound.finding.Finding;
import java.util.List;

/** The kinds of finding that a page shows. */
public final class Kinds {

    private Kinds() {}

    /** Each kind that occurs, in alphabetical order. */
    public static List<String> in(List<Finding> findings) {
        return findings.stream().map(Finding::kind).distinct().sorted().toList();
    }
}
