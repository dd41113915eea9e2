package asfound.drawing.schedule.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import asfound.model.Directory.Use;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UseTextTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "SPACE (NO BREAKER)",
                "Space - no breaker installed",
                "BLANK POLE",
                "Blank - no device",
                "BLANK POSITION",
                "POLE FILLER",
                "SPACE ONLY (NO BKR)",
                "SPACE, BREAKER NOT INSTALLED",
                "PROVISION - NO DEVICE",
                "PROVISION FOR 100A 3P BREAKER",
                "SPACE FOR FUTURE BREAKER",
                "POSITION BLANKED OFF",
                "BREAKER SPACE ONLY",
                "BUS SPACE",
                "1P SPACE",
                "1-POLE SPACE",
                "(1) SPACE",
                "SPACE (NO BUS)",
                "PFB"
            })
    void aSpaceIsOneWhateverIsSaidOfItAndWhateverStandsBesideIt(String text) {
        assertEquals(Use.SPACE, UseText.of(text, false), text);
        assertEquals(Use.SPACE, UseText.of(text, true), text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "SPARE (LOCKED OFF)",
                "SPARE - OFF",
                "OFF (SPARE)",
                "SPARE, BKR OFF",
                "SPARE BREAKER (NOT CONNECTED)",
                "BREAKER - NOT USED",
                "SPARE 20A/1P, LOCKED OPEN",
                "(E) SPARE",
                "EXISTING SPARE",
                "SPARE (N)",
                "NEW SPARE",
                "1P SPARE",
                "20A SPARE",
                "20A/1P SPARE",
                "SPARE #1",
                "SPARE W/ BREAKER",
                "SPARE WITH LOCK",
                "SPARE (GFCI)",
                "SPARE/ABANDONED",
                "SPARE - WIRES CAPPED",
                "SPARE - WIRE CAPPED IN J-BOX",
                "SPARE C/W EPD",
                "SPARE (FORMERLY COPIER)",
                "SPARE (OLD PUMP 3)",
                "SPARE - WAS RM 12 LTG"
            })
    void aSpareIsADeviceThatIsThere(String text) {
        assertEquals(Use.SPARE, UseText.of(text, false), text);
        assertEquals(Use.SPARE, UseText.of(text, true), text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "FUTURE",
                "Future use",
                "RESERVED FOR FUTURE",
                "FUTURE BREAKER",
                "NO BREAKER",
                "NOT INSTALLED",
                "NOT IN USE",
                "NO LOAD",
                "SPARE (NO BREAKER)",
                "SPARE - NO BREAKER INSTALLED",
                "SPARE POLE",
                "OPEN - NO BREAKER",
                "RESERVED",
                "AVAILABLE",
                "AVAIL.",
                "UNASSIGNED",
                "FREE",
                "VACANT",
                "EMPTY",
                "DISPONIBLE",
                "LIBRE",
                "BREAKER REMOVED",
                "REMOVED"
            })
    void ofWhatIsFreeTheRatingBesideItTellsWhetherThereIsADevice(String text) {
        assertEquals(Use.SPACE, UseText.of(text, false), text);
        assertEquals(Use.SPARE, UseText.of(text, true), text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "BLANK CHECK PRINTER",
                "SPARE PARTS ROOM",
                "SPACE HEATER",
                "SPARE CHILLER PUMP",
                "SPACE HTR (NO BREAKER LOCK)",
                "SPACE - NO BREAKER LOCK",
                "FUTURE EV CHARGER",
                "BLANK POLE LIGHT",
                "PROVISION FOR CHILLER",
                "OFF",
                "BREAKER OFF",
                "NOT INSTALLED LTG",
                "SPARE OUTLET",
                "VACANT UNIT",
                "NO BREAKER ROOM LTS",
                "OPEN OFFICE",
                "SPARE CONDUIT TO ROOF",
                "EXISTING SPARE PUMP",
                "NEW SPACE HEATER",
                "RESERVED PARKING LTS",
                "FREE WEIGHTS RECEPT",
                "RECEPT (FORMERLY COPIER)",
                "OLD PUMP 3",
                "DISCONNECTED",
                "ABANDONED",
                "UNKNOWN",
                "AH-1 REMOVED"
            })
    void whateverNamesALoadIsOne(String text) {
        assertEquals(Use.LOAD, UseText.of(text, false), text);
        assertEquals(Use.LOAD, UseText.of(text, true), text);
    }

    @Test
    void anOpenBreakerMayHaveALoad() {
        assertEquals(Use.LOAD, UseText.of("OPEN", true));
    }

    @Test
    void whatIsSaidTwiceIsTheTextOfTwoEntries() {
        assertEquals(Use.LOAD, UseText.of("SPARE SPARE", true));
        assertEquals(Use.LOAD, UseText.of("SPACE (NO BREAKER) SPACE (NO BREAKER)", false));
    }
}
