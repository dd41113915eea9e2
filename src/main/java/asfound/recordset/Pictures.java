package asfound.recordset;

import asfound.model.Place;
import asfound.model.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A survey's photos come by the hundred: they are told once for each folder, with their count. */
final class Pictures {

    private final Map<String, List<String>> byFolder = new TreeMap<>();

    /** Takes a file note of if it is a picture. */
    boolean take(Source source) throws IOException {
        try (InputStream in = Files.newInputStream(source.path())) {
            if (!OtherFormats.isPicture(in.readNBytes(16))) return false;
        }
        int slash = source.file().lastIndexOf('/');
        String folder = slash < 0 ? "" : source.file().substring(0, slash);
        byFolder.computeIfAbsent(folder, f -> new ArrayList<>()).add(source.file());
        return true;
    }

    List<Problem> problems() {
        List<Problem> problems = new ArrayList<>();
        byFolder.forEach((folder, files) -> problems.add(new Problem(
                Place.file(files.get(0)),
                files.size() == 1
                        ? "The file is a picture, which is not read."
                        : "The folder " + (folder.isEmpty() ? "itself" : folder) + " holds " + files.size()
                                + " pictures, which are not read; this is the first.",
                "A photo of the survey needs no reading. A drawing must be a PDF with text, .xlsx or CSV.")));
        return problems;
    }
}
