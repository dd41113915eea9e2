package asfound.names;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What has been read of a description so far. Unknown words wait until it shows whether they name a room. */
final class DescriptionDraft {

    private final Vocabulary vocabulary;
    private final Set<Description.Tag> tags = new LinkedHashSet<>();
    private final Set<String> numbers = new LinkedHashSet<>();
    private final Set<String> loads = new LinkedHashSet<>();
    private final Set<String> places = new LinkedHashSet<>();
    private final Set<String> directions = new LinkedHashSet<>();
    private final Set<String> details = new LinkedHashSet<>();
    private final Set<String> words = new LinkedHashSet<>();
    private final Set<String> roomWords = new LinkedHashSet<>();
    private final List<String> waiting = new ArrayList<>();

    DescriptionDraft(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    Description done(String key, FixedForms fixed, String vacancy) {
        keepWords();
        return new Description(
                key,
                Set.copyOf(tags),
                Set.copyOf(numbers),
                Set.copyOf(fixed.floors()),
                Set.copyOf(fixed.quantities()),
                Set.copyOf(loads),
                Set.copyOf(places),
                Set.copyOf(directions),
                Set.copyOf(details),
                Set.copyOf(words),
                Set.copyOf(roomWords),
                vacancy);
    }

    /** A word that is not known. */
    void word(String word) {
        waiting.add(word);
    }

    /** A room follows, or a place: the words before it are its name. */
    void nameRoom() {
        roomWords.addAll(waiting);
        waiting.clear();
    }

    private void keepWords() {
        words.addAll(waiting);
        waiting.clear();
    }

    /** The number of a room that was said to be one. */
    void roomNumber(String number) {
        numbers.add(number);
    }

    /** A number on its own, most likely of a room. */
    void number(String number) {
        numbers.add(number);
        nameRoom();
    }

    /** A thing with its number: {@code ELEVATOR 2}. */
    void numbered(String thing, String number) {
        tags.add(new Description.Tag("", "", Set.of(thing + "#" + number)));
    }

    /** Letters that are a panel's whole name. */
    void named(String letters) {
        tags.add(new Description.Tag(letters, letters, Set.of()));
    }

    /**
     * A tag.
     *
     * @param letters those it begins with; empty where it begins with a digit
     */
    void tag(String text, String letters) {
        String number = text.substring(Math.min(letters.length(), text.length()));
        Set<String> meanings = new LinkedHashSet<>();
        for (String m : vocabulary.ofMark(letters)) meanings.add(m + "#" + number);
        tags.add(new Description.Tag(text, letters, Set.copyOf(meanings)));
        keepWords();
    }

    void place(String name) {
        places.add(name);
        nameRoom();
    }

    void direction(String name) {
        directions.add(name);
    }

    void detail(String name) {
        details.add(name);
    }

    /** What is served, and where if its name tells that too. */
    void load(Vocabulary.Meaning meaning) {
        boolean told = !meaning.area().isEmpty();
        loads.add(told ? meaning.wider() : meaning.name());
        if (told) places.add(meaning.area());
        keepWords();
    }
}
