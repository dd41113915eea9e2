package asfound.drawing.schedule;

import java.time.Duration;

/** Runs a piece of work that may never end. */
final class Patience {

    /** The work's own stack: nested content may go deep. */
    private static final long STACK = 16L << 20;

    private Patience() {}

    /**
     * Runs the work, and gives it up after the time. What is given up goes on in a thread that does not keep the process
     * alive, and whatever it still does is not looked at.
     *
     * @return whether the work came to its end
     */
    static boolean within(Duration time, Runnable work) {
        Thread thread = new Thread(null, work, "reading", STACK);
        thread.setDaemon(true);
        thread.start();
        try {
            thread.join(time.toMillis() + 2_000); // the work looks at the time itself and mostly ends first
            if (!thread.isAlive()) return true;
            thread.interrupt();
            return false;
        } catch (InterruptedException e) {
            thread.interrupt();
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
