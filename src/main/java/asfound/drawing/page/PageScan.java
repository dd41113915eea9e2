package asfound.drawing.page;

import asfound.model.Box;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.blend.BlendMode;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDPattern;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDTransparencyGroup;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/**
 * Gathers a page's letters, ruled lines and shaded areas, in points from the top left
 * of the page as displayed (after rotation and crop). Images are counted by their area and never decoded.
 */
final class PageScan extends ContentWalk {

    private final Displayed page;
    private final PlacedLetters letters;
    private final ShownText text;
    private final List<Rule> across = new ArrayList<>();
    private final List<Rule> down = new ArrayList<>();
    private final PathPieces path = new PathPieces();
    private final Covers covers = new Covers();
    private final ClipBoxes clips = new ClipBoxes();
    private int groups;
    private double imageArea;
    private int outlines;
    private int piece;
    private int undrawn;

    PageScan(PDPage page, KnownFonts fonts, HiddenContent hidden, int mostObjects, long mostBytes, long deadlineNanos) {
        super(page, hidden, mostObjects, mostBytes, deadlineNanos);
        this.page = Displayed.of(page);
        letters = new PlacedLetters(this.page);
        text = new ShownText(letters, fonts, this::step);
    }

    @Override
    int gathered() {
        return Math.max(
                Math.max(letters.all().size(), path.size()),
                Math.max(Math.max(across.size(), down.size()), covers.size()));
    }

    /** The letters that somebody sees who looks at the page. */
    List<Glyph> glyphs() throws IOException {
        return covers.seen(letters.all(), this::step);
    }

    /** The texts that run neither across nor along the page, as it is displayed. */
    List<Word> askew() {
        return letters.askew();
    }

    /** How many letters there are, spaces left out, those under filled areas counted in. */
    int drawn() {
        return letters.drawn();
    }

    /** How many letters, spaces left out, are not drawn at all. */
    int undrawn() {
        return undrawn;
    }

    List<Rule> across() {
        return across;
    }

    List<Rule> down() {
        return down;
    }

    double width() {
        return page.width();
    }

    double height() {
        return page.height();
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
    public void showTextString(byte[] string) throws IOException {
        piece++;
        super.showTextString(string);
    }

    @Override
    public void showTextStrings(COSArray strings) throws IOException {
        piece++;
        super.showTextStrings(strings);
    }

    @Override
    protected void showText(byte[] string) throws IOException {
        int before = letters.drawn();
        try {
            PDFont font = getGraphicsState().getTextState().getFont();
            if (font == null || font.isVertical()) super.showText(string);
            else text.show(string, font, getGraphicsState(), isHidden(), piece);
        } finally {
            if (isUndrawn()) undrawn += letters.drawn() - before;
        }
    }

    private boolean isUndrawn() {
        RenderingMode mode = getGraphicsState().getTextState().getRenderingMode();
        return mode == RenderingMode.NEITHER || mode == RenderingMode.NEITHER_CLIP;
    }

    /** A letter that the library places: of a font that runs down the page, or that is missing. */
    @Override
    protected void showGlyph(Matrix place, PDFont font, int code, Vector advance) throws IOException {
        step();
        if (isHidden()) return;
        FontLetters own = text.of(font);
        letters.add(
                own.letter(code),
                advance.getX(),
                own.height(),
                place.getScaleX(),
                place.getShearY(),
                place.getShearX(),
                place.getScaleY(),
                place.getTranslateX(),
                place.getTranslateY(),
                piece);
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        path.rectangle(page.shown(p0), page.shown(p1), page.shown(p2), page.shown(p3));
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(page.shown(new Point2D.Float(x, y)), new Point2D.Float(x, y));
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(page.shown(new Point2D.Float(x, y)), new Point2D.Float(x, y));
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(page.shown(new Point2D.Float(x3, y3)), new Point2D.Float(x3, y3));
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
        if (!isHidden() && !isWhite(getGraphicsState().getStrokingColor())) path.stroked(across, down);
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
        if (isHidden()) return;
        if (path.isSmallOutline()) outlines++;
        path.rectangle()
                .filter(r -> isOpaque())
                .ifPresent(r -> covers.add(painted(r), letters.all().size()));
        if (!isWhite(getGraphicsState().getNonStrokingColor())) path.filled(across, down);
    }

    /** Nothing is seen through what is filled now. */
    private boolean isOpaque() {
        PDGraphicsState state = getGraphicsState();
        PDColor colour = state.getNonStrokingColor();
        return groups == 0
                && state.getNonStrokeAlphaConstant() >= 0.999
                && state.getSoftMask() == null
                && state.getBlendMode() == BlendMode.NORMAL
                && colour != null
                && !(colour.getColorSpace() instanceof PDPattern);
    }

    /** What of a rectangle lies within the form that draws it, and within what it is held to. */
    private Box painted(Box rectangle) {
        Rectangle2D form = getGraphicsState().getCurrentClippingPath().getBounds2D();
        Point2D a = page.shown(new Point2D.Double(form.getMinX(), form.getMinY()));
        Point2D b = page.shown(new Point2D.Double(form.getMaxX(), form.getMaxY()));
        double x = Math.min(a.getX(), b.getX()), y = Math.min(a.getY(), b.getY());
        Box own = new Box(x, y, Math.abs(a.getX() - b.getX()), Math.abs(a.getY() - b.getY()));
        return ClipBoxes.both(own, clips.painted(rectangle));
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
        if (isHidden() || isOff(image)) return;
        Matrix m = getGraphicsState().getCurrentTransformationMatrix();
        Point2D a = page.shown(m.transformPoint(0, 0)), b = page.shown(m.transformPoint(1, 1));
        imageArea += Math.abs(a.getX() - b.getX()) * Math.abs(a.getY() - b.getY());
    }

    @Override
    public void clip(int windingRule) {
        // what a clip hides is still taken in: to read too much is found out later, to read too little is not
        clips.hold(path.rectangle());
    }

    @Override
    public void saveGraphicsState() {
        clips.save();
        super.saveGraphicsState();
    }

    @Override
    public void restoreGraphicsState() {
        clips.restore();
        super.restoreGraphicsState();
    }

    @Override
    public void showForm(PDFormXObject form) throws IOException {
        int depth = clips.depth();
        clips.save();
        super.showForm(form);
        clips.restoreTo(depth);
    }

    @Override
    public void showTransparencyGroup(PDTransparencyGroup form) throws IOException {
        int depth = clips.depth();
        clips.save();
        groups++;
        super.showTransparencyGroup(form);
        groups--;
        clips.restoreTo(depth);
    }

    @Override
    public void shadingFill(COSName shadingName) {
        // a shading says nothing that could be read
    }
}
