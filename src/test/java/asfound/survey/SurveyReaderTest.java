package asfound.survey;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.CircuitRef;
import asfound.model.EquipmentKind;
import asfound.model.Observation;
import asfound.model.Observation.Method;
import asfound.model.Observation.Relation;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.model.Voltage;
import asfound.recordset.Limits;
import asfound.recordset.Settings;
import asfound.recordset.TableFiles;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SurveyReaderTest {

    private static final String HEADER =
            "panel,circuit,relation,found,kind,method,poles,rating_a,voltage,phase,wire,location,by,date,note,photo\n";

    @TempDir
    Path folder;

    private SurveyReading read(String rows) throws IOException {
        return SurveyReader.read(
                TableFiles.text(folder, "survey/walk.csv", HEADER + rows), Settings.none(), Limits.usual());
    }

    private Observation only(String row) throws IOException {
        SurveyReading reading = read(row);
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.observations()).hasSize(1);
        return reading.observations().get(0);
    }

    private static List<String> said(SurveyReading reading) {
        return reading.problems().stream().map(Problem::inWords).toList();
    }

    @Test
    void one_row_is_one_observation_with_its_place_and_raw_text() throws IOException {
        Observation o = only(
                "MDP,\"7,9,11\",feeds,Panel  LP-2A,panel,opened,3P,100 A,208Y/120V,ABC,#3 Cu,elec rm,J. Sand,2024-05-02,hot,p1.jpg\n");
        Place.InRow place = new Place.InRow("survey/walk.csv", "", 2);
        assertThat(o.place()).isEqualTo(place);
        assertThat(o.panel().value()).contains("MDP");
        assertThat(o.circuit().value()).contains(CircuitRef.of(7, 9, 11));
        assertThat(o.relation()).isEqualTo(Relation.FEEDS);
        assertThat(o.found().value()).contains("Panel LP-2A");
        assertThat(o.found().raw()).isEqualTo("Panel  LP-2A");
        assertThat(o.found().place()).contains(place);
        assertThat(o.kind()).isEqualTo(EquipmentKind.PANEL);
        assertThat(o.method()).isEqualTo(Method.OPENED);
        assertThat(o.poles().value()).contains(3);
        assertThat(o.ratingA().value()).contains(100);
        assertThat(o.voltage().value()).contains(new Voltage(208, Optional.of(120)));
        assertThat(o.wire().value()).contains("#3 Cu");
        assertThat(o.date().value()).contains(LocalDate.of(2024, 5, 2));
        assertThat(o.by()).isEqualTo("J. Sand");
        assertThat(o.photo()).isEqualTo("p1.jpg");
    }

    @ParameterizedTest
    @CsvSource({
        "'',FEEDS",
        "feeds,FEEDS",
        "FED BY,FED_BY",
        "does not feed,DOES_NOT_FEED",
        "doesn’t feed,DOES_NOT_FEED",
        "nothing,NOTHING",
        "no device,NO_DEVICE",
    })
    void relations_are_told(String word, Relation relation) throws IOException {
        assertThat(only("MDP,7," + word + ",LP-2A,,tone\n").relation()).isEqualTo(relation);
    }

    @ParameterizedTest
    @CsvSource({"nothing,NOTHING", "Spare,NOTHING", "space,NO_DEVICE", "LP-2A,FEEDS"})
    void nothing_written_as_what_was_found_is_no_load_of_that_name(String found, Relation relation) throws IOException {
        assertThat(only("MDP,7,," + found + ",,tone\n").relation()).isEqualTo(relation);
    }

    @Test
    void an_unknown_relation_is_never_taken_for_feeds() throws IOException {
        SurveyReading reading = read("MDP,7,near,LP-2A,,tone\nMDP,9,feeds,LP-3,,tone\n");
        assertThat(reading.observations()).extracting(o -> o.place().row()).containsExactly(3);
        assertThat(reading.rows()).isEqualTo(2);
        assertThat(said(reading))
                .containsExactly(
                        "survey/walk.csv, row 2: 'near' in 'relation' is no relation that is known; the row was not"
                                + " used. Write feeds, fed by, does not feed, nothing or no device.");
    }

    @Test
    void an_unknown_method_proves_nothing_and_is_said() throws IOException {
        SurveyReading reading = read("MDP,7,feeds,LP-2A,,guess\nMDP,9,feeds,LP-3,,\n");
        assertThat(reading.observations()).extracting(Observation::method).containsOnly(Method.UNKNOWN);
        assertThat(reading.observations().get(0).method().traces()).isFalse();
        assertThat(said(reading)).hasSize(2);
        assertThat(said(reading).get(0)).contains("row 2", "'guess'", "proves nothing");
        assertThat(said(reading).get(1)).contains("row 3", "does not say how it was traced");
    }

    @ParameterizedTest
    @CsvSource({"05/02/2024", "2024-13-01", "2024-02-30", "yesterday", "2024"})
    void a_day_that_is_none_or_could_be_two_is_unreadable_and_the_row_kept(String day) throws IOException {
        SurveyReading reading = read("MDP,7,feeds,LP-2A,,tone,,,,,,,," + day + "\n");
        assertThat(reading.observations().get(0).date().isUnreadable()).isTrue();
        assertThat(reading.observations().get(0).date().raw()).isEqualTo(day);
        assertThat(said(reading)).singleElement().asString().contains("row 2", "'" + day + "' in 'date'", "2024-05-02");
    }

    @ParameterizedTest
    @CsvSource({"2024-5-2", "2 May 2024", "'May 2, 2024'", "2024/05/02", "2024-05-02 14:30", "2-May-2024"})
    void a_day_that_is_clear_is_read(String day) throws IOException {
        assertThat(only("MDP,7,feeds,LP-2A,,tone,,,,,,,,\"" + day + "\"\n")
                        .date()
                        .value())
                .contains(LocalDate.of(2024, 5, 2));
    }

    @ParameterizedTest
    @CsvSource({"100,100", "100A,100", "'1,200 A',1200", "100A/3P,100", "20/1,20", "225AF/150AT,150", "100.0,100"})
    void ratings_are_read_as_they_are_written(String text, int amperes) throws IOException {
        assertThat(only("MDP,7,feeds,LP-2A,,tone,,\"" + text + "\"\n").ratingA().value())
                .contains(amperes);
    }

    @ParameterizedTest
    @CsvSource({"lots", "100 or 125", "0", "-5", "1O0"})
    void a_rating_that_is_none_is_unreadable_and_never_blank(String text) throws IOException {
        SurveyReading reading = read("MDP,7,feeds,LP-2A,,tone,," + text + "\n");
        assertThat(reading.observations().get(0).ratingA().isUnreadable()).isTrue();
        assertThat(said(reading)).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({"7/9/2011", "2011-07-09", "9-Jul", "Jul-09", "?", "n/a"})
    void positions_that_a_spreadsheet_spoiled_are_unreadable(String circuit) throws IOException {
        SurveyReading reading = read("MDP," + circuit + ",feeds,LP-2A,,tone\n");
        assertThat(reading.observations().get(0).circuit().isUnreadable()).isTrue();
        assertThat(said(reading)).singleElement().asString().contains("row 2", circuit);
    }

    @ParameterizedTest
    @CsvSource({"7-9-11,7-9-11", "7/9/11,7-9-11", "CKT 7,7", "7.0,7", "M1,M1", "'7,9,',7-9", "MAIN,MAIN"})
    void devices_are_read_as_they_are_written(String circuit, String read) throws IOException {
        assertThat(only("MDP,\"" + circuit + "\",feeds,LP-2A,,tone\n")
                        .circuit()
                        .value()
                        .map(CircuitRef::inWords))
                .contains(read);
    }

    @Test
    void rows_that_name_no_panel_or_nothing_found_are_said_and_not_used() throws IOException {
        SurveyReading reading = read(",7,feeds,LP-2A,,tone\nMDP,9,feeds,,,tone\nMDP,11,nothing,,,tone\n");
        assertThat(reading.observations()).extracting(o -> o.place().row()).containsExactly(4);
        assertThat(said(reading)).hasSize(2);
        assertThat(said(reading).get(0)).contains("row 2", "names no panel");
        assertThat(said(reading).get(1)).contains("row 3", "does not name what was found");
    }

    @Test
    void an_unknown_kind_is_said_and_the_row_used_without_it() throws IOException {
        SurveyReading reading = read("MDP,7,feeds,LP-2A,gizmo,tone\n");
        assertThat(reading.observations().get(0).kind()).isEqualTo(EquipmentKind.UNKNOWN);
        assertThat(said(reading)).singleElement().asString().contains("'gizmo' in 'kind'");
    }
}
