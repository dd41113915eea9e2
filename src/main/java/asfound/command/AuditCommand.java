package asfound.command;

import asfound.audit.Audit;
import asfound.audit.Audits;
import asfound.finding.Severity;
import asfound.recordset.Limits;
import asfound.recordset.RecordSets;
import asfound.report.Reports;
import asfound.report.folder.OutputFolder;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code asfound audit}: the main job. */
@Command(
        name = "audit",
        description = "Compares the drawings of a record set with its survey and writes the report.",
        mixinStandardHelpOptions = true,
        footerHeading = "%nExample:%n",
        footer = "  asfound audit fixtures/kestrel-wharf --out kestrel-report --fail-on danger")
final class AuditCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "<record set>", description = "the folder with drawings/, one-line/ and survey/")
    private Path folder;

    @Option(names = "--out", paramLabel = "DIR", description = "where the report goes (default: reports/<record set's name>)")
    private Path out;

    @Option(
            names = "--fail-on",
            paramLabel = "SEVERITY",
            description = "exit with 1 where a finding is at least this bad: ${COMPLETION-CANDIDATES}")
    private Severity failOn;

    @Override
    public Integer call() throws Exception {
        Progress progress = Progress.onTerminal(spec.commandLine().getErr());
        var set = RecordSets.open(folder, Limits.usual());
        OutputFolder output = OutputFolder.at(out != null ? out : Path.of("reports", set.name()), folder);
        Audit audit = Audits.of(set, Limits.usual(), progress);
        output.write(stage -> Reports.write(audit, stage, progress));
        progress.done();
        spec.commandLine().getOut().print(Summary.of(audit, output.path()));
        return failOn != null && isMet(audit) ? 1 : 0;
    }

    /** Accepted findings count as well: accepting keeps a finding quiet, it does not make it untrue. */
    private boolean isMet(Audit audit) {
        return audit.findings().stream().anyMatch(f -> f.severity().compareTo(failOn) <= 0);
    }
}
