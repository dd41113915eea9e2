package asfound.report.page;

import asfound.audit.Audit;
import asfound.finding.Accepted;
import asfound.finding.Finding;
import asfound.finding.Guide;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The kinds of finding that occur in an audit. */
public final class Kinds {

    private Kinds() {}

    /** Each kind that occurs, accepted ones included, with its guide; in alphabetical order. */
    public static Map<String, Guide> of(Audit audit) {
        Map<String, Guide> kinds = new TreeMap<>();
        Stream.concat(audit.findings().stream(), audit.accepted().stream().map(Accepted::finding))
                .map(Finding::guide)
                .forEach(g -> kinds.put(g.kind(), g));
        return kinds;
    }
}
