package asfound.report.folder;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.util.Optional;

/**
 * One run at a time in one working folder. The lock is the operating system's: a killed run holds nothing.
 *
 * <p>Nothing is left behind, so the holder deletes the lock file when it is done. A run that was waiting on the deleted
 * file would then hold a lock that a third run, with a new file, does not see; so the holder also writes into the deleted
 * file, and whoever gets a file that is not empty begins again.
 */
final class FolderLock implements AutoCloseable {

    private static final byte[] DELETED = {1};
    private static final Duration PAUSE = Duration.ofMillis(50);

    private final Path work;
    private final FileChannel channel;

    private FolderLock(Path work, FileChannel channel) {
        this.work = work;
        this.channel = channel;
    }

    /** Waits for the lock as long as {@code patience}; empty where another run held it all the while. */
    static Optional<FolderLock> take(Path work, Duration patience, Disk disk) throws IOException {
        long end = System.nanoTime() + patience.toNanos();
        do {
            Optional<FolderLock> lock = tryToTake(work, end, disk);
            if (lock.isPresent()) return lock;
        } while (System.nanoTime() < end);
        return Optional.empty();
    }

    private static Optional<FolderLock> tryToTake(Path work, long end, Disk disk) throws IOException {
        Path file = work.resolve("lock");
        FileChannel channel;
        try {
            disk.createFolder(work);
        } catch (FileAlreadyExistsException e) {
            if (Files.isRegularFile(work)) throw e;
            return Optional.empty(); // it was there, and the run before us took it away while we looked: once more
        }
        try {
            channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        } catch (NoSuchFileException e) {
            return Optional.empty(); // and so here
        }
        Optional<Object> opened = keyOf(file);
        if (waitFor(channel, end) && channel.size() == 0 && opened.isPresent() && opened.equals(keyOf(file)))
            return Optional.of(new FolderLock(work, channel));
        channel.close();
        return Optional.empty();
    }

    private static boolean waitFor(FileChannel channel, long end) throws IOException {
        while (true) {
            try {
                FileLock lock = channel.tryLock();
                if (lock != null) return true;
            } catch (OverlappingFileLockException e) {
                // held by another thread of this process: wait just the same
            }
            if (System.nanoTime() >= end) return false;
            pause();
        }
    }

    private static void pause() throws IOException {
        try {
            Thread.sleep(PAUSE.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted while another run was writing", e);
        }
    }

    /** What tells one file from the next of the same name (the creation time where the system gives no key); empty if gone. */
    private static Optional<Object> keyOf(Path file) throws IOException {
        try {
            BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
            return Optional.of(attributes.fileKey() != null ? attributes.fileKey() : attributes.creationTime());
        } catch (NoSuchFileException e) {
            return Optional.empty();
        }
    }

    /** Gives the lock back, and takes the working folder away where nothing is left in it. */
    @Override
    public void close() throws IOException {
        try (channel) {
            Files.deleteIfExists(work.resolve("lock"));
            channel.write(ByteBuffer.wrap(DELETED));
            Files.deleteIfExists(work);
        } catch (IOException e) {
            // Something is left in the working folder: the next run clears it.
        }
    }
}
