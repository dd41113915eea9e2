package asfound.drawing.page;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.util.Optional;

/** What a page's content unpacks to, kept from the look at it so that it need not be unpacked once more. */
final class Unpacked extends OutputStream {

    /** In bytes; the pages of a set have a hundredth of it. What goes beyond is not held in memory. */
    private static final int MOST = 8 << 20;

    private final ByteArrayOutputStream kept = new ByteArrayOutputStream(1 << 14);
    private boolean whole = true;

    @Override
    public void write(int b) {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] b, int from, int length) {
        if (kept.size() + (long) length > MOST) drop();
        if (whole) kept.write(b, from, length);
    }

    /** Not to be kept. */
    void drop() {
        whole = false;
        kept.reset();
    }

    Optional<byte[]> bytes() {
        return whole ? Optional.of(kept.toByteArray()) : Optional.empty();
    }
}
