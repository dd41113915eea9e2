package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.phrase.PositionText;
import asfound.drawing.schedule.text.DeviceText;
import asfound.drawing.schedule.text.SystemText;
import asfound.drawing.schedule.text.Texts;
import asfound.drawing.schedule.text.UseText;
import asfound.model.Directory.Use;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Single entries as offices write them (common practice). */
class CellTextsTest {

    @ParameterizedTest
    @CsvSource({
        "20,20,",
        "20A,20,",
        "20 A,20,",
        "20/1,20,1",
        "20A-1P,20,1",
        "20A 1P,20,1",
        "1P-20A,20,1",
        "100AF/60AT/3P,60,3",
        "3/60,60,3",
        "C16,16,",
        "B 32,32,",
        "32A TP,32,3",
        "16A SP,16,1",
        "'1,200A',1200,",
        "3P,,3",
        "20 GFCI,20,",
        "(2) 40A,40,2",
        "2 x 30A,30,2",
        "3X100 A,100,3",
        "Single pole 20 amp,20,1",
        "two pole 30A,30,2",
        "20\\1,20,1",
        "20.0,20,",
        "20.00 A,20,",
        "100A gG,100,",
        "63 aM,63,"
    })
    void a_device_is_read_however_it_is_written(String text, Integer rating, Integer poles) {
        DeviceText device = DeviceText.parse(text).orElseThrow();
        assertThat(device.ratingA().orElse(null)).isEqualTo(rating);
        assertThat(device.poles().orElse(null)).isEqualTo(poles);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "RECEPT RM 20",
                "20 20 20",
                "2.5",
                "-",
                "",
                "12/3/4",
                "Pump 3",
                "70/80",
                "L2",
                "0",
                "4 x 16",
                "3X2.5",
                "4x25mm"
            })
    void what_is_no_device_is_not_taken_for_one(String text) {
        assertThat(DeviceText.parse(text)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "7;7",
                "7,9,11;7 9 11",
                "7-9-11;7 9 11",
                "7/9/11;7 9 11",
                "1 & 3;1 3",
                "CKT 5;5",
                "#12;12",
                "(4);4",
                "[1,3,5];1 3 5",
                "1.3.5;1 3 5",
                "1|3;1 3",
                "13·15·17;13 15 17"
            })
    void positions_are_read_however_they_are_joined(String text, String numbers) {
        assertThat(PositionText.parse(text).orElseThrow().numbers().stream()
                        .map(String::valueOf)
                        .toList())
                .isEqualTo(List.of(numbers.split(" ")));
    }

    @Test
    void a_way_with_its_phase_is_counted_across_the_ways() {
        assertThat(PositionText.parse("1L1").orElseThrow().order()).isEqualTo(1);
        assertThat(PositionText.parse("2L3").orElseThrow().order()).isEqualTo(6);
        assertThat(PositionText.parse("3L1/L2/L3").orElseThrow().phases()).containsExactly(1, 2, 3);
        assertThat(PositionText.parse("4 TPN").orElseThrow().phases()).containsExactly(1, 2, 3);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.6", "2020-05-12", "11,9", "0", "900", "A", "20A", "RM 7"})
    void what_is_no_position_is_not_taken_for_one(String text) {
        assertThat(PositionText.parse(text)).isEmpty();
    }

    @Test
    void a_spare_is_a_spare_and_a_space_heater_a_load() {
        assertThat(UseText.of("Spare", true)).isEqualTo(Use.SPARE);
        assertThat(UseText.of("SPACE", false)).isEqualTo(Use.SPACE);
        assertThat(UseText.of("Bussed space", false)).isEqualTo(Use.SPACE);
        assertThat(UseText.of("SPACE HEATER RM 4", true)).isEqualTo(Use.LOAD);
        assertThat(UseText.of("Spare parts store lights", true)).isEqualTo(Use.LOAD);
        assertThat(UseText.of("SP-4", true)).isEqualTo(Use.LOAD);
        assertThat(UseText.of("SP", true)).isEqualTo(Use.SPARE);
        assertThat(UseText.of("SP 20/1", true)).isEqualTo(Use.SPARE);
        assertThat(UseText.of("", true)).isEqualTo(Use.LOAD);
        assertThat(UseText.of("", false)).isEqualTo(Use.SPACE);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "RESERVA / SPARE",
                "SPARE/RESERVA",
                "RÉSERVE – SPARE",
                "Spare (Reserve)",
                "LIBRE / SPARE",
                "RÉSERVE SPARE",
                "Reserve 20A / Spare 20A"
            })
    void a_spare_in_two_languages_is_a_spare(String text) {
        assertThat(UseText.of(text, true)).isEqualTo(Use.SPARE);
        assertThat(UseText.of(text, false)).isEqualTo(Use.SPARE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ESPACIO / SPACE", "ESPACE/SPACE", "Space (espace)", "SPACE - LIBRE", "VACÍO / EMPTY"})
    void a_space_in_two_languages_is_a_space(String text) {
        assertThat(UseText.of(text, false)).isEqualTo(Use.SPACE);
    }

    @Test
    void spare_or_space_is_told_by_the_device() {
        assertThat(UseText.of("SPARE / SPACE", true)).isEqualTo(Use.SPARE);
        assertThat(UseText.of("SPARE / SPACE", false)).isEqualTo(Use.SPACE);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "RESERVA / SPARE PUMP",
                "SPARE / RECEPT RM 4",
                "Pompe de réserve / Spare pump",
                "ESPACE CLIENTS / CUSTOMER SPACE",
                "RECEPTACLES / SPARE",
                "SPARE SPACE",
                "RESERVE BANK LIGHTS"
            })
    void what_names_a_load_beside_such_a_word_is_a_load(String text) {
        assertThat(UseText.of(text, true)).isEqualTo(Use.LOAD);
    }

    @Test
    void the_full_stop_of_an_abbreviation_is_not_of_the_dots_after_it() {
        assertThat(Texts.withoutLeader("MACHINE SHED LTS. ..............")).isEqualTo("MACHINE SHED LTS.");
        assertThat(Texts.withoutLeader("SPARE ..............")).isEqualTo("SPARE");
        assertThat(Texts.withoutLeader("SPARE..............")).isEqualTo("SPARE");
        assertThat(Texts.withoutLeader("SPARE . . . . . . .")).isEqualTo("SPARE");
        assertThat(Texts.withoutLeader("SPARE. . . . . . . .")).isEqualTo("SPARE");
        assertThat(Texts.withoutLeader("PUMP-OUT STA.")).isEqualTo("PUMP-OUT STA.");
    }

    @Test
    void a_name_with_a_number_says_nothing_of_phases() {
        assertThat(SystemText.phases("SUB-PANEL SP-2", false)).isEmpty();
        assertThat(SystemText.phases("40A SP&N", false)).contains(1);
        assertThat(SystemText.phases("63A TPN isolator", false)).contains(3);
    }

    @Test
    void lines_of_one_entry_are_put_together_as_they_were_broken() {
        assertThat(Texts.continued("Display case 3-", "door cooler")).isEqualTo("Display case 3-door cooler");
        assertThat(Texts.continued("Recept -", "rm 222")).isEqualTo("Recept - rm 222");
        assertThat(Texts.continued("Pump w/", "heat trace")).isEqualTo("Pump w/ heat trace");
        assertThat(Texts.continued("Rms 207/", "208")).isEqualTo("Rms 207/208");
    }
}
