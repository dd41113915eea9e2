package asfound.report.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** Bytes in memory, up to a limit. */
final class BoundedBytes extends OutputStream {

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final long most;

    BoundedBytes(long most) {
        this.most = Math.min(most, Integer.MAX_VALUE - 64L);
    }

    @Override
    public void write(int b) throws IOException {
        demand(1);
        bytes.write(b);
    }

    @Override
    public void write(byte[] from, int offset, int length) throws IOException {
        demand(length);
        bytes.write(from, offset, length);
    }

    private void demand(int more) throws IOException {
        if (bytes.size() + (long) more > most) throw new IOException(tooMuch(most));
    }

    static String tooMuch(long most) {
        return "the copy asks for more than " + most + " bytes, the limit for expanded content";
    }

    byte[] toByteArray() {
        return bytes.toByteArray();
    }
}
