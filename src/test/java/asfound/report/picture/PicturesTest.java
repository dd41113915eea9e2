package asfound.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audit;
import asfound.network.Network;
import asfound.network.Standing;
import asfound.report.picture.Picture.Form;
import asfound.report.picture.Picture.Point;
import asfound.report.picture.Picture.Symbol;
import asfound.report.picture.Picture.Wire;
import asfound.sample.AuditSketch;
import asfound.sample.BrackenMill;
import asfound.sample.LargeCampus;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PicturesTest {

    private static final Audit MILL = BrackenMill.audit();

    @Test
    void a_crossing_shows_each_device_with_both_its_lines() {
        Picture mill = only(MILL);

        assertThat(standings(mill, "T-1", "LP-1A")).containsExactlyInAnyOrder(Standing.CONTRADICTED, Standing.FOUND);
        assertThat(standings(mill, "T-1", "LP-1B")).containsExactlyInAnyOrder(Standing.CONTRADICTED, Standing.FOUND);
        assertThat(mill.taps()).filteredOn(t -> t.device().in().equals("T-1")).hasSize(2);
        assertThat(mill.wires().stream()
                        .filter(w -> w.words().contains("T-1/1"))
                        .map(w -> w.path().get(0))
                        .distinct())
                .as("drawn and found of one device leave it at one place")
                .hasSize(1);
    }

    @Test
    void a_backfed_source_shows_its_own_device_and_the_panels() {
        assertThat(only(MILL).taps()).extracting(t -> t.device().label()).contains("PV-1/D", "HP-1/12");
    }

    @Test
    void a_tie_stands_between_its_buses_and_is_marked_once() {
        Picture mill = only(MILL);

        assertThat(mill.symbols())
                .filteredOn(s -> s.form() == Form.TIE)
                .extracting(Symbol::name)
                .containsExactly("MSB/TIE");
        assertThat(mill.wires()).filteredOn(w -> w.words().contains("tied to")).hasSize(2);
        assertThat(mill.wires())
                .filteredOn(w -> w.words().contains("tied to") && w.marked())
                .hasSize(1);
    }

    @Test
    void equipment_that_no_drawing_shows_says_so() {
        Symbol panel = symbol(only(MILL), "LP-4");

        assertThat(panel.drawn()).isFalse();
        assertThat(panel.detail()).isEqualTo("panel, not drawn");
    }

    @Test
    void a_name_of_any_length_is_laid_out() {
        String name = "PANEL ".repeat(400);
        Audit audit = new AuditSketch("x")
                .equipment(asfound.model.EquipmentKind.PANEL, name)
                .build();

        assertThat(only(audit).width()).isLessThan(400);
    }

    @Test
    void connections_to_another_sheet_are_counted_and_their_worst_is_shown() {
        List<Picture> campus =
                Pictures.of(LargeCampus.audit().network(), LargeCampus.audit().verdicts());
        Wire bundle = campus.get(0).wires().stream()
                .filter(w -> w.from().equals("here MSB-1") && w.count() > 1)
                .findFirst()
                .orElseThrow();

        assertThat(bundle.words()).startsWith("MSB-1 to sheet 2: ").contains("drawn only", "found");
        assertThat(bundle.standing()).isEqualTo(Standing.CONTRADICTED);
        assertThat(campus.get(1).symbols())
                .filteredOn(s -> s.form() == Form.REFERENCE)
                .extracting(Symbol::name, Symbol::sheet)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("MSB-1", 1));
    }

    @Test
    void a_thicket_of_connections_is_said_not_to_be_drawn() {
        AuditSketch thicket = new AuditSketch("x").equipment(asfound.model.EquipmentKind.PANEL, "A", "B");
        for (int i = 0; i <= Pictures.MOST_CONNECTIONS; i++) thicket.feeder("A", "B", Standing.FOUND, "A/" + i);

        assertThat(only(thicket.build()).isDrawn()).isFalse();
        assertThat(only(MILL).isDrawn()).isTrue();
    }

    @Test
    void the_same_network_gives_the_same_picture() {
        assertThat(Pictures.of(MILL.network(), MILL.verdicts()))
                .isEqualTo(Pictures.of(
                        BrackenMill.audit().network(), BrackenMill.audit().verdicts()));
    }

    @ParameterizedTest
    @ValueSource(longs = {101, 102, 103, 104, 105, 106, 107, 108, 109, 110, 111, 112})
    void whatever_the_network_its_equipment_stands_apart_and_its_wires_are_square(long seed) {
        Network network = SheetingTest.random(new Random(seed));
        for (Picture p : Pictures.of(network, List.of())) {
            assertThat(overlaps(p.symbols())).as("seed %d", seed).isEmpty();
            for (Wire w : p.wires()) {
                assertThat(w.path()).as("seed %d: %s", seed, w.words()).hasSizeGreaterThanOrEqualTo(2);
                assertThat(isSquare(w.path())).as("seed %d: %s", seed, w.path()).isTrue();
            }
        }
        int wires = Pictures.of(network, List.of()).stream()
                .flatMap(p -> p.wires().stream())
                .mapToInt(Wire::count)
                .sum();
        assertThat(wires)
                .as("seed %d: no connection is left out", seed)
                .isGreaterThanOrEqualTo(network.connections().size());
    }

    private static List<String> overlaps(List<Symbol> symbols) {
        List<String> found = new ArrayList<>();
        for (Symbol a : symbols)
            for (Symbol b : symbols)
                if (a != b
                        && a.x() < b.x() + b.w()
                        && b.x() < a.x() + a.w()
                        && a.y() < b.y() + b.h()
                        && b.y() < a.y() + a.h()) found.add(a.name() + " on " + b.name());
        return found;
    }

    /** To half a unit, which nobody sees: a loop from a box to itself ends a third of one beside its port. */
    private static boolean isSquare(List<Point> path) {
        for (int i = 1; i < path.size(); i++) {
            Point a = path.get(i - 1), b = path.get(i);
            if (Math.abs(a.x() - b.x()) > 0.5 && Math.abs(a.y() - b.y()) > 0.5) return false;
        }
        return true;
    }

    private static List<Standing> standings(Picture p, String from, String to) {
        return p.wires().stream()
                .filter(w -> w.from().equals("here " + from) && w.to().equals("here " + to))
                .map(Wire::standing)
                .toList();
    }

    private static Symbol symbol(Picture p, String name) {
        return p.symbols().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Picture only(Audit audit) {
        List<Picture> all = Pictures.of(audit.network(), audit.verdicts());
        assertThat(all).hasSize(1);
        return all.get(0);
    }
}
