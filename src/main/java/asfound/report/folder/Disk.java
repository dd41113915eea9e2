package asfound.report.folder;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** The few operations that change the disk: the seam at which a test can stop a run at every step. */
interface Disk {

    /** A new folder and those above it that are missing. */
    void createFolder(Path folder) throws IOException;

    /** A new file; fails where one is already there. */
    OutputStream createFile(Path file) throws IOException;

    /** Returns once the file's or folder's content is on the disk. */
    void force(Path path) throws IOException;

    /** Renames in one step; fails where {@code to} is there. */
    void rename(Path from, Path to) throws IOException;

    /** Deletes a file or an empty folder. */
    void delete(Path path) throws IOException;

    /** The disk itself. */
    final class Real implements Disk {

        @Override
        public void createFolder(Path folder) throws IOException {
            Files.createDirectories(folder);
        }

        @Override
        public OutputStream createFile(Path file) throws IOException {
            return Files.newOutputStream(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        }

        @Override
        public void force(Path path) throws IOException {
            boolean folder = Files.isDirectory(path);
            try (FileChannel channel =
                    FileChannel.open(path, folder ? StandardOpenOption.READ : StandardOpenOption.WRITE)) {
                channel.force(true);
            } catch (IOException e) {
                // Some systems cannot force a folder; its files are on the disk all the same.
                if (!folder) throw e;
            }
        }

        @Override
        public void rename(Path from, Path to) throws IOException {
            if (Files.exists(to)) throw new java.nio.file.FileAlreadyExistsException(to.toString());
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        }

        @Override
        public void delete(Path path) throws IOException {
            Files.deleteIfExists(path);
        }
    }
}
