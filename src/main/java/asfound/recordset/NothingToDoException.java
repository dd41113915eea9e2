package asfound.recordset;

/** Nothing can be done at all. The message says why and what to do, in one line. */
public final class NothingToDoException extends Exception {

    private static final long serialVersionUID = 1L;

    public NothingToDoException(String message) {
        super(message);
    }
}
