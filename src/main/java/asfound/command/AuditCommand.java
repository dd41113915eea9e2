package asfound.command;

import asfound.audit.Audit;
import asfound.audit.Audits;
import asfound.finding.Accepted;
import asfound.finding.Severity;
import asfound.recordset.RecordSet;
import asfound.recordset.RecordSets;
import asfound.report.Reports;
import asfound.report.folder.OutputFolder;
import asfound.report.terminal.Progress;
import asfound.report.terminal.Summary;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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

    private static final int DONE = 0;
    private static final int MET = 1;

    @Spec
    private CommandSpec spec;

    @Mixin
    private LimitsOption limits;

    @Parameters(paramLabel = "<record set>", description = "the folder with drawings/, one-line/ and survey/")
    private Path folder;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "where the report goes (default: reports/<record set's name>)")
    private Path out;

    @Option(
            names = "--fail-on",
            paramLabel = "SEVERITY",
            description = "exit with 1 where a finding is at least this bad: ${COMPLETION-CANDIDATES}")
    private Severity failOn;

    @Override
    public Integer call() throws Exception {
        try (Progress progress = Progress.on(spec.commandLine().getErr())) {
            RecordSet set = RecordSets.open(folder, limits.limits());
            Path report = out != null ? out : Path.of("reports", set.name());
            OutputFolder output = OutputFolder.at(report, folder);
            Audit audit = Audits.of(set, limits.limits(), progress::at);
            List<String> notes = new ArrayList<>();
            OutputFolder.Written written =
                    output.write(stage -> notes.addAll(Reports.write(audit, limits.limits(), stage, progress::at)));
            written.kept()
                    .forEach(kept -> notes.add("An earlier report had been changed by hand; it is kept in " + kept));
            progress.close();
            PrintWriter screen = spec.commandLine().getOut();
            Summary.of(audit, report.toString(), notes, Streams.charset()).forEach(screen::println);
            return failOn != null && isMet(audit) ? MET : DONE;
        }
    }

    /** An accepted danger stays a danger; other accepted findings are quiet. */
    private boolean isMet(Audit audit) {
        return Stream.concat(
                        audit.findings().stream(),
                        audit.accepted().stream().map(Accepted::finding).filter(f -> f.severity() == Severity.DANGER))
                .anyMatch(f -> f.severity().compareTo(failOn) <= 0);
    }
}
