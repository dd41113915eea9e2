package asfound.drawing.schedule.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Of two ratings under a heading that names frame and trip, the trip is the device's. */
class FrameAndTripTest {

    @ParameterizedTest
    @CsvSource({
        "FRAME/TRIP (A), 160/125, 125",
        "Frame (A) / Trip (A), 250 / 200, 200",
        "AF/AT, 100/63, 63",
        "Trip/Frame, 80/100, 80",
        "In/Ir, 100A/80A, 80",
        "Frame/Set, 160/160/3, 160/3"
    })
    void the_heading_says_which_is_which(String heading, String entry, String trip) {
        assertThat(FrameAndTrip.trip(heading, entry)).isEqualTo(trip);
    }

    @ParameterizedTest
    @CsvSource({
        "FRAME/TRIP, 63/100",
        "Trip/Frame, 160/125",
        "Rating, 160/125",
        "Frame, 160/125",
        "FRAME/TRIP, 100AF/63AT"
    })
    void an_entry_that_the_heading_does_not_explain_stays_as_it_is(String heading, String entry) {
        assertThat(FrameAndTrip.trip(heading, entry)).isEqualTo(entry);
    }

    @Test
    void a_heading_of_one_rating_is_none_of_both() {
        assertThat(FrameAndTrip.isHeading("Breaker trip (A)")).isFalse();
    }
}
