package asfound.names;

/** Whether two texts mean one thing. */
public enum Sameness {
    SAME,
    DIFFERENT,
    /** Goes to a person with both texts, and raises no alarm. */
    UNCLEAR
}
