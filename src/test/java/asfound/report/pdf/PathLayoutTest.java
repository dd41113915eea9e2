package asfound.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.isolation.Isolation;
import asfound.isolation.Verdict;
import asfound.model.Box;
import asfound.network.Network;
import asfound.report.picture.Clashes;
import asfound.sample.BrackenMill;
import asfound.sample.RandomBuilding;
import asfound.sample.WhinfellAnnex;
import asfound.sample.kestrel.KestrelWharf;
import java.nio.file.Path;
import java.util.Set;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** In the picture of the ways of supply no word meets another word, a box, a device or a line. */
class PathLayoutTest {

    private static PDDocument document;
    private static Typeface typeface;

    @BeforeAll
    static void openTypeface() throws Exception {
        document = new PDDocument();
        typeface = new Typeface(document);
    }

    @AfterAll
    static void close() throws Exception {
        document.close();
    }

    @Test
    void at_the_demo_building() throws Exception {
        assertClear(KestrelWharf.audit().network(), "demo");
    }

    @Test
    void at_a_mill_with_a_crossing_a_tie_and_a_backfeed(@TempDir Path folder) throws Exception {
        assertClear(BrackenMill.audit().network(), "mill");
        assertClear(WhinfellAnnex.in(folder).network(), "annex");
    }

    @ParameterizedTest
    @ValueSource(longs = {301, 302, 303, 304, 305, 306, 307, 308})
    void at_random_buildings(long seed) {
        assertClear(RandomBuilding.withEveryKind(seed, 14, 0.6).building().network(), "seed " + seed);
    }

    private static void assertClear(Network network, String building) {
        int words = 0;
        for (Verdict v : Isolation.verdicts(network)) {
            PathLayout layout = new PathLayout(SupplyPaths.of(network, v.equipment()), typeface);
            assertThat(clashes(layout).found())
                    .as("%s, ways of supply to %s", building, v.equipment())
                    .isEmpty();
            words += layout.wires().stream().mapToInt(w -> w.words().size()).sum();
        }
        assertThat(words).as("words looked at").isGreaterThan(5);
    }

    private static Clashes clashes(PathLayout layout) {
        Clashes clashes = new Clashes();
        for (PathLayout.Node n : layout.nodes())
            clashes.piece("box " + n.equipment().name(), n.box());
        int i = 0;
        for (PathLayout.Wire w : layout.wires()) {
            String line =
                    i++ + " " + w.connection().from() + " to " + w.connection().to();
            clashes.line(line, w.path());
            for (PathLayout.Tap t : w.taps()) {
                double r = PathLayout.RING;
                clashes.piece("device " + t.device(), Set.of(line), new Box(t.x() - r, t.y() - r, 2 * r, 2 * r));
                clashes.piece(
                        "label " + t.label(),
                        text(
                                t.label(),
                                t.x() + PathLayout.LABEL_RIGHT,
                                t.y() - PathLayout.LABEL_UP,
                                PathLayout.DEVICE));
            }
            for (PathLayout.Word word : w.words())
                clashes.piece(
                        "word " + word.text() + " of " + line, text(word.text(), word.x(), word.y(), PathLayout.WORD));
        }
        return clashes;
    }

    /** From the height of a capital letter to the depth of a g, as from memory of type: 0.7 and 0.22 of its size. */
    private static Box text(String text, double x, double y, Type type) {
        return new Box(x, y - 0.7 * type.size(), typeface.width(text, type), 0.92 * type.size());
    }
}
