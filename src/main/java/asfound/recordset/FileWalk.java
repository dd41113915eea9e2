package asfound.recordset;

import asfound.model.Place;
import asfound.model.Problem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.EnumSet;
import java.util.List;
import java.util.TreeMap;

/** Lists the files of a record set, without following links and without leaving the folder. */
final class FileWalk {

    private FileWalk() {}

    /** The files by their name relative to the folder, with forward slashes; hidden files and earlier reports left out. */
    static TreeMap<String, Path> files(Path root, Limits limits, List<Problem> problems) throws NothingToDoException {
        TreeMap<String, Path> files = new TreeMap<>();
        try {
            Files.walkFileTree(
                    root,
                    EnumSet.noneOf(java.nio.file.FileVisitOption.class),
                    (int) limits.amount(Limit.FOLDERS),
                    new Visitor(root, files, limits, problems));
        } catch (IOException e) {
            throw new NothingToDoException(
                    "The folder " + printable(root.toString()) + " cannot be listed: " + Reasons.unreadable(e));
        }
        return files;
    }

    /** A name that can be shown: control characters and marks that turn the direction of writing become question marks. */
    static String printable(String name) {
        return name.replaceAll("[\\p{Cntrl}\\u200E\\u200F\\u061C\\u202A-\\u202E\\u2066-\\u2069]", "?");
    }

    private static String relative(Path root, Path path) {
        return printable(
                root.relativize(path).toString().replace(path.getFileSystem().getSeparator(), "/"));
    }

    /** Named like a drawing or a table, and not one of the helpers that office programs and systems leave behind. */
    private static boolean seemsMeant(Path file) {
        String name = file.getFileName().toString();
        return name.matches("(?is)\\.(?![_~]).*\\.(pdf|xls[xm]|csv|tsv|ya?ml)");
    }

    private static boolean isHidden(Path path) {
        String name = path.getFileName().toString();
        return name.startsWith(".")
                || name.startsWith("~$")
                || name.equals("__MACOSX")
                || name.equalsIgnoreCase("Thumbs.db")
                || name.equalsIgnoreCase("desktop.ini");
    }

    private static final class Visitor extends SimpleFileVisitor<Path> {

        private final Path root;
        private final TreeMap<String, Path> files;
        private final Limits limits;
        private final List<Problem> problems;

        Visitor(Path root, TreeMap<String, Path> files, Limits limits, List<Problem> problems) {
            this.root = root;
            this.files = files;
            this.limits = limits;
            this.problems = problems;
        }

        @Override
        public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
            if (!folder.equals(root) && isHidden(folder)) return FileVisitResult.SKIP_SUBTREE;
            if (isReport(folder)) {
                say(
                        folder,
                        "The folder holds an earlier report of an audit and was not read.",
                        "Keep reports outside of the record set.");
                return FileVisitResult.SKIP_SUBTREE;
            }
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            if (isHidden(file)) {
                if (seemsMeant(file))
                    say(
                            file,
                            "The file is hidden, its name begins with a dot, and was not read.",
                            "Give it another name if it belongs to the records.");
                return FileVisitResult.CONTINUE;
            }
            if (files.size() >= limits.amount(Limit.FILES)) {
                say(
                        file,
                        "The folder holds more than " + limits.amount(Limit.FILES)
                                + " files; from this one on they were not read.",
                        "Give a smaller folder, or " + Limit.FILES.raise() + ".");
                return FileVisitResult.TERMINATE;
            }
            if (attributes.isSymbolicLink()) link(file);
            else if (attributes.isDirectory())
                say(
                        file,
                        "The folders are nested deeper than " + limits.amount(Limit.FOLDERS)
                                + " levels; this one was not read.",
                        "Move it up, or " + Limit.FOLDERS.raise() + ".");
            else if (!attributes.isRegularFile())
                say(
                        file,
                        "This is a device or pipe, not a file, and was not opened.",
                        "Remove it from the record set.");
            else if (files.putIfAbsent(relative(root, file), file) != null)
                say(
                        file,
                        "Two files have this name once unprintable characters are left out; only one was read.",
                        "Rename one.");
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult visitFileFailed(Path file, IOException e) {
            say(file, Reasons.unreadable(e), Reasons.CHECK_FILE);
            return FileVisitResult.CONTINUE;
        }

        @Override
        public FileVisitResult postVisitDirectory(Path folder, IOException e) {
            if (e != null) say(folder, Reasons.unreadable(e), Reasons.CHECK_FILE);
            return FileVisitResult.CONTINUE;
        }

        /** A link to something in the record set is read at its own place; one that leads out of it is refused. */
        private void link(Path link) {
            try {
                if (link.toRealPath().startsWith(root)) return;
            } catch (IOException broken) {
                say(link, "This symbolic link leads nowhere.", "Put the file itself into the record set.");
                return;
            }
            say(
                    link,
                    "This symbolic link leads out of the record set and was not followed.",
                    "Put the file itself into the record set.");
        }

        private void say(Path path, String message, String remedy) {
            problems.add(new Problem(Place.file(relative(root, path)), message, remedy));
        }

        /** A report of ours, by its list of hashes, or by its data where only they were copied. */
        private static boolean isReport(Path folder) {
            return begins(folder.resolve("asfound.sha256"), "# asfound report")
                    || begins(folder.resolve("audit.json"), "\"asfound-audit/");
        }

        private static boolean begins(Path file, String with) {
            if (!Files.isRegularFile(file)) return false;
            try (var in = Files.newInputStream(file)) {
                return new String(in.readNBytes(400), StandardCharsets.UTF_8).contains(with);
            } catch (IOException unreadable) {
                return false;
            }
        }
    }
}
