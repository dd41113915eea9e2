package asfound.command;

import asfound.recordset.NothingToDoException;
import asfound.report.since.AuditReader;
import asfound.report.since.Comparison;
import asfound.report.since.NotAnAuditException;
import asfound.report.since.SinceJson;
import asfound.report.since.SinceText;
import asfound.report.terminal.Shown;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code asfound since}: what was corrected, what is new, what remains, and who must be told. */
@Command(
        name = "since",
        description = {
            "Compares two audits: what was corrected, what is new, what remains.",
            "By drawing; with the verdicts that changed, and who relies on what changed."
        },
        mixinStandardHelpOptions = true,
        footerHeading = "%nExample:%n",
        footer = "  asfound since march/audit.json reports/kestrel-wharf/audit.json")
final class Since implements Callable<Integer> {

    /** How the comparison is written. */
    enum Format {
        TEXT,
        JSON
    }

    @Spec
    private CommandSpec spec;

    @Mixin
    private LimitsOption limits;

    @Parameters(index = "0", paramLabel = "<earlier audit.json>", description = "the audit before the corrections")
    private Path earlier;

    @Parameters(index = "1", paramLabel = "<later audit.json>", description = "the audit after them")
    private Path later;

    @Option(names = "--format", paramLabel = "text|json", description = "how it is written (default: text)")
    private Format format = Format.TEXT;

    @Override
    public Integer call() throws NothingToDoException, IOException {
        Comparison comparison;
        try {
            comparison =
                    Comparison.of(AuditReader.read(earlier, limits.limits()), AuditReader.read(later, limits.limits()));
        } catch (NotAnAuditException e) {
            throw new NothingToDoException(e.getMessage());
        }
        PrintWriter out = spec.commandLine().getOut();
        if (format == Format.JSON) {
            ByteArrayOutputStream json = new ByteArrayOutputStream();
            SinceJson.write(comparison, json);
            out.print(json.toString(StandardCharsets.UTF_8));
        } else {
            SinceText.of(comparison, Shown.ofStandardOutput()).forEach(out::println);
        }
        out.flush();
        return 0;
    }
}
