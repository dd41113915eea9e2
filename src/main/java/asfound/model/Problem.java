package asfound.model;

/**
 * Something in the record set that could not be read or understood. A problem is about the input; what differs between
 * paper and building is a finding, and is never mixed with these.
 *
 * @param place where it is
 * @param message what is wrong, as a sentence
 * @param remedy what the user can do about it, as a sentence
 */
public record Problem(Place place, String message, String remedy) implements Comparable<Problem> {

    /** The whole problem in one line, beginning with the place. */
    public String inWords() {
        return place.inWords() + ": " + message + (remedy.isEmpty() ? "" : " " + remedy);
    }

    @Override
    public int compareTo(Problem other) {
        int byPlace = place.compareTo(other.place);
        return byPlace != 0 ? byPlace : message.compareTo(other.message);
    }
}
