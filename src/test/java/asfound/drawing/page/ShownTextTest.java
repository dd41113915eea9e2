package asfound.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFStreamEngine;
import org.apache.pdfbox.contentstream.operator.state.Concatenate;
import org.apache.pdfbox.contentstream.operator.state.SetMatrix;
import org.apache.pdfbox.contentstream.operator.text.BeginText;
import org.apache.pdfbox.contentstream.operator.text.MoveText;
import org.apache.pdfbox.contentstream.operator.text.SetCharSpacing;
import org.apache.pdfbox.contentstream.operator.text.SetFontAndSize;
import org.apache.pdfbox.contentstream.operator.text.SetTextHorizontalScaling;
import org.apache.pdfbox.contentstream.operator.text.SetTextRise;
import org.apache.pdfbox.contentstream.operator.text.SetWordSpacing;
import org.apache.pdfbox.contentstream.operator.text.ShowText;
import org.apache.pdfbox.contentstream.operator.text.ShowTextAdjusted;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Letters (ISO 32000-1, 9.4.4) stand, to the last bit, where the library places them. */
class ShownTextTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "BT /F 8 Tf 40.1 700.3 Td (SPARE 20A) Tj ET",
                "BT /F 8 Tf 1.3 Tc 2.7 Tw 87.5 Tz 3.1 Ts 40.1 700.3 Td (KITCHEN  RECEPT) Tj 0 -11.7 Td (LP-2A) Tj ET",
                "BT /F 1 Tf 0 9.3 -9.3 0 300.7 200.9 Tm (TURNED UP) Tj ET",
                "BT /F -7.7 Tf -1 0 0 -1 300.7 200.9 Tm (UPSIDE DOWN) Tj ET",
                "0.24 0 0 -0.24 12.3 780.1 cm BT /F 33.3 Tf 1 0 0 -1 101.1 202.2 Tm [(PAN) -120.5 (EL) 33 ( B)] TJ ET",
                "BT /F 9 Tf 1 0.1 -0.1 1 90 90 Tm (A HAIR ASKEW) Tj 1 0.9 -0.9 1 90 190 Tm (ASKEW) Tj ET",
                "BT /W 9.1 Tf 2.2 Tw 0.7 Tc 50.5 400.2 Td <0024002500260003> Tj ET",
                "BT /F 9 Tf 590 400 Td (LEADS OUT OF THE PAGE) Tj ET",
                "BT /F 0.1 Tf 50 400 Td (TOO SMALL) Tj ET"
            })
    void letters_stand_where_the_library_places_them(String content) throws IOException {
        for (int rotation : new int[] {0, 90, 180, 270})
            try (PDDocument document = new PDDocument()) {
                PDPage page = page(document, content, rotation);
                PageScan ours = new PageScan(
                        page,
                        new KnownFonts(),
                        new HiddenContent(new Layers(document)),
                        1000,
                        100_000,
                        System.nanoTime() + (long) 1e12);
                ours.scan();
                Library library = new Library(page);
                library.processPage(page);
                assertThat(ours.glyphs()).isEqualTo(library.letters.all());
                assertThat(library.letters.all().isEmpty()).isEqualTo(content.contains("TOO SMALL"));
            }
    }

    private static PDPage page(PDDocument document, String content, int rotation) throws IOException {
        PDPage page = new PDPage();
        page.setRotation(rotation);
        PDResources resources = new PDResources();
        resources.put(COSName.F, new PDType1Font(FontName.HELVETICA));
        resources.put(
                COSName.W,
                PDType0Font.load(
                        document,
                        PDFont.class.getResourceAsStream(
                                "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf")));
        page.setResources(resources);
        PDStream stream = new PDStream(document);
        try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(content.getBytes(StandardCharsets.ISO_8859_1));
        }
        page.setContents(List.of(stream));
        document.addPage(page);
        return page;
    }

    /** Is told of each letter by the library, with the matrix that it reckons for it. */
    private static final class Library extends PDFStreamEngine {
        private final PlacedLetters letters;
        private int piece;

        Library(PDPage page) {
            letters = new PlacedLetters(Displayed.of(page));
            List.of(
                            new BeginText(this),
                            new MoveText(this),
                            new SetMatrix(this),
                            new Concatenate(this),
                            new SetFontAndSize(this),
                            new SetCharSpacing(this),
                            new SetWordSpacing(this),
                            new SetTextHorizontalScaling(this),
                            new SetTextRise(this),
                            new ShowText(this),
                            new ShowTextAdjusted(this))
                    .forEach(this::addOperator);
        }

        @Override
        public void showTextString(byte[] string) throws IOException {
            piece++;
            super.showTextString(string);
        }

        @Override
        public void showTextStrings(org.apache.pdfbox.cos.COSArray strings) throws IOException {
            piece++;
            super.showTextStrings(strings);
        }

        @Override
        protected void showGlyph(Matrix m, PDFont font, int code, Vector advance) throws IOException {
            letters.add(
                    new FontLetters(font).letter(code),
                    advance.getX(),
                    1,
                    m.getScaleX(),
                    m.getShearY(),
                    m.getShearX(),
                    m.getScaleY(),
                    m.getTranslateX(),
                    m.getTranslateY(),
                    piece);
        }
    }
}
