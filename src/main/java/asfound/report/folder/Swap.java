package asfound.report.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The renames that put a new report in the place of the earlier one, and the repair of what a kill left half done. */
final class Swap {

    private final Path folder;
    private final Path work;
    private final Path stage;
    private final Path earlier;
    private final Path discard;
    private final Disk disk;

    Swap(Path folder, Disk disk) {
        this.folder = folder;
        this.work = folder.resolveSibling("." + folder.getFileName() + ".asfound");
        this.stage = work.resolve("stage");
        this.earlier = work.resolve("earlier");
        this.discard = work.resolve("discard");
        this.disk = disk;
    }

    Path work() {
        return work;
    }

    Path stage() {
        return stage;
    }

    boolean isHalfDone() {
        return Files.exists(earlier);
    }

    /** Puts the staged report in place. Where this throws, what was there before is there still. */
    void publish() throws IOException {
        boolean replaces = Files.exists(folder);
        if (replaces) {
            copyPermissions(folder, stage);
            disk.rename(folder, earlier);
        }
        try {
            disk.rename(stage, folder);
        } catch (IOException e) {
            if (replaces) disk.rename(earlier, folder);
            throw e;
        }
    }

    /** After {@link #publish}: clears up. What cannot be cleared is left to the next run: the new report stands. */
    List<Path> clearUp() {
        try {
            disk.force(folder.getParent());
            return retireEarlier();
        } catch (IOException e) {
            return List.of();
        }
    }

    /** Puts right what a killed run left, and gives where it kept a report that had been changed by hand. */
    List<Path> settle() throws IOException {
        List<Path> kept = List.of();
        if (Files.exists(earlier)) {
            if (Files.isDirectory(folder) && FolderCheck.isEmpty(folder)) disk.delete(folder);
            if (Files.exists(folder)) kept = retireEarlier();
            else disk.rename(earlier, folder);
            disk.force(folder.getParent());
        }
        deleteTree(stage);
        deleteTree(discard);
        return kept;
    }

    /** A new report is in place: the earlier one goes, unless something of a person's is in it. */
    private List<Path> retireEarlier() throws IOException {
        if (!Files.exists(earlier)) return List.of();
        boolean replaced = Manifest.marks(folder);
        if (replaced && (FolderCheck.isEmpty(earlier) || Manifest.standsAsWritten(earlier))) {
            // Renamed first: a half-deleted report must never be taken for the last whole one.
            disk.rename(earlier, discard);
            deleteTree(discard);
            return List.of();
        }
        Path kept = freeNameBeside();
        disk.rename(earlier, kept);
        return List.of(kept);
    }

    private Path freeNameBeside() {
        for (int n = 1; ; n++) {
            Path name = folder.resolveSibling(folder.getFileName() + "-kept-" + n);
            if (!Files.exists(name, LinkOption.NOFOLLOW_LINKS)) return name;
        }
    }

    void deleteStage() {
        try {
            deleteTree(stage);
        } catch (IOException e) {
            // The next run clears it; the reason why this one failed is worth more to the user.
        }
    }

    private void deleteTree(Path tree) throws IOException {
        if (!Files.exists(tree, LinkOption.NOFOLLOW_LINKS)) return;
        try (Stream<Path> all = Files.walk(tree)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) disk.delete(path);
        }
    }

    private static void copyPermissions(Path from, Path to) throws IOException {
        PosixFileAttributeView source = Files.getFileAttributeView(from, PosixFileAttributeView.class);
        PosixFileAttributeView target = Files.getFileAttributeView(to, PosixFileAttributeView.class);
        if (source != null && target != null)
            target.setPermissions(source.readAttributes().permissions());
    }
}
