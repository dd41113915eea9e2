package asfound.readme;

import asfound.recordset.Limit;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.stream.Collectors;

/** README's table of limits, made from the limits themselves. {@link #main} writes it into README.md. */
public final class ReadmeLimits {

    private static final String BEGIN = "<!-- limits: begin (made from the limits by ReadmeLimits) -->\n";
    private static final String END = "<!-- limits: end -->\n";

    private ReadmeLimits() {}

    static String text() {
        return "| limit | usual | of what | beyond it |\n|---|---|---|---|\n"
                + Arrays.stream(Limit.values())
                        .map(l -> "| `" + l.inWords() + "` | " + l.usual() + " | " + l.bounds() + " | " + l.beyond()
                                + " |\n")
                        .collect(Collectors.joining());
    }

    /** The text between the marks. */
    static String within(String readme) {
        return readme.substring(readme.indexOf(BEGIN) + BEGIN.length(), readme.indexOf(END));
    }

    public static void main(String[] args) throws IOException {
        String readme = Files.readString(ReadmeGuide.README);
        Files.writeString(
                ReadmeGuide.README,
                readme.substring(0, readme.indexOf(BEGIN) + BEGIN.length())
                        + text()
                        + readme.substring(readme.indexOf(END)));
    }
}
