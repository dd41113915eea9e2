package asfound.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.EquipmentKind;
import asfound.network.Connection;
import asfound.network.Equipment;
import asfound.network.Network;
import asfound.network.Standing;
import asfound.sample.BrackenMill;
import asfound.sample.LargeCampus;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SheetingTest {

    @Test
    void a_small_building_stands_on_one_sheet() {
        List<Sheet> sheets = Sheeting.of(BrackenMill.audit().network());

        assertThat(sheets).hasSize(1);
        assertThat(sheets.get(0).title()).isEqualTo("The whole supply");
    }

    @Test
    void no_equipment_gives_no_sheet() {
        assertThat(Sheeting.of(new Network(List.of(), List.of(), List.of(), List.of())))
                .isEmpty();
    }

    @Test
    void a_campus_is_divided_at_its_main_boards_with_the_supply_first() {
        List<Sheet> sheets = Sheeting.of(LargeCampus.audit().network());

        assertThat(sheets.get(0).title()).isEqualTo("Main supply");
        assertThat(names(sheets.get(0))).containsExactly("UTIL-1", "MSB-1", "MSB-2", "UTIL-2", "MSB-3", "MSB-4");
        assertThat(sheets.get(1).title()).isEqualTo("MSB-1: DP-1.1 to DP-1.4");
        assertThat(names(sheets.get(1)))
                .contains("DP-1.1", "LP-1.1.1", "LP-1.4.9")
                .doesNotContain("DP-1.5");
    }

    @Test
    void hundreds_of_panels_on_one_board_are_bundled_in_the_order_of_their_names() {
        List<Equipment> equipment = new ArrayList<>(List.of(equipment("MSB", EquipmentKind.SWITCHBOARD)));
        List<Connection> connections = new ArrayList<>();
        for (int i = 1; i <= 100; i++) {
            equipment.add(equipment("LP-" + i, EquipmentKind.PANEL));
            connections.add(feeder("MSB", "LP-" + i));
        }
        List<Sheet> sheets = Sheeting.of(new Network(equipment, connections, List.of(), List.of()));

        assertThat(sheets)
                .extracting(Sheet::title)
                .containsExactly("Main supply", "MSB: LP-1 to LP-48", "MSB: LP-49 to LP-96", "MSB: LP-97 to LP-100");
    }

    /** Rings, islands, ties and self-feeds included: whatever was found must stand somewhere. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void every_equipment_stands_on_one_sheet_and_every_connection_touches_both_its_ends(long seed) {
        Network network = random(new Random(seed));
        List<Sheet> sheets = Sheeting.of(network, 7);

        assertThat(sheets.stream().flatMap(s -> names(s).stream()))
                .as("seed %d", seed)
                .containsExactlyInAnyOrderElementsOf(
                        network.equipment().stream().map(Equipment::name).toList());
        for (Sheet sheet : sheets) {
            Set<String> here = new HashSet<>(names(sheet));
            assertThat(here).as("seed %d", seed).hasSizeLessThanOrEqualTo(7);
            assertThat(sheet.connections())
                    .as("seed %d", seed)
                    .containsExactlyElementsOf(network.connections().stream()
                            .filter(c -> here.contains(c.from()) || here.contains(c.to()))
                            .toList());
        }
    }

    private static List<String> names(Sheet sheet) {
        return sheet.equipment().stream().map(Equipment::name).toList();
    }

    static Network random(Random random) {
        int n = 1 + random.nextInt(40);
        List<Equipment> equipment = new ArrayList<>();
        List<Connection> connections = new ArrayList<>();
        EquipmentKind[] kinds = EquipmentKind.values();
        for (int i = 0; i < n; i++) equipment.add(equipment("E-" + i, kinds[random.nextInt(kinds.length)]));
        for (int i = random.nextInt(2 * n); i > 0; i--)
            connections.add(new Connection(
                    "E-" + random.nextInt(n),
                    List.of(),
                    "E-" + random.nextInt(n),
                    Connection.Flow.values()[random.nextInt(3)],
                    true,
                    false,
                    random.nextBoolean(),
                    Standing.values()[random.nextInt(6)],
                    List.of(),
                    List.of()));
        return new Network(equipment, connections, List.of(), List.of());
    }

    private static Connection feeder(String from, String to) {
        return new Connection(
                from,
                List.of(),
                to,
                Connection.Flow.FEEDER,
                true,
                false,
                false,
                Standing.CONFIRMED,
                List.of(),
                List.of());
    }

    private static Equipment equipment(String name, EquipmentKind kind) {
        return new Equipment(name, kind, true, true, List.of(), List.of(), List.of(), false, false);
    }
}
