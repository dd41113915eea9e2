package asfound.drawing.page;

import asfound.model.Box;
import java.util.ArrayList;
import java.util.List;

/** The letters of one page as they are shown: what each says, how large it is and where it stands. */
final class PlacedLetters {

    private static final double SMALLEST = 0.2;

    private final Displayed page;
    private final List<Glyph> all = new ArrayList<>();
    private final AskewTexts askew = new AskewTexts();
    private int drawn;

    PlacedLetters(Displayed page) {
        this.page = page;
    }

    List<Glyph> all() {
        return all;
    }

    /** The texts that run neither across nor along the page. */
    List<Word> askew() {
        return askew.words();
    }

    /** How many there are, spaces left out. */
    int drawn() {
        return drawn;
    }

    /**
     * Takes in a letter, unless it is too small to be read or stands outside of the page; one that runs askew is kept apart.
     * The matrix {@code a b c d e f} leads from the letter's space to the page's own (ISO 32000-1, 9.4.4); it is reckoned with in single
     * precision, as the library does.
     *
     * @param advance to the next letter, in the letter's space
     * @param height of the letter's type there
     */
    void add(
            FontLetters.Letter letter,
            float advance,
            float height,
            float a,
            float b,
            float c,
            float d,
            float e,
            float f,
            int piece) {
        double x = page.shownX(e, f), y = page.shownY(e, f);
        double dx = page.shownX(a + e, b + f) - x, dy = page.shownY(a + e, b + f) - y;
        double upX = page.shownX(height * c + e, height * d + f) - x;
        double upY = page.shownY(height * c + e, height * d + f) - y;
        double size = Math.sqrt(upX * upX + upY * upY);
        if (size < SMALLEST || isNothing(dx, dy)) return;
        int quarters = quarters(dx, dy);
        float endX = advance * a + e, endY = advance * b + f;
        if (quarters < 0) {
            Box around = askew(x, y, page.shownX(endX, endY) - x, page.shownY(endX, endY) - y, upX, upY);
            if (isOnPage(around)) askew.add(new Glyph(letter.text(), letter.isSpace(), around, size, 0, piece));
            return;
        }
        Box box = box(x, y, page.shownX(endX, endY), page.shownY(endX, endY), size, quarters);
        if (!isOnPage(box)) return;
        all.add(new Glyph(letter.text(), letter.isSpace(), box, size, quarters, piece));
        if (!letter.isSpace()) drawn++;
    }

    private boolean isOnPage(Box box) {
        double x = box.centreX(), y = box.centreY();
        return x >= -1 && y >= -1 && x <= page.width() + 1 && y <= page.height() + 1;
    }

    /** Around a letter that runs askew from {@code x, y}, by its advance and its height. */
    private static Box askew(double x, double y, double alongX, double alongY, double upX, double upY) {
        double left = x + Math.min(0, alongX) + Math.min(0, upX), right = x + Math.max(0, alongX) + Math.max(0, upX);
        double top = y + Math.min(0, alongY) + Math.min(0, upY), foot = y + Math.max(0, alongY) + Math.max(0, upY);
        return new Box(left, top, right - left, foot - top);
    }

    private static boolean isNothing(double dx, double dy) {
        return Math.abs(dx) < 1e-6 && Math.abs(dy) < 1e-6 && Math.hypot(dx, dy) < 1e-6;
    }

    /** The direction in which a letter runs, as in {@link Turn}; -1 where it runs askew. */
    private static int quarters(double dx, double dy) {
        double across = Math.abs(dx), along = Math.abs(dy);
        if (along < 0.2 * across) return dx > 0 ? 0 : 2;
        if (across < 0.2 * along) return dy < 0 ? 1 : 3;
        return -1;
    }

    private static Box box(double x, double y, double endX, double endY, double size, int quarters) {
        double up = 0.75 * size, deep = 0.22 * size;
        double x0 = Math.min(x, endX), x1 = Math.max(x, endX);
        double y0 = Math.min(y, endY), y1 = Math.max(y, endY);
        return switch (quarters) {
            case 1 -> new Box(x - up, y0, up + deep, y1 - y0);
            case 2 -> new Box(x0, y - deep, x1 - x0, up + deep);
            case 3 -> new Box(x - deep, y0, up + deep, y1 - y0);
            default -> new Box(x0, y - up, x1 - x0, up + deep);
        };
    }
}
