package asfound.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.sample.kestrel.KestrelWharf;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Which pages of the demo's drawings bear a stamp: a page printed alone must not look better than it is. */
class PageStampsTest {

    @Test
    void a_page_that_was_not_read_is_stamped_and_one_that_agrees_is_not() throws Exception {
        var stamps = new TreeMap<String, String>();
        for (Redline redline : Redlines.of(KestrelWharf.audit()))
            redline.pages()
                    .forEach((page, of) ->
                            stamps.put(redline.drawing() + " " + page, of.state() + " " + of.equipment()));
        assertThat(stamps)
                .containsOnlyKeys(
                        "drawings/E-601.pdf 1",
                        "drawings/E-601.pdf 2",
                        "drawings/E-602.pdf 1",
                        "drawings/EM-01.pdf 1",
                        "drawings/EM-01.pdf 2",
                        "drawings/HL-1.pdf 1",
                        "drawings/RP-1-scan.pdf 1")
                .containsEntry("drawings/RP-1-scan.pdf 1", "NOT_READ []")
                .containsEntry("drawings/HL-1.pdf 1", "UNPROVEN [HL-1]")
                .containsEntry("drawings/E-602.pdf 1", "FAILS [HP-1A, HP-1B]");
    }
}
