package asfound.command;

import asfound.audit.Audit;
import asfound.audit.Audits;
import asfound.recordset.NothingToDoException;
import asfound.recordset.RecordSets;
import asfound.report.folder.FileNames;
import asfound.report.pdf.DoorCard;
import asfound.report.pdf.Paper;
import asfound.report.terminal.Progress;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.NoSuchElementException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code asfound card}: the corrected directory for a panel's door. */
@Command(
        name = "card",
        description = {
            "Writes a corrected circuit directory for a panel's door, as a PDF.",
            "It tells what was traced, only drawn or in doubt, where the supply originates,",
            "date and source; on the back the evidence."
        },
        mixinStandardHelpOptions = true,
        footerHeading = "%nExample:%n",
        footer = "  asfound card fixtures/kestrel-wharf LP-2A --paper a4 --out LP-2A-card.pdf")
final class Card implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private LimitsOption limits;

    @Parameters(
            index = "0",
            paramLabel = "<record set>",
            description = "the folder with drawings/, one-line/ and survey/")
    private Path folder;

    @Parameters(index = "1", paramLabel = "<panel>", description = "the panel, as the drawings write it")
    private String panel;

    @Option(names = "--paper", paramLabel = "letter|a4", description = "the paper (default: letter)")
    private Paper paper = Paper.LETTER;

    @Option(names = "--out", paramLabel = "FILE", description = "where the card goes (default: card-<panel>.pdf here)")
    private Path out;

    @Override
    public Integer call() throws Exception {
        Audit audit;
        try (Progress progress = Progress.on(spec.commandLine().getErr())) {
            audit = Audits.of(RecordSets.open(folder, limits.limits()), limits.limits(), progress::at);
        }
        ByteArrayOutputStream card = new ByteArrayOutputStream();
        try {
            DoorCard.write(audit, panel, paper, card);
        } catch (NoSuchElementException e) {
            throw new NothingToDoException(e.getMessage());
        }
        Path file = out != null ? out : Path.of(FileNames.of("card-" + panel.strip()) + ".pdf");
        write(file, card.toByteArray());
        spec.commandLine().getOut().println(file);
        return 0;
    }

    /** The record set is only read: a card is never written into it. */
    private void write(Path file, byte[] card) throws IOException, NothingToDoException {
        if (file.toAbsolutePath().normalize().startsWith(folder.toAbsolutePath().normalize()))
            throw new NothingToDoException("The card would be written into the record set (" + file
                    + "), which is only read. Name a file outside it with --out.");
        NewFile.write(file, stream -> stream.write(card));
    }
}
