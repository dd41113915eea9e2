package asfound.model;

import java.util.Optional;
import java.util.function.Function;

/**
 * What a drawing or a surveyor states in one place: the value as understood beside the text as it stands there.
 *
 * <p>There are three cases, and they are never mixed: <em>stated</em> (text and value), <em>blank</em> (nothing stands
 * there), and <em>unreadable</em> (something stands there that could not be understood; the value is empty, the raw text
 * is not, or the place alone is known).
 *
 * @param value the value as understood; empty where blank or unreadable
 * @param raw the text as it stands, untouched; empty where blank
 * @param place where it stands; for a blank value the place where it would stand, if known
 */
public record Stated<T>(Optional<T> value, String raw, Optional<Place> place) {

    public Stated {
        if (raw == null) throw new IllegalArgumentException("raw text is missing");
    }

    public static <T> Stated<T> of(T value, String raw, Place place) {
        return new Stated<>(Optional.of(value), raw, Optional.ofNullable(place));
    }

    /** A text that stands for itself. */
    public static Stated<String> text(String raw, Place place) {
        String tidy = Blanks.single(raw.strip());
        return tidy.isEmpty() ? blank(place) : of(tidy, raw, place);
    }

    public static <T> Stated<T> blank() {
        return new Stated<>(Optional.empty(), "", Optional.empty());
    }

    public static <T> Stated<T> blank(Place place) {
        return new Stated<>(Optional.empty(), "", Optional.ofNullable(place));
    }

    public static <T> Stated<T> unreadable(String raw, Place place) {
        return new Stated<>(Optional.empty(), raw.isBlank() ? "?" : raw, Optional.ofNullable(place));
    }

    public boolean isBlank() {
        return raw.isBlank();
    }

    public boolean isStated() {
        return value.isPresent();
    }

    /** Something stands there, and it could not be understood. Never to be taken as 'nothing'. */
    public boolean isUnreadable() {
        return value.isEmpty() && !raw.isBlank();
    }

    public T or(T other) {
        return value.orElse(other);
    }

    /** The same statement with its value understood further; unreadable where {@code reading} gives nothing. */
    public <U> Stated<U> read(Function<T, Optional<U>> reading) {
        return new Stated<>(value.flatMap(reading), raw, place);
    }
}
