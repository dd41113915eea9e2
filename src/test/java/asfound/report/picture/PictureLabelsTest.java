package asfound.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.isolation.Isolation;
import asfound.model.Box;
import asfound.network.Network;
import asfound.network.Standing;
import asfound.report.picture.Picture.Form;
import asfound.report.picture.Picture.Point;
import asfound.report.picture.Picture.Symbol;
import asfound.report.picture.Picture.Tap;
import asfound.report.picture.Picture.Wire;
import asfound.sample.BrackenMill;
import asfound.sample.LargeCampus;
import asfound.sample.RandomBuilding;
import asfound.sample.WhinfellAnnex;
import asfound.sample.kestrel.KestrelWharf;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** On the one-line no word and no mark meets another, a symbol, a device or a line that is not its own. */
class PictureLabelsTest {

    @Test
    void at_the_demo_building() throws Exception {
        assertClear(KestrelWharf.audit().network(), "demo");
    }

    @Test
    void at_a_mill_with_a_crossing_a_tie_and_a_backfeed(@TempDir Path folder) throws Exception {
        assertClear(BrackenMill.audit().network(), "mill");
        assertClear(WhinfellAnnex.in(folder).network(), "annex");
    }

    @Test
    void on_every_sheet_of_a_campus() {
        assertClear(LargeCampus.audit().network(), "campus");
    }

    @ParameterizedTest
    @ValueSource(longs = {301, 302, 303, 304, 305, 306, 307, 308})
    void at_random_buildings(long seed) {
        assertClear(RandomBuilding.withEveryKind(seed, 14, 0.6).building().network(), "seed " + seed);
    }

    private static void assertClear(Network network, String building) {
        for (Picture p : Pictures.of(network, Isolation.verdicts(network))) {
            assertThat(clashes(p).found())
                    .as("%s, sheet %d", building, p.number())
                    .isEmpty();
            assertThat(p.taps()).as("devices looked at").isNotEmpty();
        }
    }

    private static Clashes clashes(Picture p) {
        Clashes clashes = new Clashes();
        for (Symbol s : p.symbols()) symbol(s, clashes);
        for (int i = 0; i < p.wires().size(); i++) {
            Wire w = p.wires().get(i);
            clashes.line(
                    name(p, w),
                    w.path().stream().map(c -> new double[] {c.x(), c.y()}).toList());
            if (!w.marked() || w.standing() == Standing.CONFIRMED) continue;
            double half = Sizes.word(w.standing()) / 2;
            clashes.piece("mark of " + w.words(), Set.of(name(p, w)), around(w.markX(), w.markY(), 8));
            clashes.piece("word on " + w.words(), new Box(w.markX() - half, w.markY() - 20, 2 * half, 11.5));
        }
        for (Tap t : p.taps()) {
            double width = Sizes.label(t.label());
            double left = t.arriving() ? t.x() + Sizes.LABEL - width : t.x() - Sizes.LABEL;
            clashes.piece("label " + t.label(), new Box(left, t.y() - 26, width, 11.5));
            clashes.piece("device " + t.device(), linesAt(p, t), new Box(t.x() - 13, t.y() - 8, 26, 11));
        }
        return clashes;
    }

    /** A symbol in the line lets its wires through to itself, above its name. */
    private static void symbol(Symbol s, Clashes clashes) {
        if (s.form() != Form.IN_LINE) clashes.piece("symbol " + s.name(), new Box(s.x(), s.y(), s.w(), s.h()));
        else {
            double half = Sizes.SYMBOL / 2;
            clashes.piece("symbol " + s.name(), around(s.x() + s.w() / 2, s.y() + half, half));
            clashes.piece("name " + s.name(), new Box(s.x(), s.y() + Sizes.SYMBOL + 2, s.w(), 32));
        }
    }

    private static Box around(double x, double y, double half) {
        return new Box(x - half, y - half, 2 * half, 2 * half);
    }

    private static String name(Picture p, Wire w) {
        return p.wires().indexOf(w) + ": " + w.words();
    }

    /** Several lines of one device leave it together. */
    private static Set<String> linesAt(Picture p, Tap t) {
        return p.wires().stream()
                .filter(w -> List.of(w.path().get(0), w.path().get(w.path().size() - 1)).stream()
                        .anyMatch(end -> isAt(end, t)))
                .map(w -> name(p, w))
                .collect(Collectors.toSet());
    }

    private static boolean isAt(Point end, Tap t) {
        return Math.abs(Math.abs(end.x() - t.x()) - Sizes.DEVICE) < 0.5 && Math.abs(end.y() - t.y()) < 0.5;
    }
}
