package asfound.names;

import asfound.model.Place;

/**
 * A name as it stands in one place.
 *
 * @param raw the text as it stands
 * @param place where
 * @param names it stands where a name must stand (a directory's designation, a one-line's {@code from}, {@code to} or
 *     {@code name}, a survey's {@code panel}), not in a free description or a 'fed from' text, which may name other things
 *     too. Only these make names
 * @param drawn a drawing says it, not a surveyor
 */
public record Written(String raw, Place place, boolean names, boolean drawn) {

    /** A name on a drawing, or in a description of one. */
    public Written(String raw, Place place, boolean names) {
        this(raw, place, names, true);
    }

    public static Written drawn(String raw, Place place) {
        return new Written(raw, place, true, true);
    }

    public static Written surveyed(String raw, Place place) {
        return new Written(raw, place, true, false);
    }

    /** In a free description, drawn or surveyed: makes no name, and is listed as a way of writing where it means one. */
    public static Written described(String raw, Place place) {
        return new Written(raw, place, false, false);
    }
}
