package asfound.drawing.schedule;

import asfound.drawing.page.Word;
import java.util.ArrayList;
import java.util.List;

/** The words of a phrase as labels and values need them: parted after a colon that has no space behind it. */
final class HeaderWords {

    private HeaderWords() {}

    static List<String> of(Phrase phrase) {
        List<String> out = new ArrayList<>();
        for (Word w : phrase.words()) for (String part : w.text().split("(?<=[:=])(?=[^\\s:=])")) out.add(part);
        return out;
    }
}
