package asfound.command;

import asfound.audit.Audit;
import asfound.audit.Audits;
import asfound.recordset.NothingToDoException;
import asfound.recordset.RecordSets;
import asfound.report.pdf.SurveySheet;
import asfound.report.terminal.PlanText;
import asfound.report.terminal.Progress;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code asfound plan}: what to trace next. */
@Command(
        name = "plan",
        description = "Says what to trace next, most useful first.",
        mixinStandardHelpOptions = true,
        footerHeading = "%nExample:%n",
        footer = "  asfound plan fixtures/kestrel-wharf --limit 12 --csv monday.csv --pdf monday.pdf")
final class PlanCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private LimitsOption limits;

    @Parameters(paramLabel = "<record set>", description = "the folder with drawings/, one-line/ and survey/")
    private Path folder;

    @Option(
            names = "--limit",
            paramLabel = "N",
            defaultValue = "20",
            description = "how many traces to plan (default: ${DEFAULT-VALUE}); how many there are is said in any case")
    private int limit;

    @Option(
            names = "--csv",
            paramLabel = "FILE",
            description = "also write them as a survey table to fill in; put it into survey/ and audit again")
    private Path csv;

    @Option(names = "--pdf", paramLabel = "FILE", description = "also write them as a survey sheet to print")
    private Path pdf;

    @Override
    public Integer call() throws Exception {
        if (limit < 1) throw new NothingToDoException("--limit is " + limit + "; it must be 1 or more.");
        try (Progress progress = Progress.on(spec.commandLine().getErr())) {
            Audit audit = Audits.of(RecordSets.open(folder, limits.limits()), limits.limits(), progress::at);
            if (csv != null) NewFile.write(csv, out -> SurveySheet.writeCsv(audit, limit, out));
            if (pdf != null) NewFile.write(pdf, out -> SurveySheet.writePdf(audit, limit, out));
            progress.close();
            PrintWriter screen = spec.commandLine().getOut();
            PlanText.of(audit.recordSet().building(), audit.plan(), limit, Streams.charset())
                    .forEach(screen::println);
        }
        return 0;
    }
}
