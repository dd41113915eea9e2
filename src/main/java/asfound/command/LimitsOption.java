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
            description = {
                "raise or lower what the input may ask for; may be repeated. Usual limits:",
                "file-mb=256, pages=2000, page-seconds=20, page-objects=600000, file-seconds=300, expanded-mb=512,",
                "parts=5000, rows=2000000, columns=512, field-chars=32000, field-lines=100, joined-cells=50000,",
                "line-mb=4, settings-mb=4, files=100000, folders=40, report-mb=512"
            })
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
