package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;

/** A panel's name in one line with the place where it stands. */
class NamesWithPlacesTest {

    @Test
    void a_name_and_the_place_behind_it_are_two_things() throws IOException {
        place("2nd floor linen closet", "2-N", "PANEL 2-N, 2nd floor linen closet");
        place("Dock A head", "DA-1", "Panel DA-1 at Dock A head. Fed from MDP.");
        place("Fuel pier shed", "FP", "Panel FP at the Fuel pier shed. Fed from MDP.");
        place("gallery store", "LP-4", "Panel LP-4 in the gallery store, fed from MDP");
        place("Slip 14", "LP-4", "PANELBOARD LP-4 LOCATED AT Slip 14 - FED FROM MDP");
        place("pump room 3", "LP-4", "Panel \"LP-4\" is located in pump room 3. Fed from MDP.");
        place("near stair 2", "LP-4", "Panel: LP-4 located near stair 2    Fed from: MDP");
        place("Boiler room", "LP-4", "Panel LP-4 (Boiler room), fed from MDP");
        place("Level 3 west wing", "LP-4", "Panel LP-4 - Level 3 west wing");
        place("Ground floor riser", "LP-4", "Panel LP-4 / Ground floor riser / fed from MDP");
        place("Workshop 2", "DB 4", "DB 4 at Workshop 2");
        place("roof", "LP-4", "Panel LP-4 on the roof");
        place("Quay 7", "DB-4", "Distribution board DB-4 at Quay 7");
        place("fan loft", "HV-2", "Panel HV-2 stands in the fan loft, fed from MDP-1");
        place("cold store", "KX-4", "Switchboard record. Panel KX-4 in the cold store, fed from DP-4");
        place("Elevator lobby 2", "MDP", "PANEL MDP, Elevator lobby 2");
    }

    @Test
    void what_is_no_place_is_none() throws IOException {
        place("", "LP-4", "Panel LP-4, 120/208V, 3PH, 4W, 100 A BUS");
        place("", "LP-4", "Panel LP-4 - Lighting and small power");
        place("", "LP 4", "PANEL LP 4 SCHEDULE");
    }

    private static void place(String place, String name, String title) throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, title);
            s.twoSided(70);
            var h = s.directory().header();
            assertThat(h.designation().or("-") + " @ " + h.location().or(""))
                    .as(title)
                    .isEqualTo(name + " @ " + place);
        }
    }
}
