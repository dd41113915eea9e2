package asfound.recordset;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Runs pieces of work that may never end, one after another in one thread. Work that takes too long is given up together
 * with its thread, and the next one runs in a new one.
 */
public final class PatientThread implements AutoCloseable {

    /** The work's own stack: nested content may go deep. */
    private static final long STACK = 16L << 20;

    /** A thread with what it is to do next. */
    private static final class Worker extends Thread {
        private final SynchronousQueue<FutureTask<?>> next = new SynchronousQueue<>();

        Worker() {
            super(null, null, "patience", STACK);
            setDaemon(true);
        }

        @Override
        public void run() {
            try {
                while (true) next.take().run();
            } catch (InterruptedException over) {
                // given up, or nobody has any more work
            }
        }
    }

    private Worker worker;

    /**
     * Runs the work, and gives it up after the time. Work that was given up ends at its next {@link Patience#check}; where it
     * has none it goes on in a thread that does not keep the process alive, and whatever it still does is not looked at.
     *
     * @return what the work gave; empty where it was given up
     * @throws Exception what the work threw
     */
    public <T> Optional<T> within(Duration time, Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work);
        if (worker == null) {
            worker = new Worker();
            worker.start();
        }
        try {
            worker.next.put(task);
            return Optional.ofNullable(task.get(Math.max(1, time.toMillis()), TimeUnit.MILLISECONDS));
        } catch (TimeoutException late) {
            giveUp();
            return Optional.empty();
        } catch (InterruptedException interrupted) {
            giveUp();
            Thread.currentThread().interrupt();
            return Optional.empty();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Patience.GivenUpException) return Optional.empty();
            if (e.getCause() instanceof Error error) throw error;
            throw (Exception) e.getCause();
        }
    }

    private void giveUp() {
        worker.interrupt();
        worker = null;
    }

    @Override
    public void close() {
        if (worker != null) giveUp();
    }
}
