package asfound.report.picture;

import asfound.report.picture.Picture.Form;

/** Sizes of what is drawn, in the picture's units. Fonts are the reader's own, so widths of text are taken generously. */
final class Sizes {

    /** Longest name shown in full in the picture; a longer one is given in full where it is opened. */
    static final int NAME_CHARS = 26;

    static final double NAME_CHAR = 8.6, DETAIL_CHAR = 6.6;
    static final double SYMBOL = 40, PORT_PITCH = 34, BOX_HEIGHT = 48, PAD = 12, MARK = 26;

    private Sizes() {}

    /** As much of a name as the picture has room for. */
    static String fit(String name) {
        if (name.length() <= NAME_CHARS) return name;
        int cut = Character.isHighSurrogate(name.charAt(NAME_CHARS - 1)) ? NAME_CHARS - 1 : NAME_CHARS;
        return name.substring(0, cut) + "…";
    }

    static double width(Form form, String name, String detail, boolean icon, boolean mark) {
        double text = Math.max(Math.min(name.length(), NAME_CHARS + 1) * NAME_CHAR, detail.length() * DETAIL_CHAR);
        return Math.ceil(
                switch (form) {
                    case BOX -> PAD + (mark ? MARK : 0) + (icon ? SYMBOL + 8 : 0) + text + PAD + 8;
                    case IN_LINE -> Math.max(SYMBOL, text + (mark ? MARK : 0) + 8);
                    case TIE -> SYMBOL;
                    case REFERENCE -> text + 2 * PAD + 10;
                });
    }
}
