package asfound.recordset;

import asfound.model.Place;
import asfound.model.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** Opens a folder of records. */
public final class RecordSets {

    private RecordSets() {}

    /**
     * Lists a record set's files, tells what each is and reads the settings. Nothing is written.
     *
     * @throws NothingToDoException if the folder is missing, is none, may not be read, or holds no file
     */
    public static RecordSet open(Path folder, Limits limits) throws NothingToDoException {
        Path root = root(folder);
        List<Problem> problems = new ArrayList<>();
        TreeMap<String, Path> files = FileWalk.files(root, limits, problems);
        if (files.isEmpty() && problems.isEmpty())
            throw new NothingToDoException("The folder " + shown(folder)
                    + " is empty. Put the drawings (PDF, .xlsx or CSV) and the survey (CSV) into it.");
        Optional<String> settingsFile =
                files.keySet().stream().filter(RecordSets::isSettings).findFirst();
        Optional<String> settingsHash = settingsFile.flatMap(f -> hash(files.get(f)));
        Settings settings = settings(files, limits, problems);
        List<Source> sources = new ArrayList<>();
        Pictures pictures = new Pictures();
        files.forEach((file, path) -> sources.add(source(file, path, settings, limits, problems, pictures)));
        problems.addAll(pictures.problems());
        sources.stream()
                .filter(s -> settingsHash.isPresent() && s.file().equals(settingsFile.get()))
                .filter(s -> !s.sha256().equals(settingsHash.get()))
                .forEach(s -> problems.add(unsettled(s)));
        return new RecordSet(
                name(root), root, settings, sources, problems.stream().sorted().toList());
    }

    /**
     * One file on its own, for a look at what is read from it.
     *
     * @param problems takes what could not be told of it
     * @throws NothingToDoException if there is no such file
     */
    public static Source single(Path path, Limits limits, List<Problem> problems) throws NothingToDoException {
        if (!Files.isRegularFile(path))
            throw new NothingToDoException("There is no file " + shown(path) + ". Give a drawing: PDF, .xlsx or CSV.");
        Pictures pictures = new Pictures();
        String file = FileWalk.printable(path.getFileName().toString());
        Source source = source(file, path, Settings.none(), limits, problems, pictures);
        problems.addAll(pictures.problems());
        return source;
    }

    /**
     * Whether a file is no longer what it was when it was listed: what was read of it meanwhile may be of neither state.
     *
     * @return empty where it is as it was, or was never read
     */
    public static Optional<Problem> changed(Source source) {
        if (source.sha256().isEmpty()) return Optional.empty();
        try {
            if (Hashes.sha256(source.path()).equals(source.sha256())) return Optional.empty();
            if (source.kind() == Source.Kind.SETTINGS) return Optional.of(unsettled(source));
            return Optional.of(new Problem(
                    Place.file(source.file()),
                    "The file changed while it was read; nothing of it is used.",
                    "Wait until whatever writes it has ended, and run again."));
        } catch (IOException e) {
            return Optional.of(new Problem(
                    Place.file(source.file()), Reasons.unreadable(e) + " Nothing of it is used.", Reasons.CHECK_FILE));
        }
    }

    private static Problem unsettled(Source settings) {
        return new Problem(
                Place.file(settings.file()),
                "The file changed during the run: it was used as it stood when it was read, before or after the change.",
                "Run again.");
    }

    private static Optional<String> hash(Path path) {
        try {
            return Optional.of(Hashes.sha256(path));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static Path root(Path folder) throws NothingToDoException {
        if (!Files.exists(folder))
            throw new NothingToDoException("There is no folder " + shown(folder)
                    + ". Give the folder that holds the drawings and the survey.");
        if (!Files.isDirectory(folder))
            throw new NothingToDoException(shown(folder)
                    + " is a file, not a folder. Give the folder that holds the drawings and the survey.");
        if (!Files.isReadable(folder))
            throw new NothingToDoException(
                    "The folder " + shown(folder) + " may not be read. Ask for permission to read it.");
        try {
            return folder.toRealPath();
        } catch (IOException e) {
            throw new NothingToDoException(
                    "The folder " + shown(folder) + " cannot be opened: " + Reasons.unreadable(e));
        }
    }

    private static String shown(Path path) {
        return FileWalk.printable(path.toString());
    }

    private static String name(Path root) {
        return root.getFileName() == null
                ? "record set"
                : FileWalk.printable(root.getFileName().toString());
    }

    private static Settings settings(TreeMap<String, Path> files, Limits limits, List<Problem> problems) {
        List<String> named =
                files.keySet().stream().filter(RecordSets::isSettings).toList();
        if (named.isEmpty()) return Settings.none();
        if (named.size() > 1)
            problems.add(new Problem(
                    Place.file(named.get(1)),
                    "There are two settings files; this one is not used.",
                    "Keep " + named.get(0) + " alone."));
        SettingsReader.Reading reading = SettingsReader.read(files.get(named.get(0)), named.get(0), limits);
        problems.addAll(reading.problems());
        return reading.settings();
    }

    private static boolean isSettings(String file) {
        return file.equalsIgnoreCase("record.yaml") || file.equalsIgnoreCase("record.yml");
    }

    /** A list of accepted findings stands beside the settings. */
    private static boolean isKept(String file) {
        return isSettings(file) || file.equalsIgnoreCase("accepted.yaml") || file.equalsIgnoreCase("accepted.yml");
    }

    private static Source source(
            String file, Path path, Settings settings, Limits limits, List<Problem> problems, Pictures pictures) {
        try {
            long bytes = Files.size(path);
            if (bytes > limits.fileBytes()) {
                problems.add(new Problem(
                        Place.file(file),
                        "The file has " + bytes + " bytes, more than the limit of " + limits.fileBytes()
                                + "; it was not read.",
                        "Split it, or " + Limit.FILE_MB.raise() + "."));
                return new Source(file, path, Source.Kind.UNKNOWN, bytes, "");
            }
            String sha256 = Hashes.sha256(path);
            Source source = new Source(file, path, Source.Kind.UNKNOWN, bytes, sha256);
            if (isKept(file)) return new Source(file, path, Source.Kind.SETTINGS, bytes, sha256);
            FileKinds.Told told = FileKinds.tell(source, settings, limits);
            if (told.kind() == Source.Kind.UNKNOWN && !pictures.take(source))
                problems.add(new Problem(Place.file(file), told.message(), told.remedy()));
            return new Source(file, path, told.kind(), bytes, sha256);
        } catch (IOException e) {
            problems.add(new Problem(Place.file(file), Reasons.unreadable(e), Reasons.CHECK_FILE));
            return new Source(file, path, Source.Kind.UNKNOWN, 0, "");
        }
    }
}
