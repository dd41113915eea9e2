package asfound.report.folder;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The folder that a report is written to, whole or not at all. How, and what a kill leaves: see the package's comment. */
public final class OutputFolder {

    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final Path folder;
    private final Swap swap;
    private final Disk disk;
    private final Duration patience;
    /** What putting a killed run right had to keep. */
    private List<Path> keptBefore = List.of();

    /** Writes every file of a report. */
    @FunctionalInterface
    public interface Contents {
        void writeTo(Stage stage) throws IOException;
    }

    /**
     * What came of it.
     *
     * @param folder where the report is
     * @param kept earlier reports that had been changed by hand, where they are now
     */
    public record Written(Path folder, List<Path> kept) {
        public Written {
            kept = List.copyOf(kept);
        }
    }

    private OutputFolder(Path folder, Disk disk, Duration patience) {
        this.folder = folder;
        this.swap = new Swap(folder, disk);
        this.disk = disk;
        this.patience = patience;
    }

    /**
     * The folder, once it is sure that a report may be written there: to be asked before the work is done, not after.
     * Nothing is created; what a killed run left half done is put right.
     *
     * @param inputs the record set, which the report must not replace
     */
    public static OutputFolder at(Path folder, Path inputs) throws CannotWriteException {
        return at(folder, inputs, new Disk.Real(), PATIENCE);
    }

    static OutputFolder at(Path folder, Path inputs, Disk disk, Duration patience) throws CannotWriteException {
        try {
            Path real = FolderCheck.realPathOf(folder);
            if (real.getFileName() == null) throw FolderCheck.refusal(folder, "is a whole disk");
            if (FolderCheck.realPathOf(inputs).startsWith(real))
                throw FolderCheck.refusal(folder, "holds the record set itself");
            OutputFolder output = new OutputFolder(real, disk, patience);
            if (Files.exists(output.swap.work())) output.keptBefore = output.locked(output.swap::settle);
            FolderCheck.mayBeWritten(real);
            return output;
        } catch (IOException e) {
            throw CannotWriteException.of(folder, e);
        }
    }

    /** Puts back what a run killed between two renames left, before the report in {@code folder} is read. */
    public static void recover(Path folder) throws IOException {
        Path real = FolderCheck.realPathOf(folder);
        if (real.getFileName() == null) return;
        OutputFolder output = new OutputFolder(real, new Disk.Real(), PATIENCE);
        if (output.swap.isHalfDone()) output.locked(output.swap::settle);
    }

    public Path path() {
        return folder;
    }

    /** Writes a report in place of the earlier one. Where anything goes wrong, what was there before is there still. */
    public Written write(Contents contents) throws CannotWriteException {
        try {
            return locked(() -> writeAlone(contents));
        } catch (IOException e) {
            throw CannotWriteException.of(folder, e);
        } catch (UncheckedIOException e) {
            throw CannotWriteException.of(folder, e.getCause());
        }
    }

    private Written writeAlone(Contents contents) throws IOException {
        List<Path> kept = new ArrayList<>(keptBefore);
        kept.addAll(swap.settle());
        FolderCheck.mayBeWritten(folder);
        try {
            Stage stage = new Stage(swap.stage(), disk);
            contents.writeTo(stage);
            stage.finish();
            swap.publish();
        } finally {
            swap.deleteStage();
        }
        kept.addAll(swap.clearUp());
        return new Written(folder, kept);
    }

    private interface Step<T> {
        T run() throws IOException;
    }

    private <T> T locked(Step<T> step) throws IOException {
        Optional<FolderLock> lock = FolderLock.take(swap.work(), patience, disk);
        if (lock.isEmpty())
            throw new CannotWriteException("No report was written: another run of asfound is writing to " + folder
                    + ". Wait until it has ended, or give --out another folder.");
        try {
            return step.run();
        } finally {
            lock.get().close();
        }
    }
}
