package asfound.command;

import asfound.audit.Audit;
import asfound.audit.Audits;
import asfound.isolation.Verdict;
import asfound.model.EquipmentKind;
import asfound.network.Equipment;
import asfound.network.Network;
import asfound.recordset.NothingToDoException;
import asfound.recordset.RecordSets;
import asfound.report.pdf.IsolationSheet;
import asfound.report.pdf.Paper;
import asfound.report.terminal.IsolationText;
import asfound.report.terminal.Progress;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code asfound isolate}: the points of one equipment, drawn and found, and whether the drawn ones can be believed. */
@Command(
        name = "isolate",
        description = {
            "Shows one equipment's isolation points, drawn and found, and the verdict.",
            "With the evidence and the cautions. A work aid: no procedure and no permit."
        },
        mixinStandardHelpOptions = true,
        footerHeading = "%nExample:%n",
        footer = "  asfound isolate fixtures/kestrel-wharf LP-2A --pdf LP-2A.pdf --paper a4")
final class Isolate implements Callable<Integer> {

    private static final int LISTED = 12;

    @Spec
    private CommandSpec spec;

    @Mixin
    private LimitsOption limits;

    @Parameters(
            index = "0",
            paramLabel = "<record set>",
            description = "the folder with drawings/, one-line/ and survey/")
    private Path folder;

    @Parameters(
            index = "1",
            paramLabel = "<equipment>",
            description = "its name, as the drawings or the survey write it")
    private String name;

    @Option(names = "--pdf", paramLabel = "FILE", description = "also write the isolation sheet to print")
    private Path pdf;

    @Option(names = "--paper", paramLabel = "letter|a4", description = "the sheet's paper (default: letter)")
    private Paper paper = Paper.LETTER;

    @Override
    public Integer call() throws NothingToDoException, IOException {
        Audit audit = audit();
        Equipment equipment = find(audit.network());
        Verdict verdict = audit.verdicts().stream()
                .filter(v -> v.equipment().equals(equipment.name()))
                .findFirst()
                .orElseThrow(() -> new NothingToDoException(equipment.name()
                        + " is a source of supply, for which no isolation verdict is given."
                        + " Name the equipment that it feeds."));
        if (pdf != null) NewFile.write(pdf, out -> IsolationSheet.write(audit, equipment.name(), paper, out));
        IsolationText.of(audit, verdict, Streams.charset())
                .forEach(spec.commandLine().getOut()::println);
        return 0;
    }

    private Audit audit() throws NothingToDoException {
        try (Progress progress = Progress.on(spec.commandLine().getErr())) {
            return Audits.of(RecordSets.open(folder, limits.limits()), limits.limits(), progress::at);
        }
    }

    /** By its one name, else by any way in which it is written, in any case; never a guess between two. */
    private Equipment find(Network network) throws NothingToDoException {
        String typed = name.strip();
        Optional<Equipment> exact = only(network, e -> e.name().equals(typed));
        if (exact.isEmpty()) exact = only(network, e -> isWritten(e, typed));
        return exact.orElseThrow(() -> new NothingToDoException("No equipment of this record set goes by the name '"
                + typed + "'. Its equipment: " + listed(network) + "."));
    }

    private static Optional<Equipment> only(Network network, Predicate<Equipment> test) {
        List<Equipment> all = network.equipment().stream().filter(test).toList();
        return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
    }

    private static boolean isWritten(Equipment e, String typed) {
        return squeezed(e.name()).equals(squeezed(typed))
                || e.alsoWritten().stream().anyMatch(w -> squeezed(w).equals(squeezed(typed)));
    }

    private static String squeezed(String name) {
        return name.strip().replaceAll("\\s+", " ").toUpperCase(java.util.Locale.ROOT);
    }

    private static String listed(Network network) {
        List<String> all = network.equipment().stream()
                .filter(e -> e.kind() != EquipmentKind.UTILITY)
                .map(Equipment::name)
                .toList();
        String first = String.join(", ", all.subList(0, Math.min(LISTED, all.size())));
        return all.isEmpty() ? "none" : all.size() > LISTED ? first + " and " + (all.size() - LISTED) + " more" : first;
    }
}
