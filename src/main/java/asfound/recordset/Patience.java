package asfound.recordset;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicReference;

/** Runs a piece of work that may never end. */
public final class Patience {

    /** The work's own stack: nested content may go deep. */
    private static final long STACK = 16L << 20;

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
        AtomicReference<T> result = new AtomicReference<>();
        AtomicReference<Throwable> failure = new AtomicReference<>();
        Thread thread = new Thread(
                null,
                () -> {
                    try {
                        result.set(work.call());
                    } catch (Exception | Error e) {
                        failure.set(e);
                    }
                },
                "patience",
                STACK);
        thread.setDaemon(true);
        thread.start();
        try {
            thread.join(Math.max(1, time.toMillis()));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        if (thread.isAlive()) {
            thread.interrupt();
            return Optional.empty();
        }
        if (failure.get() instanceof GivenUpException) return Optional.empty();
        if (failure.get() instanceof Error error) throw error;
        if (failure.get() instanceof Exception exception) throw exception;
        return Optional.ofNullable(result.get());
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
