package asfound.drawing.oneline;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.CircuitRef;
import asfound.model.EquipmentKind;
import asfound.model.OneLine;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.recordset.Limits;
import asfound.recordset.Settings;
import asfound.recordset.TableFiles;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OneLineReaderTest {

    private static final String FEEDERS = "from,device,to,rating_a,poles,voltage,wire,length_ft,normally,sheet,note\n";
    private static final String EQUIPMENT = "name,kind,voltage,bus_a,main_a,fed_from,location,sheet,note\n";

    @TempDir
    Path folder;

    private OneLineReading read(String text) throws IOException {
        return OneLineReader.read(TableFiles.text(folder, "one-line/e1.csv", text), Settings.none(), Limits.usual());
    }

    private OneLine sound(String text) throws IOException {
        OneLineReading reading = read(text);
        assertThat(reading.problems()).isEmpty();
        return reading.oneLine();
    }

    private static List<String> said(OneLineReading reading) {
        return reading.problems().stream().map(Problem::inWords).toList();
    }

    @Test
    void a_feeder_is_read_with_its_place() throws IOException {
        OneLine.Feeder f = sound(FEEDERS + "MDP,7-9-11,LP-2A,100,3,208Y/120,#3 Cu,\"1,120.5\",open,E-1,spare conduit\n")
                .feeders()
                .get(0);
        assertThat(f.from().value()).contains("MDP");
        assertThat(f.device().value()).contains(CircuitRef.of(7, 9, 11));
        assertThat(f.to().value()).contains("LP-2A");
        assertThat(f.lengthFt().value()).contains(1120.5);
        assertThat(f.normallyOpen()).isTrue();
        assertThat(f.tie()).isFalse();
        assertThat(f.place()).isEqualTo(Place.row("one-line/e1.csv", 2));
    }

    @Test
    void a_blank_device_is_blank_and_an_unreadable_one_is_not() throws IOException {
        OneLineReading reading = read(FEEDERS + "T-1,,LP-2A\nT-1,?,LP-2B\n");
        assertThat(reading.oneLine().feeders().get(0).device().isBlank()).isTrue();
        assertThat(reading.oneLine().feeders().get(1).device().isUnreadable()).isTrue();
        assertThat(said(reading)).singleElement().asString().contains("row 3", "'?' in 'device'");
    }

    @ParameterizedTest
    @CsvSource({
        "TIE,'',true",
        "7,bus tie,true",
        "7,TIE BREAKER,true",
        "TB-1,Bus-tie,true",
        "7,bus coupler,true",
        "7,entitled,false",
        "7,properties,false",
        "7,'',false",
    })
    void a_tie_is_what_the_row_calls_one(String device, String note, boolean tie) throws IOException {
        assertThat(sound(FEEDERS + "SWBD-A," + device + ",SWBD-B,,,,,,,," + note + "\n")
                        .feeders()
                        .get(0)
                        .tie())
                .isEqualTo(tie);
    }

    @Test
    void equipment_is_read_and_main_lugs_are_a_blank_main() throws IOException {
        OneLine oneLine = sound(EQUIPMENT
                + "LP-2A,panel,208Y/120,225A,150,MDP-7,Elec 204,E-1,\nLP-3,panel,208Y/120,225,MLO,MDP-9,,E-1,\n");
        assertThat(oneLine.equipment().get(0).kind()).isEqualTo(EquipmentKind.PANEL);
        assertThat(oneLine.equipment().get(0).busA().value()).contains(225);
        assertThat(oneLine.equipment().get(0).fedFrom().value()).contains("MDP-7");
        assertThat(oneLine.equipment().get(1).mainA().isBlank()).isTrue();
    }

    @Test
    void one_file_may_hold_both_tables() throws IOException {
        OneLineReading reading =
                read("NORTH ANNEX\n\n" + FEEDERS + "MDP,7,LP-2A\n\n" + EQUIPMENT + "MDP,switchboard\n");
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.oneLine().feeders()).hasSize(1);
        assertThat(reading.oneLine().equipment()).hasSize(1);
        assertThat(reading.rows()).isEqualTo(2);
    }

    @Test
    void rows_without_an_end_or_name_are_said_and_the_rest_is_kept() throws IOException {
        OneLineReading reading = read(FEEDERS + "MDP,7,\n,9,LP-3\nMDP,11,LP-4,,,,,,ajar\n");
        assertThat(reading.oneLine().feeders()).hasSize(1);
        assertThat(said(reading)).hasSize(3);
        assertThat(said(reading).get(0)).contains("row 2", "names no 'to'");
        assertThat(said(reading).get(1)).contains("row 3", "names no 'from'");
        assertThat(said(reading).get(2)).contains("row 4", "'ajar' in 'normally' is neither open nor closed");
    }
}
