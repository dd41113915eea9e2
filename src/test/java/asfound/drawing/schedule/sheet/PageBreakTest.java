package asfound.drawing.schedule.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory.Circuit;
import asfound.model.Directory.Use;
import asfound.model.Place;
import asfound.model.Stated;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A directory that goes on on the next page. */
class PageBreakTest {

    private static Circuit entry(int page, List<Integer> positions, int poles, String device, Integer amps, double va) {
        Place place = Place.page("LP-6.pdf", page);
        return new Circuit(
                positions,
                "",
                poles,
                amps == null ? Stated.blank(place) : Stated.of(amps, amps.toString(), place),
                device.isEmpty() ? Stated.blank(place) : Stated.text(device, place),
                device.isEmpty() && va == 0 ? Use.SPACE : Use.LOAD,
                va == 0 ? List.of() : List.of(Stated.of(va, Double.toString(va), place)),
                place);
    }

    private static List<String> inWords(PageBreak joined) {
        return joined.circuits().stream()
                .map(c -> c.positions() + " " + c.poles() + "P "
                        + c.ratingA().value().map(a -> a + "A ").orElse("")
                        + c.description().or("") + " " + Math.round(c.totalVA().or(0.0)) + " VA")
                .toList();
    }

    @Test
    void the_load_of_a_further_pole_on_the_next_page_belongs_to_the_device_that_began_before() {
        PageBreak joined = PageBreak.join(
                List.of(entry(1, List.of(19, 21), 2, "Walk-in cooler", 50, 1900)),
                List.of(entry(2, List.of(21), 1, "", null, 1900), entry(2, List.of(23), 1, "Site lights", 20, 900)));
        assertThat(inWords(joined))
                .containsExactly("[19, 21] 2P 50A Walk-in cooler 3800 VA", "[23] 1P 20A Site lights 900 VA");
        assertThat(joined.twice()).isEmpty();
    }

    @Test
    void a_device_short_of_a_pole_takes_the_blank_position_that_follows() {
        PageBreak joined = PageBreak.join(
                List.of(entry(1, List.of(5, 7), 3, "Exam lights", 50, 0)),
                List.of(entry(2, List.of(9), 1, "", null, 0)));
        assertThat(inWords(joined)).containsExactly("[5, 7, 9] 3P 50A Exam lights 0 VA");
    }

    @Test
    void an_entry_of_its_own_on_a_position_that_is_taken_is_told() {
        PageBreak joined = PageBreak.join(
                List.of(entry(1, List.of(19, 21), 2, "Walk-in cooler", 50, 0)),
                List.of(entry(2, List.of(21), 1, "Copier", 20, 0)));
        assertThat(joined.twice()).containsExactly(21);
        assertThat(joined.circuits()).hasSize(2);
    }

    @Test
    void a_blank_position_that_no_device_lacks_stays_a_space() {
        PageBreak joined = PageBreak.join(
                List.of(entry(1, List.of(19), 1, "Copier", 20, 0)), List.of(entry(2, List.of(21), 1, "", null, 0)));
        assertThat(inWords(joined)).containsExactly("[19] 1P 20A Copier 0 VA", "[21] 1P  0 VA");
    }
}
