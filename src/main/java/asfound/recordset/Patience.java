package asfound.recordset;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Callable;

/** Runs a piece of work that may never end. */
public final class Patience {

    private Patience() {}

    /** The work was given up; nobody waits for it any more. */
    public static final class GivenUpException extends RuntimeException {
        private static final long serialVersionUID = 1L;

        GivenUpException() {
            super("given up: it took too long");
        }
    }

    /**
     * Runs the work, and gives it up after the time. Work that was given up ends at its next {@link #check}; where it has
     * none it goes on in a thread that does not keep the process alive, and whatever it still does is not looked at.
     *
     * @return what the work gave; empty where it was given up
     * @throws Exception what the work threw
     */
    public static <T> Optional<T> within(Duration time, Callable<T> work) throws Exception {
        try (PatientThread thread = new PatientThread()) {
            return thread.within(time, work);
        }
    }

    /**
     * To be called now and then by work that can take long.
     *
     * @throws GivenUpException where it has been given up
     */
    public static void check() {
        if (Thread.currentThread().isInterrupted()) throw new GivenUpException();
    }
}
