package asfound.readme;

import asfound.finding.Guide;
import asfound.finding.Rule;
import asfound.finding.Rules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;

/** README's guide to findings, made from what each rule says of itself. {@link #main} writes it into README.md. */
public final class ReadmeGuide {

    private static final String BEGIN = "<!-- guide: begin (made from the rules by ReadmeGuide) -->\n";
    private static final String END = "<!-- guide: end -->\n";
    static final Path README = Path.of("README.md");

    private ReadmeGuide() {}

    static String text() {
        return Rules.all().stream().map(Rule::guide).map(ReadmeGuide::text).collect(Collectors.joining("\n"));
    }

    private static String text(Guide guide) {
        return "**`" + guide.kind() + "`** " + guide.says() + "  \n"
                + "Why it matters: " + guide.matters() + "  \n"
                + "What to do: " + guide.todo() + "  \n"
                + (guide.restsOn().isEmpty() ? "" : "Rests on: " + String.join("; ", guide.restsOn()) + ".\n");
    }

    /** The text between the marks. */
    static String within(String readme) {
        return readme.substring(readme.indexOf(BEGIN) + BEGIN.length(), readme.indexOf(END));
    }

    public static void main(String[] args) throws IOException {
        String readme = Files.readString(README);
        Files.writeString(
                README,
                readme.substring(0, readme.indexOf(BEGIN) + BEGIN.length())
                        + text()
                        + readme.substring(readme.indexOf(END)));
    }
}
