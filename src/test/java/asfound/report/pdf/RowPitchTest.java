package asfound.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import asfound.model.Place;
import asfound.sample.kestrel.KestrelWharf;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The demo's sheets are drawn with rows 15.5 points (E-601) and 16.5 points (LP-1A) high, whatever the poles of an entry. */
class RowPitchTest {

    @Test
    void rows_of_single_and_of_multi_pole_entries_are_one_height() throws Exception {
        var directories = KestrelWharf.audit().drawings().directories();
        for (int page = 1; page <= 2; page++)
            assertThat(RowPitch.on(new Place.OnPage("drawings/E-601.pdf", page, Optional.empty()), directories)
                            .orElseThrow())
                    .isEqualTo(15.5, within(0.1));
        assertThat(RowPitch.on(new Place.OnPage("drawings/LP-1A.pdf", 1, Optional.empty()), directories)
                        .orElseThrow())
                .isEqualTo(16.5, within(0.1));
    }

    @Test
    void a_page_without_a_directory_tells_no_height() throws Exception {
        var directories = KestrelWharf.audit().drawings().directories();
        assertThat(RowPitch.on(new Place.OnPage("drawings/RP-1-scan.pdf", 1, Optional.empty()), directories))
                .isEmpty();
    }
}
