package asfound.names;

import java.util.Set;
import java.util.stream.Stream;

/**
 * A circuit description taken apart, made once for each text and then compared often.
 *
 * @param key the text's words in order without case and punctuation
 * @param tags the tags and numbered things it names: {@code EF-1}, {@code ELEVATOR 2}
 * @param numbers rooms, bays and other numbers
 * @param floors floors
 * @param quantities numbers that count
 * @param loads what is served, by the names of their meanings
 * @param places where, by the names of their meanings
 * @param directions which side
 * @param details what else tells circuits of one place apart
 * @param words words that the table does not know
 * @param roomWords such words that stand before a room or place, and are likely its name
 * @param vacancy SPARE or SPACE where that is all it says
 */
record Description(
        String key,
        Set<Tag> tags,
        Set<String> numbers,
        Set<String> floors,
        Set<String> quantities,
        Set<String> loads,
        Set<String> places,
        Set<String> directions,
        Set<String> details,
        Set<String> words,
        Set<String> roomWords,
        String vacancy) {

    /**
     * A tag, or a thing with its number.
     *
     * @param text letters and digits of a tag; empty for a thing with its number
     * @param letters the tag's letters
     * @param meanings what it may be, each with its number: {@code EXHAUST FAN#1}
     */
    record Tag(String text, String letters, Set<String> meanings) {

        /** What it may be, without its number. */
        Stream<String> things() {
            return meanings.stream().map(m -> m.substring(0, m.lastIndexOf('#')));
        }

        boolean matches(Tag other) {
            if (!text.isEmpty() && !other.text.isEmpty()) return text.equals(other.text);
            for (String m : meanings) if (other.meanings.contains(m)) return true;
            return false;
        }
    }

    /** Says nothing specific: blank, or only words such as EQUIPMENT or UNKNOWN. */
    boolean saysNothing() {
        return tags.isEmpty()
                && numbers.isEmpty()
                && loads.isEmpty()
                && places.isEmpty()
                && words.isEmpty()
                && roomWords.isEmpty()
                && vacancy.isEmpty();
    }

    boolean hasRoomNumber() {
        for (String n : numbers) if (n.length() >= 3) return true;
        return false;
    }
}
