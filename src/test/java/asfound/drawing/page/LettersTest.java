package asfound.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a font says of a letter, as a person reads it. */
class LettersTest {

    @ParameterizedTest
    @CsvSource({
        "A, A",
        "\uFB01, fi",
        "\u2013, \u2013",
        "\u2212, -",
        // f and i with the bytes of each exchanged
        "\u6600\u6900, fi",
        "\u6600\u6600\u6C00, ffl",
        // one letter alone may be of another script
        "\u6600, \u6600",
        "\u6600\u6901, \u6600\u6901"
    })
    void isMadePlain(String told, String read) {
        assertThat(Letters.tidy(told)).isEqualTo(read);
    }
}
