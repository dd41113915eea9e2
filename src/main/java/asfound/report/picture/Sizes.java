package asfound.report.picture;

import asfound.network.Standing;
import asfound.report.picture.Picture.Form;

/** Sizes of what is drawn, in the picture's units. Fonts are the reader's own, so widths of text are taken generously. */
final class Sizes {

    /** Longest name shown in full in the picture; a longer one is given in full where it is opened. */
    static final int NAME_CHARS = 26;

    static final double NAME_CHAR = 8.6, DETAIL_CHAR = 6.6;
    static final double SYMBOL = 40, PORT_PITCH = 36, BOX_HEIGHT = 48, PAD = 12, MARK = 26;

    /** A character on a line, plain and in the weight of what differs. */
    static final double LABEL_CHAR = 7, WORD_CHAR = 7.6;

    /** Between a device and the box that it sits in, and from the device to where its label begins. */
    static final double DEVICE = 18, LABEL = 11;

    private Sizes() {}

    static double label(String text) {
        return text.length() * LABEL_CHAR;
    }

    /** Of the word that says how a connection stands; it is centred on its mark, which has a width of its own. */
    static double word(Standing standing) {
        return Math.max(18, Standings.tag(standing).length() * WORD_CHAR);
    }

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
                    case TIE -> SYMBOL + 6 + text;
                    case REFERENCE -> text + 2 * PAD + 10;
                });
    }
}
