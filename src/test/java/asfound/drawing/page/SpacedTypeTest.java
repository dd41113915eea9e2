package asfound.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Box;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words set letter by letter, and words that have one letter each. */
class SpacedTypeTest {

    private static final double SIZE = 10;

    /** Each letter in a word of its own, with the space between them that letters have. */
    private static List<String> joined(String letters) {
        List<Word> words = new ArrayList<>();
        double x = 40;
        for (String letter : letters.split(" ")) {
            words.add(new Word(letter, new Box(x, 100, 6, SIZE), SIZE, true));
            x += 6 + 3;
        }
        return SpacedType.joined(words).stream().map(Word::text).toList();
    }

    @ParameterizedTest
    @CsvSource({"P A N E L,PANEL", "L P - 1 2,LP-12", "H - 1 2,H-12"})
    void letters_set_apart_are_one_word(String letters, String word) {
        assertThat(joined(letters)).containsExactly(word);
    }

    @ParameterizedTest
    @CsvSource({"1 & 2 -", "3 - 4 /"})
    void figures_between_marks_stay_words_of_their_own(String letters) {
        assertThat(joined(letters)).containsExactly(letters.split(" "));
    }
}
