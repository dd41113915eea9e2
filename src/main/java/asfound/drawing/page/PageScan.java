package asfound.drawing.page;

import asfound.model.Box;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.contentstream.operator.OperatorName;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDSimpleFont;
import org.apache.pdfbox.pdmodel.font.PDType3Font;
import org.apache.pdfbox.pdmodel.font.encoding.GlyphList;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDPattern;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDTransparencyGroup;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/**
 * Walks once through a page's content and gathers its letters, ruled lines and shaded areas, in points from the top left
 * of the page as displayed (after rotation and crop). Images are counted by their area and never decoded.
 */
final class PageScan extends PDFGraphicsStreamEngine {

    /** DrawObject, of the library, passes over a form at a deeper level. */
    static final int DEEPEST = 50;

    private final PDRectangle crop;
    private final int rotation;
    private final long deadline;
    private final int mostObjects;
    private final List<Glyph> glyphs = new ArrayList<>();
    private final List<Rule> across = new ArrayList<>();
    private final List<Rule> down = new ArrayList<>();
    private final PathPieces path = new PathPieces();
    private final HiddenContent hidden;
    private final PageContent content;
    private double imageArea;
    private int outlines;
    private int steps;
    private int shown;
    private boolean tooDeep;
    private int piece;

    PageScan(PDPage page, HiddenContent hidden, int mostObjects, long mostBytes, long deadlineNanos) {
        super(page);
        crop = page.getCropBox();
        rotation = Math.floorMod(page.getRotation(), 360);
        deadline = deadlineNanos;
        this.mostObjects = mostObjects;
        this.hidden = hidden;
        content = new PageContent(new StreamCheck(mostBytes, this::demandEnd));
    }

    /** Goes through the page, and through what its form fields and text notes show. */
    void scan() throws IOException {
        content.of(getPage());
        processPage(getPage());
        for (PDAnnotation note : getPage().getAnnotations()) {
            String kind = note.getSubtype();
            boolean shown = !note.isHidden() && !note.isNoView();
            if (shown && ("Widget".equals(kind) || "FreeText".equals(kind))) showAnnotation(note);
        }
        demandEnd();
    }

    /** What of its content could not be unpacked or followed, in words. */
    List<String> lost() {
        return content.lost();
    }

    List<Glyph> glyphs() {
        return glyphs;
    }

    List<Rule> across() {
        return across;
    }

    List<Rule> down() {
        return down;
    }

    double width() {
        return rotation % 180 == 0 ? crop.getWidth() : crop.getHeight();
    }

    double height() {
        return rotation % 180 == 0 ? crop.getHeight() : crop.getWidth();
    }

    /** The share of the page that images cover, at most 1. */
    double imageShare() {
        return Math.min(1, imageArea / Math.max(1, width() * height()));
    }

    /** How many small curved outlines are drawn: many of them and no text is text drawn as outlines. */
    int outlines() {
        return outlines;
    }

