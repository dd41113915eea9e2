package asfound.drawing.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfparser.PDFStreamParser;

/**
 * Takes a page's content apart into numbers, texts and instructions. What content mostly consists of is taken straight from
 * its bytes; at whatever is out of the ordinary the library's parser takes its place, so that everything means what it does
 * there.
 */
final class ContentParser extends PDFStreamParser {

    /** So many digits are a whole number that a double holds exactly, and so is the power of ten under them. */
    private static final int MOST_DIGITS = 15;

    private static final double[] TENS = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };
    private static final int SLOTS = 256;

    private final byte[] bytes;
    private int at;
    /** The library's parser asks for the tokens of a picture's description itself. */
    private boolean lent;

    /** The instructions met last, by their bytes: content repeats a few. */
    private final Operator[] known = new Operator[SLOTS];

    private final int[] knownBytes = new int[SLOTS];

    ContentParser(byte[] bytes) {
        super(bytes);
        this.bytes = bytes;
    }

    @Override
    public Object parseNextToken() throws IOException {
        if (lent) return super.parseNextToken();
        at = skipBlanks(at);
        if (at == bytes.length) return null;
        int from = at;
        Object token = token();
        return token != null ? token : unusual(from);
    }

    private Object unusual(int from) throws IOException {
        lent = true;
        source.seek(from);
        Object token = super.parseNextToken();
        at = source.isClosed() ? bytes.length : (int) source.getPosition();
        lent = false;
        return token;
    }

    /** The token at the place, which then lies behind it; null where it is out of the ordinary. */
    private Object token() {
        int c = bytes[at];
        if (c == '/') return name();
        if (c == '[') return array();
        return isOfInstruction(c) ? instruction() : numberOrText(false);
    }

    private COSBase numberOrText(boolean inArray) {
        int c = bytes[at];
        if (c == '(') return text();
        return c >= '0' && c <= '9' || c == '-' || c == '.' ? number(inArray) : null;
    }

    private COSBase number(boolean inArray) {
        int i = at, digits = 0, behindPoint = 0;
        long value = 0;
        boolean negative = bytes[i] == '-', point = false;
        if (negative) i++;
        for (; i < bytes.length; i++) {
            int c = bytes[i];
            if (c >= '0' && c <= '9') {
                if (++digits > MOST_DIGITS) return null;
                value = value * 10 + c - '0';
                if (point) behindPoint++;
            } else if (c == '.' && !point) point = true;
            else break;
        }
        if (digits == 0 || i == bytes.length || goesOn(bytes[i], inArray)) return null;
        double size = value / TENS[behindPoint];
        if (point && isBetweenFloats(size)) return null;
        at = i;
        if (!point) return COSInteger.get(negative ? -value : value);
        return new COSFloat((float) (negative && value != 0 ? -size : size));
    }

    /** Right in the middle between two floats, where it cannot be told any more on which side the written number lies. */
    private static boolean isBetweenFloats(double number) {
        return (Double.doubleToRawLongBits(number) & 0x1FFF_FFFF) == 0x1000_0000;
    }

    /** What the library would take for a part of the number yet. */
    private static boolean goesOn(int c, boolean inArray) {
        return c == '-' || inArray && (c == '.' || c == '+' || c == 'e' || c == 'E');
    }

    private COSString text() {
        for (int i = at + 1; i < bytes.length; i++) {
            int c = bytes[i];
            if (c == '\\' || c == '(') return null;
            if (c != ')') continue;
            COSString text = new COSString(Arrays.copyOfRange(bytes, at + 1, i));
            at = i + 1;
            return text;
        }
        return null;
    }

    private COSName name() {
        for (int i = at + 1; i < bytes.length; i++) {
            if (bytes[i] == '#') return null;
            if (!isEndOfName(bytes[i] & 0xFF)) continue;
            COSName name = COSName.getPDFName(Arrays.copyOfRange(bytes, at + 1, i));
            at = i;
            return name;
        }
        return null;
    }

    /** Of numbers and texts alone, as they are shown with gaps of their own. */
    private COSArray array() {
        COSArray array = new COSArray();
        for (at = skipBlanks(at + 1); at < bytes.length; at = skipBlanks(at)) {
            if (bytes[at] == ']') {
                at++;
                return array;
            }
            COSBase next = numberOrText(true);
            if (next == null) return null;
            array.add(next);
        }
        return null;
    }

    /** Of up to three letters with a blank behind them; pictures within the content are left to the library. */
    private Operator instruction() {
        int i = at, packed = 0;
        for (; i < bytes.length && isOfInstruction(bytes[i]); i++) packed = packed << 8 | bytes[i];
        if (i - at > 3 || i == bytes.length || !isBlank(bytes[i])) return null;
        if (bytes[at] == 'I' || packed == ('B' << 8 | 'I')) return null;
        int slot = (packed ^ packed >> 7) & SLOTS - 1;
        if (knownBytes[slot] != packed) {
            known[slot] = Operator.getOperator(new String(bytes, at, i - at, StandardCharsets.US_ASCII));
            knownBytes[slot] = packed;
        }
        at = i;
        return known[slot];
    }

    private static boolean isOfInstruction(int c) {
        return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c == '*' || c == '\'' || c == '"';
    }

    private int skipBlanks(int from) {
        int i = from;
        while (i < bytes.length && isBlank(bytes[i])) i++;
        return i;
    }

    private static boolean isBlank(int c) {
        return c == ' ' || c == '\n' || c == '\r' || c == '\t' || c == '\f' || c == 0;
    }
}
