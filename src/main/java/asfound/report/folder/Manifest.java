package asfound.report.folder;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The list of a report's files with their hashes, in the usual form of checksum lists, so that {@code sha256sum -c} tells
 * anyone whether a report is as it was written. It also marks a folder as a report of ours.
 *
 * @param hashes SHA-256 in lower-case hexadecimal by file name, parted by {@code /}
 */
record Manifest(SortedMap<String, String> hashes) {

    static final String NAME = "asfound.sha256";

    private static final String TITLE = "# asfound report; to check it: sha256sum -c " + NAME;

    String inText() {
        StringBuilder text = new StringBuilder(TITLE).append('\n');
        hashes.forEach(
                (file, hash) -> text.append(hash).append("  ").append(file).append('\n'));
        return text.toString();
    }

    /** The folder is a report of ours, changed since or not. */
    static boolean marks(Path folder) throws IOException {
        Path list = folder.resolve(NAME);
        if (!Files.isRegularFile(list)) return false;
        try (InputStream in = Files.newInputStream(list)) {
            return new String(in.readNBytes(TITLE.length()), StandardCharsets.UTF_8).equals(TITLE);
        }
    }

    /** Nothing in the folder was changed, added or taken out since we wrote it. */
    static boolean standsAsWritten(Path folder) throws IOException {
        if (!marks(folder)) return false;
        SortedMap<String, String> now = new TreeMap<>();
        boolean[] onlyFiles = {true};
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                String name = folder.relativize(file).toString().replace('\\', '/');
                if (!attributes.isRegularFile()) onlyFiles[0] = false;
                else if (!name.equals(NAME) && !isLitter(file)) now.put(name, hashOf(file));
                return FileVisitResult.CONTINUE;
            }
        });
        String written = Files.readString(folder.resolve(NAME), StandardCharsets.UTF_8);
        return onlyFiles[0] && written.equals(new Manifest(now).inText());
    }

    /** What file browsers and office programs leave behind by themselves. */
    private static boolean isLitter(Path file) {
        String name = file.getFileName().toString();
        return name.equals(".DS_Store")
                || name.equalsIgnoreCase("Thumbs.db")
                || name.equalsIgnoreCase("desktop.ini")
                || name.startsWith(".~lock.");
    }

    private static String hashOf(Path file) throws IOException {
        MessageDigest digest = sha256();
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
            in.transferTo(java.io.OutputStream.nullOutputStream());
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** In which order the manifest lists files does not depend on how the map was made. */
    static Manifest of(Map<String, String> hashes) {
        return new Manifest(new TreeMap<>(hashes));
    }
}
