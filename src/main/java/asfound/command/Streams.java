package asfound.command;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** Standard output and error in the terminal's own encoding; UTF-8 where they are no terminal. */
final class Streams {

    private Streams() {}

    static PrintWriter out() {
        return writer(System.out);
    }

    static PrintWriter err() {
        return writer(System.err);
    }

    /** What standard output can show. */
    static Charset charset() {
        if (System.console() == null) return StandardCharsets.UTF_8;
        String name = System.getProperty("stdout.encoding", System.getProperty("native.encoding", "UTF-8"));
        try {
            return Charset.forName(name);
        } catch (IllegalArgumentException e) {
            return StandardCharsets.UTF_8;
        }
    }

    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(stream, false, charset());
    }
}
