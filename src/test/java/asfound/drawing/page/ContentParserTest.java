package asfound.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.junit.jupiter.api.Test;

/** The content of pages (ISO 32000-1, 7.8.2), taken apart as the library's own parser does. */
class ContentParserTest {

    private static final String[] PIECES = {
        "12",
        "-7",
        "0.5",
        "-.25",
        "4.",
        "0",
        "-0.0",
        "123456.789",
        "0.23921569",
        "16777217.0",
        "8388608.5",
        "1.2.3",
        "--5",
        "3-4",
        "+2",
        ".",
        "-",
        "1e3",
        "99999999999999999999",
        "0.00000000000000012345",
        "(PANEL)",
        "(LP-2A",
        "(a\\)b)",
        "(\\101\\7)",
        "(a(b)c)",
        ")",
        "<4142>",
        "<4",
        "[(A) -20 (B) 3.5]",
        "[(A) 1.2.3]",
        "[[(A)]]",
        "[",
        "]",
        "[ ]",
        "/F1",
        "/A#20B",
        "/",
        "/\u00ff",
        "<</MCID 3>>",
        "<<",
        ">>",
        "BT",
        "ET",
        "Tf",
        "Tj",
        "TJ",
        "T*",
        "'",
        "\"",
        "re",
        "f*",
        "n",
        "d0",
        "d1",
        "true",
        "false",
        "null",
        "nul",
        "BX",
        "BDC",
        "% remark\n",
        "BI /W 1 /H 1 ID x\nEI Q",
        "Q",
        "q",
        "{",
        "longword",
        "\0",
        "\u00e9"
    };
    private static final String[] BETWEEN = {" ", " ", " ", "\n", "\r\n", "", "\t", "  ", "\0"};

    @Test
    void every_piece_of_content_is_what_the_library_takes_it_for() throws IOException {
        for (String piece : PIECES)
            for (String end : BETWEEN) {
                String content = piece + end + "5 0 Td ";
                assertThat(ours(content)).as(content).isEqualTo(theirs(content));
            }
    }

    @Test
    void so_it_is_in_any_order() throws IOException {
        Random random = new Random(1);
        for (int i = 0; i < 20_000; i++) {
            StringBuilder content = new StringBuilder();
            for (int n = random.nextInt(12); n >= 0; n--)
                content.append(PIECES[random.nextInt(PIECES.length)]).append(BETWEEN[random.nextInt(BETWEEN.length)]);
            assertThat(ours(content.toString())).as("%d: %s", i, content).isEqualTo(theirs(content.toString()));
        }
    }

    @Test
    void numbers_are_rounded_as_the_library_rounds_them() throws IOException {
        Random random = new Random(2);
        for (int i = 0; i < 100_000; i++) {
            String digits = Long.toString(random.nextLong() >>> 1 + random.nextInt(60));
            int point = random.nextInt(digits.length() + 1);
            String number = digits.substring(0, point) + "." + digits.substring(point) + " ";
            assertThat(ours(number)).as(number).isEqualTo(theirs(number));
        }
    }

    private static List<String> ours(String content) throws IOException {
        return tokens(new ContentParser(content.getBytes(StandardCharsets.ISO_8859_1)));
    }

    private static List<String> theirs(String content) throws IOException {
        return tokens(new PDFStreamParser(content.getBytes(StandardCharsets.ISO_8859_1)));
    }

    private static List<String> tokens(PDFStreamParser parser) {
        List<String> tokens = new ArrayList<>();
        try {
            for (Object t = parser.parseNextToken(); t != null; t = parser.parseNextToken()) tokens.add(text(t));
        } catch (IOException e) {
            tokens.add("broken");
        }
        return tokens;
    }

    private static String text(Object token) {
        if (token instanceof COSFloat number) return "float " + Float.floatToIntBits(number.floatValue());
        if (token instanceof COSArray array)
            return array.toList().stream().map(ContentParserTest::text).toList().toString();
        if (token instanceof Operator o && o.getImageData() != null)
            return o + " " + o.getImageParameters() + Arrays.toString(o.getImageData());
        return token.toString();
    }
}
