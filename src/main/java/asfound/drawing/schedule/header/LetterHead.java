package asfound.drawing.schedule.header;

import asfound.drawing.schedule.phrase.Phrase;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The head of a letter or memorandum above a directory: {@code To:}, {@code From:}, {@code Re:}. It says who wrote to whom, and
 * nothing of what feeds the panel.
 */
final class LetterHead {

    private static final Pattern LINE =
            Pattern.compile("(?:to|from|re|subject|subj|attn|attention|cc|memo)\\s*:.*", Pattern.CASE_INSENSITIVE);
    private static final Pattern TELLING =
            Pattern.compile("(?:to|re|subject|subj|attn|attention|cc)\\s*:.*", Pattern.CASE_INSENSITIVE);

    private LetterHead() {}

    /** Takes the lines of such a head out; nothing where there is none. */
    static void removeFrom(List<Phrase> phrases) {
        if (phrases.stream().anyMatch(p -> TELLING.matcher(p.text()).matches()))
            phrases.removeIf(p -> LINE.matcher(p.text()).matches());
    }
}
