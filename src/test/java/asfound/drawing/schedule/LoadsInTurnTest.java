package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Odd and even positions on rows in turn, with the loads of both in the same columns between them. */
class LoadsInTurnTest {

    private static final String PANEL = "Panel:,LP-4,,Voltage:,208Y/120 V\n\n";

    @Test
    void a_load_is_of_the_position_on_its_row() throws IOException {
        Directory d = Readings.table(PANEL
                + "Ckt,Description,Trip,Poles,VA A,VA B,VA C,Poles,Trip,Description,Ckt\n"
                + "1,Lights,20,1,600,,,,,,\n,,,,710,,,1,20,Desks,2\n"
                + "3,Pump,30,2,,900,,,,,\n,,,,,820,,1,20,Rack,4\n"
                + "5,,,,,,900,,,,\n,,,,,,,,,Space,6\n"
                + "7,Spare,20,1,,,,,,,\n,,,,930,,,1,20,Fan,8\n");
        assertThat(Readings.loads(d)).containsExactly(600.0, 710.0, 1800.0, 820.0, 0.0, 0.0, 930.0);
        assertThat(Readings.said(d.problems())).isEmpty();
    }

    @Test
    void one_column_of_loads_serves_both_as_well() throws IOException {
        Directory d = Readings.table(PANEL
                + "Ckt,Description,Trip,Poles,VA,Poles,Trip,Description,Ckt\n"
                + "1,Lights,20,1,600,,,,\n,,,,710,1,20,Desks,2\n"
                + "3,Pump,30,1,900,,,,\n,,,,820,1,20,Rack,4\n"
                + "5,Oven,20,1,950,,,,\n,,,,,,,Space,6\n"
                + "7,Spare,20,1,,,,,\n,,,,930,1,20,Fan,8\n");
        assertThat(Readings.loads(d)).containsExactly(600.0, 710.0, 900.0, 820.0, 950.0, 0.0, 0.0, 930.0);
        assertThat(Readings.said(d.problems())).isEmpty();
    }
}
