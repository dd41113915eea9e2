package asfound.report.terminal;

import java.io.Console;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.LongSupplier;

/** What is being done and how far it is, in one line that is written over: on a terminal alone, silent anywhere else. */
public final class Progress implements AutoCloseable {

    private static final long PAUSE_NANOS = 100_000_000;

    private final PrintWriter terminal;
    private final Shown shown;
    private final LongSupplier nanos;
    private String stage = "";
    private long next;
    private int columns;

    private Progress(PrintWriter terminal, Shown shown, LongSupplier nanos) {
        this.terminal = terminal;
        this.shown = shown;
        this.nanos = nanos;
        this.next = nanos.getAsLong();
    }

    /** Writes to {@code err} where standard error is a terminal. */
    public static Progress on(PrintWriter err) {
        return isTerminal() ? on(err, System::nanoTime) : silent();
    }

    static Progress on(PrintWriter err, LongSupplier nanos) {
        return new Progress(err, Shown.in(StandardCharsets.US_ASCII), nanos);
    }

    public static Progress silent() {
        return on(null, () -> 0);
    }

    /** A stage has reached {@code done} of {@code total}; a total of 0 where it is not known. Shown ten times a second. */
    public void at(String stage, int done, int total) {
        if (terminal == null) return;
        long now = nanos.getAsLong();
        if (stage.equals(this.stage) && now - next < 0 && done != total) return;
        this.stage = stage;
        this.next = now + PAUSE_NANOS;
        write(shown.cut(stage + (total > 0 ? " " + done + " of " + total : ""), Shown.WIDTH - 1));
    }

    /** Clears the line. */
    @Override
    public void close() {
        if (terminal == null || columns == 0) return;
        write("");
        terminal.print('\r');
        terminal.flush();
    }

    private void write(String line) {
        terminal.print("\r" + line + " ".repeat(Math.max(0, columns - line.length())));
        terminal.flush();
        columns = line.length();
    }

    /** Standard error is a terminal: Linux tells of each stream, other systems of the process as a whole. */
    private static boolean isTerminal() {
        Path error = Path.of("/proc/self/fd/2");
        if (Files.exists(error)) {
            try {
                String target = Files.readSymbolicLink(error).toString();
                return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty") || target.equals("/dev/console");
            } catch (IOException e) {
                return false;
            }
        }
        return System.console() != null && saysSo(System.console());
    }

    /** Since Java 22 there is a console even where there is no terminal, and a method that tells. */
    private static boolean saysSo(Console console) {
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException e) {
            return true;
        } catch (ReflectiveOperationException e) {
            return false;
        }
    }
}
