package asfound.report.folder;

import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** A report while it is being written, out of every reader's sight. */
public final class Stage {

    private final Path root;
    private final Disk disk;
    private final SortedMap<String, String> hashes = new TreeMap<>();
    private final Set<Path> folders = new TreeSet<>();
    private final Set<String> taken = new TreeSet<>();
    private final Set<String> unfinished = new TreeSet<>();

    Stage(Path root, Disk disk) throws IOException {
        this.root = root;
        this.disk = disk;
        disk.createFolder(root);
        folders.add(root);
    }

    /**
     * A new file of the report, to be closed by the caller.
     *
     * @param name its name in the report, folders parted by {@code /}: {@code redlines/E-101.pdf}
     * @throws IllegalArgumentException where the name is none for a file in the report, or is taken (upper and lower case
     *     are one name on some systems, so they are here)
     */
    public OutputStream create(String name) throws IOException {
        FileNames.check(name);
        if (name.equals(Manifest.NAME) || !taken.add(name.toLowerCase(Locale.ROOT)))
            throw new IllegalArgumentException("a file of the report is already named '" + name + "'");
        return file(name);
    }

    private OutputStream file(String name) throws IOException {
        Path path = root.resolve(name);
        if (folders.add(path.getParent())) disk.createFolder(path.getParent());
        unfinished.add(name);
        return new StagedFile(name, path, disk.createFile(path), Manifest.sha256());
    }

    /** Writes the manifest and forces everything to disk; the report is whole after that. */
    void finish() throws IOException {
        if (!unfinished.isEmpty()) throw new IOException("not wholly written: " + String.join(", ", unfinished));
        try (OutputStream out = file(Manifest.NAME)) {
            out.write(Manifest.of(hashes).inText().getBytes(StandardCharsets.UTF_8));
        }
        for (Path folder : folders) disk.force(folder);
    }

    /** Counts as finished only when every byte was written, the file closed and forced to disk. */
    private final class StagedFile extends FilterOutputStream {

        private final String name;
        private final Path path;
        private final MessageDigest digest;
        private boolean closed;

        StagedFile(String name, Path path, OutputStream file, MessageDigest digest) {
            super(new DigestOutputStream(new BufferedOutputStream(file, 1 << 16), digest));
            this.name = name;
            this.path = path;
            this.digest = digest;
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            out.write(bytes, from, length);
        }

        @Override
        public void close() throws IOException {
            if (closed) return;
            closed = true;
            super.close();
            disk.force(path);
            hashes.put(name, HexFormat.of().formatHex(digest.digest()));
            unfinished.remove(name);
        }
    }
}
