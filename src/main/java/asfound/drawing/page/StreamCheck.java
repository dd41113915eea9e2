package asfound.drawing.page;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.HashSet;
import java.util.Set;
import java.util.zip.InflaterInputStream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.filter.Filter;
import org.apache.pdfbox.filter.FilterFactory;

/**
 * Whether a stream of a page's content can be unpacked whole, through every layer in which it is packed. Readers of PDF
 * show as much of a damaged stream as they can and pass over the rest: the page would look as if there were nothing on it.
 */
final class StreamCheck {

    /** They pack pictures: nothing that a page consists of is written in them. */
    private static final Set<String> PICTURES =
            Set.of("DCTDecode", "DCT", "JPXDecode", "CCITTFaxDecode", "CCF", "JBIG2Decode");

    /** What a stream unpacks to is more than is let through. */
    static final class TooMuchException extends IOException {
        private static final long serialVersionUID = 1L;
    }

    /** Asked now and then, so that the look itself does not go on for ever. */
    interface Clock {
        void demandEnd() throws IOException;
    }

    private final Clock clock;
    private final long most;
    private long unpacked;

    /** @param most bytes to which all streams together may unpack */
    StreamCheck(long most, Clock clock) {
        this.most = most;
        this.clock = clock;
    }

    /**
     * Unpacks a stream and gives what it holds to the syntax.
     *
     * @return whether that came to its end without damage
     * @throws IOException where it holds too much or the time is over
     */
    boolean isWhole(COSStream stream, ContentSyntax syntax) throws IOException {
        return isWhole(stream, syntax, OutputStream.nullOutputStream());
    }

    /** The same; {@code copy} is given what there is until the damage. */
    boolean isWhole(COSStream stream, ContentSyntax syntax, OutputStream copy) throws IOException {
        try (InputStream content = unpacked(stream)) {
            byte[] buffer = new byte[1 << 14];
            for (int n = read(content, buffer); n >= 0; n = read(content, buffer)) {
                clock.demandEnd();
                unpacked += n;
                if (unpacked > most) throw new TooMuchException();
                syntax.add(buffer, n);
                copy.write(buffer, 0, n);
            }
            syntax.add(new byte[] {'\n'}, 1);
            return true;
        } catch (DamageException damaged) {
            return false;
        }
    }

    /** The stream's content is not as its packing says. */
    private static final class DamageException extends IOException {
        private static final long serialVersionUID = 1L;

        DamageException(Throwable cause) {
            super(cause);
        }

        DamageException(String message) {
            super(message);
        }
    }

    private static int read(InputStream in, byte[] buffer) throws DamageException {
        try {
            return in.read(buffer);
        } catch (IOException | RuntimeException e) {
            throw new DamageException(e);
        }
    }

    private InputStream unpacked(COSStream stream) throws IOException {
        try {
            InputStream in = stream.createRawInputStream();
            COSBase filters = stream.getFilters();
            Set<COSBase> met = new HashSet<>();
            int layers = filters instanceof COSArray all ? all.size() : filters == null ? 0 : 1;
            for (int i = 0; i < layers; i++) {
                COSBase name = filters instanceof COSArray all ? all.getObject(i) : filters;
                if (!(name instanceof COSName filter)) throw new DamageException("a layer without a name");
                // the library leaves out a layer that is like another one, and takes what is left for the content
                if (!met.add(filter)) throw new DamageException("packed twice in one way");
                in = layer(in, filter, stream, i);
            }
            return in;
        } catch (DamageException | TooMuchException e) {
            throw e;
        } catch (IOException | RuntimeException e) {
            throw new DamageException(e);
        }
    }

    private InputStream layer(InputStream in, COSName filter, COSStream stream, int index) throws IOException {
        if (PICTURES.contains(filter.getName())) throw new DamageException("packed as a picture");
        boolean deflated = filter.equals(COSName.FLATE_DECODE) || filter.equals(COSName.FLATE_DECODE_ABBREVIATION);
        if (deflated && !isPredicted(stream, index)) return new Strict(in);
        byte[] packed = in.readNBytes((int) Math.min(most + 1, Integer.MAX_VALUE - 64));
        if (packed.length > most) throw new TooMuchException();
        if (deflated) askForCheckSum(packed);
        Filter library = FilterFactory.INSTANCE.getFilter(filter);
        ByteArrayOutputStream out = new Bounded(most);
        library.decode(new ByteArrayInputStream(packed), out, stream, index);
        return new ByteArrayInputStream(out.toByteArray());
    }

    /** The library's own reading does not ask for it. */
    private static void askForCheckSum(byte[] packed) throws IOException {
        try (InputStream strict = new Strict(new ByteArrayInputStream(packed))) {
            strict.transferTo(OutputStream.nullOutputStream());
        }
    }

    /** Packed in no other way than deflated, with a prediction. */
    static boolean isPredictedAlone(COSStream stream) {
        return COSName.FLATE_DECODE.equals(stream.getFilters()) && isPredicted(stream, 0);
    }

    private static boolean isPredicted(COSStream stream, int index) {
        COSBase all = stream.getDictionaryObject(COSName.DECODE_PARMS, COSName.DP);
        COSBase own = all instanceof COSArray several ? several.getObject(index) : all;
        return own instanceof COSDictionary parameters && parameters.getInt(COSName.PREDICTOR, 1) > 1;
    }

    /** Inflates, and wants the end and its check sum (RFC 1950); nothing at all holds nothing. */
    private static final class Strict extends InflaterInputStream {
        private final FilterInputStream packed;

        Strict(InputStream in) {
            this(new Counted(in));
        }

        private Strict(Counted in) {
            super(in);
            this.packed = in;
        }

        @Override
        public int read(byte[] b, int off, int len) throws IOException {
            try {
                return super.read(b, off, len);
            } catch (EOFException e) {
                if (((Counted) packed).any) throw e;
                return -1;
            }
        }

        @Override
        public void close() throws IOException {
            inf.end();
            super.close();
        }
    }

    private static final class Counted extends FilterInputStream {
        boolean any;

        Counted(InputStream in) {
            super(in);
        }

        @Override
        public int read(byte[] b, int off, int len) throws IOException {
            int n = super.read(b, off, len);
            any |= n > 0;
            return n;
        }
    }

    private static final class Bounded extends ByteArrayOutputStream {
        private final long most;

        Bounded(long most) {
            this.most = most;
        }

        @Override
        public synchronized void write(byte[] b, int off, int len) {
            if (count + (long) len > most) throw new IllegalStateException("unpacks to too much");
            super.write(b, off, len);
        }
    }
}
