package asfound.report.folder;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;

/** A disk on which the n-th change goes wrong: once with an error, or for good, as if the process had been killed. */
final class FaultyDisk implements Disk {

    /** Thrown at the step of the kill and at every later one: nothing that runs after it can change the disk. */
    static final class Killed extends Error {
        private static final long serialVersionUID = 1;
    }

    private final Disk disk = new Disk.Real();
    private final int fatalStep;
    private final boolean kill;
    private int steps;

    FaultyDisk(int fatalStep, boolean kill) {
        this.fatalStep = fatalStep;
        this.kill = kill;
    }

    boolean wasReached() {
        return steps > fatalStep;
    }

    private void step() throws IOException {
        int now = steps++;
        if (kill && now >= fatalStep) throw new Killed();
        if (now == fatalStep) throw new IOException("No space left on device");
    }

    @Override
    public void createFolder(Path folder) throws IOException {
        step();
        disk.createFolder(folder);
    }

    @Override
    public OutputStream createFile(Path file) throws IOException {
        step();
        return new FilterOutputStream(disk.createFile(file)) {
            @Override
            public void write(byte[] bytes, int from, int length) throws IOException {
                out.write(bytes, from, length / 2);
                step();
                out.write(bytes, from + length / 2, length - length / 2);
            }
        };
    }

    @Override
    public void force(Path path) throws IOException {
        step();
        disk.force(path);
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        step();
        disk.rename(from, to);
    }

    @Override
    public void delete(Path path) throws IOException {
        step();
        disk.delete(path);
    }
}
