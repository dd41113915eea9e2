package asfound.report.folder;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Names of files in a report: inside its folder, and the same on every system. */
public final class FileNames {

    private static final int LONGEST_BYTES = 200;
    private static final Pattern UNFIT = Pattern.compile("[\\p{C}\\p{Zl}\\p{Zp}\\\\/:*?\"<>|]");
    private static final Set<String> DEVICES = Set.of(
            "CON", "PRN", "AUX", "NUL", "COM1", "COM2", "COM3", "COM4", "COM5", "COM6", "COM7", "COM8", "COM9", "LPT1",
            "LPT2", "LPT3", "LPT4", "LPT5", "LPT6", "LPT7", "LPT8", "LPT9");

    private FileNames() {}

    /**
     * A file name that says {@code text} as well as a file name can: letters, digits and most signs as they are, the rest
     * as underscores. It is one name, never a path. Two texts can give one name.
     */
    public static String of(String text) {
        String start = text.length() <= LONGEST_BYTES ? text : text.substring(0, LONGEST_BYTES);
        String name = UNFIT.matcher(Normalizer.normalize(start, Normalizer.Form.NFC))
                .replaceAll("_")
                .strip();
        while (name.getBytes(StandardCharsets.UTF_8).length > LONGEST_BYTES)
            name = name.substring(0, name.offsetByCodePoints(name.length(), -1)).strip();
        name = name.replaceAll("^\\.+|[. ]+$", "_");
        if (name.isEmpty()) return "_";
        return isDevice(name) ? "_" + name : name;
    }

    /** Throws where {@code path}, segments parted by {@code /}, could name anything but a new file inside the report. */
    static void check(String path) {
        for (String segment : path.split("/", -1)) {
            boolean fit = !segment.isBlank()
                    && !segment.startsWith(".")
                    && !segment.endsWith(".")
                    && segment.strip().equals(segment)
                    && !UNFIT.matcher(segment).find()
                    && !isDevice(segment)
                    && segment.getBytes(StandardCharsets.UTF_8).length <= 255;
            if (!fit) throw new IllegalArgumentException("not a name for a file of a report: '" + path + "'");
        }
    }

    private static boolean isDevice(String segment) {
        return DEVICES.contains(segment.replaceFirst("\\..*$", "").toUpperCase(Locale.ROOT));
    }
}
