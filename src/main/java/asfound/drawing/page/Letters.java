package asfound.drawing.page;

import asfound.recordset.Unshowable;

/** Letters as a person reads them: ligatures taken apart, every kind of space and minus made plain. */
final class Letters {

    private Letters() {}

    static String tidy(String text) {
        if (text.length() == 1 && text.charAt(0) > ' ' && text.charAt(0) < 127) return text;
        StringBuilder out = new StringBuilder();
        if (text.length() > 1 && isSwapped(text)) return swapped(text);
        text.codePoints().forEach(c -> letter(c, out));
        return out.isEmpty() ? Glyph.UNKNOWN : out.toString();
    }

    /** A ligature whose letters were written with the bytes of each exchanged, as some programs that distil PDFs do. */
    private static boolean isSwapped(String text) {
        return text.chars().allMatch(c -> (c & 0xFF) == 0 && c >> 8 > ' ' && c >> 8 < 127);
    }

    private static String swapped(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.chars().forEach(c -> out.append((char) (c >> 8)));
        return out.toString();
    }

    private static void letter(int c, StringBuilder out) {
        switch (c) {
            case 0xA0, 0x2002, 0x2003, 0x2007, 0x2009, 0x200A, 0x202F, '\t', '\n', '\r' -> out.append(' ');
            case 0xAD, 0x2010, 0x2011, 0x2212 -> out.append('-');
            case 0x2018, 0x2019 -> out.append('\'');
            case 0x201C, 0x201D -> out.append('"');
            case 0xFB00 -> out.append("ff");
            case 0xFB01 -> out.append("fi");
            case 0xFB02 -> out.append("fl");
            case 0xFB03 -> out.append("ffi");
            case 0xFB04 -> out.append("ffl");
            case 0x200B, 0xFEFF -> out.append("");
            default ->
                out.append(Character.isISOControl(c) || Unshowable.is(c) ? Glyph.UNKNOWN : Character.toString(c));
        }
    }
}
