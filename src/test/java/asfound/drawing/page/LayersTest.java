package asfound.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Layers of a drawing, by ISO 32000-1, 8.11 (from memory): one is on, one is switched off. */
class LayersTest {

    private final PDDocument drawing = new PDDocument();
    private final COSDictionary lights = group();
    private final COSDictionary demolished = group();

    @AfterEach
    void close() throws IOException {
        drawing.close();
    }

    @Test
    void aLayerThatIsSwitchedOffIsNotSeen() {
        assertThat(layers("ON").isOff(demolished)).isTrue();
        assertThat(layers("ON").isOff(lights)).isFalse();
        assertThat(layers("ON").isOff(null)).isFalse();
    }

    @Test
    void whereAllAreOffOnlyTheNamedOnesAreSeen() {
        Layers layers = layers("OFF");
        assertThat(layers.isOff(lights)).isFalse();
        assertThat(layers.isOff(group())).isTrue();
    }

    @Test
    void whatBelongsToSeveralLayersIsSeenByTheirPolicy() {
        Layers layers = layers("ON");
        assertThat(layers.isOff(members("AnyOn", lights, demolished))).isFalse();
        assertThat(layers.isOff(members("AllOn", lights, demolished))).isTrue();
        assertThat(layers.isOff(members("AnyOff", lights, demolished))).isFalse();
        assertThat(layers.isOff(members("AllOff", lights, demolished))).isTrue();
        assertThat(layers.isOff(members("AnyOn", demolished))).isTrue();
        assertThat(layers.isOff(members("AnyOn"))).isFalse();
    }

    @Test
    void anExpressionGoesBeforeThePolicy() {
        COSDictionary both = members("AnyOn", lights);
        both.setItem("VE", array(COSName.getPDFName("And"), lights, demolished));
        COSDictionary without = members("AnyOn", demolished);
        without.setItem("VE", array(COSName.getPDFName("Not"), demolished));
        Layers layers = layers("ON");
        assertThat(layers.isOff(both)).isTrue();
        assertThat(layers.isOff(without)).isFalse();
    }

    @Test
    void anExpressionThatHoldsItselfCountsAsSeen() {
        COSArray or = array(COSName.getPDFName("Or"), demolished);
        or.add(or);
        COSDictionary endless = members("AnyOn", demolished);
        endless.setItem("VE", or);
        assertThat(layers("ON").isOff(endless)).isFalse();
    }

    private Layers layers(String base) {
        COSDictionary usual = new COSDictionary();
        usual.setName("BaseState", base);
        usual.setItem(COSName.ON, array(lights));
        usual.setItem(COSName.OFF, array(demolished));
        COSDictionary properties = new COSDictionary();
        properties.setItem(COSName.D, usual);
        drawing.getDocumentCatalog().getCOSObject().setItem(COSName.OCPROPERTIES, properties);
        return new Layers(drawing);
    }

    private static COSDictionary group() {
        COSDictionary group = new COSDictionary();
        group.setName(COSName.TYPE, "OCG");
        return group;
    }

    private static COSDictionary members(String policy, COSDictionary... groups) {
        COSDictionary members = new COSDictionary();
        members.setName(COSName.TYPE, "OCMD");
        members.setName(COSName.P, policy);
        members.setItem("OCGs", array(groups));
        return members;
    }

    private static COSArray array(COSBase... members) {
        return new COSArray(List.of(members));
    }
}
