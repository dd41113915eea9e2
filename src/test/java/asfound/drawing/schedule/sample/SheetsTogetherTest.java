package asfound.drawing.schedule.sample;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is known of texts from the sheets before changes nothing in what a sheet says. */
class SheetsTogetherTest {

    private static final int SHEETS = 12;

    @TempDir
    private Path folder;

    @Test
    void a_sheet_in_a_book_says_what_it_says_by_itself() throws IOException {
        Path book = folder.resolve("book.pdf");
        SampleBook.draw(book, SHEETS, folder);
        List<String> apart = new ArrayList<>();
        for (int page = 0; page < SHEETS; page++) apart.addAll(said(folder.resolve("page-" + page + ".pdf")));
        assertThat(said(book)).isNotEmpty().containsExactlyElementsOf(apart);
    }

    private static List<String> said(Path file) throws IOException {
        List<String> out = new ArrayList<>();
        for (Directory d : RandomLayoutsTest.read(file).directories())
            d.circuits()
                    .forEach(c -> out.add(d.panel() + " " + c.positions() + " "
                            + c.ratingA().raw() + " " + c.description().raw() + " "
                            + c.loadVA().stream().map(l -> l.raw()).toList()));
        return out;
    }
}
