package asfound.drawing.schedule.phrase;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.page.Word;
import asfound.drawing.schedule.text.Role;
import asfound.model.Box;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What texts mean is kept from sheet to sheet, and never more of it than there is room for. */
class KnownTextsTest {

    private final KnownTexts known = new KnownTexts();

    @Test
    void a_text_that_stands_on_the_next_sheet_too_is_not_looked_at_again() {
        KnownText heading = known.of("CKT NO");
        new Meanings(known);
        assertThat(known.of("CKT NO")).isSameAs(heading);
        assertThat(heading.weights()).containsEntry(Role.POSITION, 1.0).isSameAs(heading.weights());
    }

    @Test
    void a_file_of_many_sheets_does_not_fill_the_memory_with_its_texts() {
        KnownText heading = known.of("CKT NO");
        for (int way = 1; way <= 30_000; way++) known.of("Heat trace cable of vessel " + way);
        // within a sheet all is kept
        assertThat(known.of("CKT NO")).isSameAs(heading);
        Meanings next = new Meanings(known);
        assertThat(known.of("CKT NO")).isNotSameAs(heading);
        assertThat(next.weight("CKT NO", Role.POSITION)).isEqualTo(1);
    }

    @Test
    void a_sheet_says_the_same_of_a_text_whether_another_held_it_or_not() {
        Meanings first = new Meanings(known), second = new Meanings(known), alone = new Meanings(new KnownTexts());
        for (String text : new String[] {"PANEL LP-2A", "LOAD SERVED", "225A BUS", "Voltage:", "LP-2A (SECTION 2)"}) {
            assertThat(first.name(phrase(text))).isEqualTo(alone.name(phrase(text)));
            assertThat(second.name(phrase(text))).isEqualTo(alone.name(phrase(text)));
            assertThat(second.weigh(text)).isEqualTo(alone.weigh(text));
            assertThat(second.saysItself(phrase(text))).isEqualTo(alone.saysItself(phrase(text)));
            assertThat(second.isLabelOfValue(phrase(text))).isEqualTo(alone.isLabelOfValue(phrase(text)));
            assertThat(second.bareName(text)).isEqualTo(alone.bareName(text));
        }
        assertThat(second.name(phrase("PANEL LP-2A"))).contains("LP-2A");
        assertThat(second.bareName("LP-2A (SECTION 2)")).isEqualTo("LP-2A");
        assertThat(second.saysItself(phrase("225A BUS"))).isTrue();
        assertThat(second.isLabelOfValue(phrase("Voltage:"))).isTrue();
    }

    /** A new one each time: a phrase of one sheet knows what that sheet's texts mean. */
    private static Phrase phrase(String text) {
        List<Word> words = new ArrayList<>();
        for (String word : text.split(" ")) words.add(new Word(word, new Box(50 * words.size(), 10, 45, 10), 10, true));
        return Phrase.of(words);
    }
}