    @Override
    protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
        if ((++steps & 1023) == 0) demandEnd();
        super.processOperator(operator, operands);
        if (OperatorName.SET_FONT_AND_SIZE.equals(operator.getName()))
            content.font(getGraphicsState().getTextState().getFont());
    }

    /** The library passes over what fails in a form, and would pass over our own limits with it. */
    @Override
    protected void operatorException(Operator operator, List<COSBase> operands, IOException e) throws IOException {
        if (e instanceof PageTimeException
                || e instanceof PageObjectsException
                || e instanceof StreamCheck.TooMuchException) throw e;
        content.failed(operator.getName());
        super.operatorException(operator, operands, e);
    }

    @Override
    protected void unsupportedOperator(Operator operator, List<COSBase> operands) {
        content.unknown(operator.getName());
    }

    @Override
    public void showForm(PDFormXObject form) throws IOException {
        content.form(form.getCOSObject());
        super.showForm(form);
    }

    @Override
    public void showTransparencyGroup(PDTransparencyGroup form) throws IOException {
        content.form(form.getCOSObject());
        super.showTransparencyGroup(form);
    }

    @Override
    protected void processAnnotation(PDAnnotation note, PDAppearanceStream appearance) throws IOException {
        content.form(appearance.getCOSObject());
        super.processAnnotation(note, appearance);
    }

    @Override
    public void showTextString(byte[] string) throws IOException {
        piece++;
        super.showTextString(string);
    }

    @Override
    public void showTextStrings(COSArray strings) throws IOException {
        piece++;
        super.showTextStrings(strings);
    }

    private void demandEnd() throws IOException {
        if (System.nanoTime() > deadline || Thread.currentThread().isInterrupted()) throw new PageTimeException();
        int most = Math.max(Math.max(glyphs.size(), path.size()), Math.max(across.size(), down.size()));
        if (most > mostObjects) throw new PageObjectsException();
    }

    /** The page takes longer than a page may. */
    static final class PageTimeException extends IOException {
        private static final long serialVersionUID = 1L;
    }

    /** The page holds more than a page may. */
    static final class PageObjectsException extends IOException {
        private static final long serialVersionUID = 1L;
    }

    /** Forms drawn within forms deeper than the library follows them: what they show was not met. */
    boolean tooDeep() {
        return tooDeep;
    }

    @Override
    public void increaseLevel() {
        super.increaseLevel();
        tooDeep |= getLevel() > DEEPEST;
    }

    @Override
    public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
        super.beginMarkedContentSequence(tag, properties);
        hidden.begin(tag, properties);
    }

    @Override
    public void endMarkedContentSequence() {
        super.endMarkedContentSequence();
        hidden.end();
    }

    @Override
    protected void showGlyph(Matrix place, PDFont font, int code, Vector advance) throws IOException {
        glyph(place, font, code, advance);
    }

    @Override
    protected void showType3Glyph(Matrix place, PDType3Font font, int code, Vector advance) throws IOException {
        glyph(place, font, code, advance);
    }

    private void glyph(Matrix place, PDFont font, int code, Vector advance) throws IOException {
        if ((++shown & 1023) == 0) demandEnd(); // one operator can show a million letters
        if (hidden.isHidden()) return;
        String text = textOf(font, code);
        Point2D origin = shown(place.transformPoint(0, 0));
        Point2D end = shown(place.transformPoint(advance.getX(), 0));
        Point2D right = shown(place.transformPoint(1, 0));
        Point2D above = shown(place.transformPoint(0, heightOf(font)));
        double size = origin.distance(above);
        double dx = right.getX() - origin.getX(), dy = right.getY() - origin.getY();
        if (size < 0.2 || Math.hypot(dx, dy) < 1e-6) return;
        int quarters = (int) Math.floorMod(Math.round(Math.atan2(-dy, dx) / (Math.PI / 2)), 4L);
        boolean alongAxis = Math.min(Math.abs(dx), Math.abs(dy)) < 0.2 * Math.max(Math.abs(dx), Math.abs(dy));
        if (!alongAxis) return;
        Box box = boxOf(origin, end, size, quarters);
        double x = box.centreX(), y = box.centreY();
        if (x < -1 || y < -1 || x > width() + 1 || y > height() + 1) return;
        glyphs.add(new Glyph(text, box, size, quarters, piece));
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

    private static String textOf(PDFont font, int code) {
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

    /** A point of the page's own space on the page as displayed. */
    private Point2D shown(Point2D p) {
        double x = p.getX() - crop.getLowerLeftX(), y = p.getY() - crop.getLowerLeftY();
        double w = crop.getWidth(), h = crop.getHeight();
        return switch (rotation) {
            case 90 -> new Point2D.Double(y, x);
            case 180 -> new Point2D.Double(w - x, y);
            case 270 -> new Point2D.Double(h - y, w - x);
            default -> new Point2D.Double(x, h - y);
        };
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        path.rectangle(shown(p0), shown(p1), shown(p2), shown(p3));
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(shown(new Point2D.Float(x, y)), new Point2D.Float(x, y));
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(shown(new Point2D.Float(x, y)), new Point2D.Float(x, y));
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(shown(new Point2D.Float(x3, y3)), new Point2D.Float(x3, y3));
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.current();
    }

    @Override
    public void closePath() {
        path.close();
    }

    @Override
    public void endPath() {
        path.clear();
    }

    @Override
    public void strokePath() {
        if (!hidden.isHidden() && !isWhite(getGraphicsState().getStrokingColor())) path.stroked(across, down);
        path.clear();
    }

    @Override
    public void fillPath(int windingRule) {
        fill();
        path.clear();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        fill();
        strokePath();
    }

    private void fill() {
        if (hidden.isHidden()) return;
        if (path.isSmallOutline()) outlines++;
        if (!isWhite(getGraphicsState().getNonStrokingColor())) path.filled(across, down);
    }

    /** White on white paper is not seen. */
    private static boolean isWhite(PDColor colour) {
        try {
            if (colour == null || colour.getColorSpace() instanceof PDPattern) return false;
            float[] parts = colour.getComponents();
            boolean inks = parts.length == 4;
            for (float part : parts) if (inks ? part > 0.02 : part < 0.98) return false;
            return parts.length > 0;
        } catch (RuntimeException e) {
            return false;
        }
    }

    @Override
    public void drawImage(PDImage image) {
        if (hidden.isHidden()) return;
        Matrix m = getGraphicsState().getCurrentTransformationMatrix();
        Point2D a = shown(m.transformPoint(0, 0)), b = shown(m.transformPoint(1, 1));
        imageArea += Math.abs(a.getX() - b.getX()) * Math.abs(a.getY() - b.getY());
    }

    @Override
    public void clip(int windingRule) {
        // what a clip hides is still taken in: to read too much is found out later, to read too little is not
    }

    @Override
    public void shadingFill(COSName shadingName) {
        // a shading says nothing that could be read
    }
}
