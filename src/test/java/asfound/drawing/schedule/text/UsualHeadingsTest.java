package asfound.drawing.schedule.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Headings as offices abbreviate them, with what stands in their columns; common practice. */
class UsualHeadingsTest {

    @ParameterizedTest
    @CsvSource({
        "DESCRIPTION, Desc. | DESC | Ckt Desc | Load Desc. | Outlets | Function | Purpose | Circuit Use | Equipment Fed | Load / Location | Type of Load | Circuit identification | Feeds To | Outgoing Circuit | End use | DESIG.",
        "RATING, A.T. | AMP. TRIP | Ckt Bkr Amps | O.C.P. | OCPD RATING | PROTECTION (AMPS) | FUSE (A) | In (A) | AMPERAGE | TRIP SETTING | C.B. SIZE",
        "POLES, PL | POLE(S) | # POLES | NO. OF POLES | SP/TP",
        "POSITION, CKT. | CRCT | CT. | Circuit Nos. | Bkr # | CB # | SPACE # | Posn. | Slot # | SW. NO. | Fuse No. | MCB Way | Outgoing No.",
        "DEVICE, BKR (A/P) | AMP-POLE | TRIP/POLE | BREAKER SIZE/POLES | O.C. DEVICE | Protection device",
        "LOAD, V.A. | CONN KVA | CONNECTED VA | Load (kW) | WATTAGE | CKT VA | VA PER PHASE"
    })
    void the_heading_speaks_for_what_the_trade_writes_below_it(Role role, String headings) {
        List<String> otherwise = Arrays.stream(headings.split(" \\| "))
                .filter(h -> Headings.weight(h, role) < 0.7
                        || Headings.weigh(h).values().stream().anyMatch(w -> w > Headings.weight(h, role)))
                .toList();
        assertThat(otherwise).isEmpty();
    }
}
