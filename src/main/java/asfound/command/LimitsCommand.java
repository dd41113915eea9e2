package asfound.command;

import asfound.report.terminal.LimitsText;
import java.io.PrintWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code asfound limits}: what {@code --allow} of the other commands sets. */
@Command(
        name = "limits",
        description = "Lists the limits of what files may ask for, and what becomes of more.",
        mixinStandardHelpOptions = true)
final class LimitsCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        PrintWriter out = spec.commandLine().getOut();
        LimitsText.of(Streams.charset()).forEach(out::println);
    }
}
