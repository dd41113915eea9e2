package asfound.command;

import asfound.recordset.NothingToDoException;
import asfound.report.folder.CannotWriteException;
import java.io.PrintWriter;
import java.util.List;
import java.util.logging.LogManager;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/**
 * The program: finds the command that was asked for and turns its end into an exit status. 0: done. 1: done, and
 * {@code --fail-on} was met. 2: nothing could be done, with one line that says why and what to do.
 */
@Command(
        name = "asfound",
        description = {
            "Finds where electrical drawings and the building as found disagree,",
            "and which drawings may not be used for isolation."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        synopsisSubcommandLabel = "COMMAND",
        footerHeading = "%nExamples:%n",
        footer = {
            "  asfound audit fixtures/kestrel-wharf",
            "  asfound read drawings/LP-2A.pdf --format json",
            "  asfound isolate fixtures/kestrel-wharf LP-2A",
            "",
            "'agrees' means that paper and survey agree, never that equipment is dead:",
            "test for absence of voltage with a proven tester. Qualified persons only;",
            "local codes and licensed practice decide."
        })
public final class Main implements Runnable {

    /** Nothing could be done. */
    static final int NOTHING_DONE = 2;

    @Spec
    private CommandSpec spec;

    private Main() {}

    public static void main(String[] args) {
        LogManager.getLogManager()
                .reset(); // libraries say nothing on our streams; what matters to the user is a problem
        System.setProperty("java.awt.headless", "true");
        System.exit(run(Streams.out(), Streams.err(), args));
    }

    /** Runs one command and gives its exit status; writes results to {@code out} and everything else to {@code err}. */
    public static int run(PrintWriter out, PrintWriter err, String... args) {
        CommandLine line = new CommandLine(new Main());
        for (Object command : commands()) line.addSubcommand(command);
        line.setOut(out).setErr(err).setCaseInsensitiveEnumValuesAllowed(true);
        line.setParameterExceptionHandler(Main::misused);
        line.setExecutionExceptionHandler(Main::failed);
        int status = boundedly(line, args, err);
        out.flush();
        err.flush();
        return status;
    }

    private static int boundedly(CommandLine line, String[] args, PrintWriter err) {
        try {
            return line.execute(args);
        } catch (OutOfMemoryError e) {
            err.println("The record set needs more memory than Java has here ("
                    + (Runtime.getRuntime().maxMemory() >> 20)
                    + " MB). Earlier reports are untouched. Give Java more: java -Xmx4g -jar asfound.jar ...");
            return NOTHING_DONE;
        }
    }

    /** Every command, in the order of the job; then what they keep to. */
    private static List<Object> commands() {
        return List.of(
                new AuditCommand(),
                new ReadCommand(),
                new Isolate(),
                new PlanCommand(),
                new Card(),
                new Since(),
                new LimitsCommand());
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    private static int misused(ParameterException e, String[] args) {
        CommandLine line = e.getCommandLine();
        line.getErr()
                .println(oneLine(e.getMessage()) + " See 'asfound "
                        + (line.getParent() == null ? "" : line.getCommandName() + " ") + "--help'.");
        return NOTHING_DONE;
    }

    private static int failed(Exception e, CommandLine line, CommandLine.ParseResult parsed) {
        if (e instanceof NothingToDoException || e instanceof CannotWriteException) {
            line.getErr().println(oneLine(e.getMessage()));
        } else {
            line.getErr()
                    .println("asfound stopped on a fault of its own: " + oneLine(String.valueOf(e))
                            + " Earlier reports are untouched; please report it with the command and this trace:");
            e.printStackTrace(line.getErr());
        }
        return NOTHING_DONE;
    }

    private static String oneLine(String message) {
        return message.strip().replaceAll("\\s*\\R\\s*", " ").replaceAll("\\p{Cntrl}", "?");
    }

    /** The version written into the jar's manifest by the build. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = Main.class.getPackage().getImplementationVersion();
            return new String[] {"asfound " + (version == null ? "(built from source)" : version)};
        }
    }
}
