package asfound.drawing.page;

import asfound.model.Box;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDSimpleFont;
import org.apache.pdfbox.pdmodel.font.PDType3Font;
import org.apache.pdfbox.pdmodel.font.encoding.GlyphList;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** The letters of one page as they are shown: what each says, how large it is and where it stands. */
final class PlacedLetters {

    private static final double SMALLEST = 0.2;
    /** So many are remembered: a page made to be hostile may show a million different ones. */
    private static final int MOST_KNOWN = 20_000;

    private final Displayed page;
    private final List<Glyph> all = new ArrayList<>();
    /** What each letter of a font says; the page's few fonts show the same ones again and again. */
    private final Map<PDFont, Map<Integer, String>> texts = new IdentityHashMap<>();

    private int known;

    PlacedLetters(Displayed page) {
        this.page = page;
    }

    List<Glyph> all() {
        return all;
    }

    /**
     * Takes in a letter, unless it is too small to be read, runs askew or stands outside of the page.
     *
     * @return whether it was taken in and is no space
     */
    boolean add(Matrix place, PDFont font, int code, Vector advance, int piece) {
        String text = textOf(font, code);
        Point2D origin = page.shown(place.transformPoint(0, 0));
        Point2D end = page.shown(place.transformPoint(advance.getX(), 0));
        Point2D right = page.shown(place.transformPoint(1, 0));
        Point2D above = page.shown(place.transformPoint(0, heightOf(font)));
        double size = origin.distance(above);
        double dx = right.getX() - origin.getX(), dy = right.getY() - origin.getY();
        if (size < SMALLEST || Math.hypot(dx, dy) < 1e-6) return false;
        int quarters = (int) Math.floorMod(Math.round(Math.atan2(-dy, dx) / (Math.PI / 2)), 4L);
        boolean alongAxis = Math.min(Math.abs(dx), Math.abs(dy)) < 0.2 * Math.max(Math.abs(dx), Math.abs(dy));
        if (!alongAxis) return false;
        Box box = boxOf(origin, end, size, quarters);
        double x = box.centreX(), y = box.centreY();
        if (x < -1 || y < -1 || x > page.width() + 1 || y > page.height() + 1) return false;
        Glyph letter = new Glyph(text, box, size, quarters, piece);
        all.add(letter);
        return !letter.isSpace();
    }

    private static float heightOf(PDFont font) {
        if (!(font instanceof PDType3Font type3)) return 1;
        try {
            double units = type3.getFontBBox() == null ? 0 : type3.getFontBBox().getHeight();
            double size = Math.abs(units * type3.getFontMatrix().getScaleY());
            return size > 0.1 && size < 10 ? (float) size : 1;
        } catch (RuntimeException e) {
            return 1;
        }
    }

    private static Box boxOf(Point2D origin, Point2D end, double size, int quarters) {
        double up = 0.75 * size, deep = 0.22 * size;
        double x0 = Math.min(origin.getX(), end.getX()), x1 = Math.max(origin.getX(), end.getX());
        double y0 = Math.min(origin.getY(), end.getY()), y1 = Math.max(origin.getY(), end.getY());
        return switch (quarters) {
            case 1 -> new Box(origin.getX() - up, y0, up + deep, y1 - y0);
            case 2 -> new Box(x0, origin.getY() - deep, x1 - x0, up + deep);
            case 3 -> new Box(origin.getX() - deep, y0, up + deep, y1 - y0);
            default -> new Box(x0, origin.getY() - up, x1 - x0, up + deep);
        };
    }

    private String textOf(PDFont font, int code) {
        Map<Integer, String> own = texts.computeIfAbsent(font, f -> new HashMap<>());
        String text = own.get(code);
        if (text != null) return text;
        text = told(font, code);
        if (known++ < MOST_KNOWN) own.put(code, text);
        return text;
    }

    private static String told(PDFont font, int code) {
        String text;
        try {
            text = font.toUnicode(code, GlyphList.getAdobeGlyphList());
        } catch (RuntimeException e) {
            text = null;
        }
        if (text == null && font instanceof PDSimpleFont && code >= 32 && code < 127)
            text = String.valueOf((char) code);
        return text == null ? Glyph.UNKNOWN : Letters.tidy(text);
    }
}
