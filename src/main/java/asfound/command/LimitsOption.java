package asfound.command;

import asfound.recordset.Limits;
import java.util.Map;
import java.util.TreeMap;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** {@code --allow}: how much a file or record set may ask for, where the usual limits are too low for sound ones. */
final class LimitsOption {

    @Spec(Target.MIXEE)
    private CommandSpec command;

    @Option(
            names = "--allow",
            paramLabel = "NAME=NUMBER",
            description = "raise or lower a limit of what files may ask for, as 'asfound limits' lists them; may be"
                    + " repeated")
    private final Map<String, Integer> set = new TreeMap<>();

    /** The usual limits but for those that the user set. */
    Limits limits() {
        Limits limits = Limits.usual();
        try {
            for (Map.Entry<String, Integer> one : set.entrySet()) limits = limits.with(one.getKey(), one.getValue());
        } catch (IllegalArgumentException e) {
            throw new ParameterException(command.commandLine(), e.getMessage());
        }
        return limits;
    }
}
