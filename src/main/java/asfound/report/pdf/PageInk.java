package asfound.report.pdf;

import asfound.model.Box;
import asfound.recordset.Patience;
import java.awt.geom.GeneralPath;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/**
 * Finds where a page has ink, as boxes of its glyphs, lines and pictures, without painting it: no picture is decoded, and
 * the result does not depend on the fonts of the machine that draws. A page that asks for too much is given up, with what
 * was found so far.
 */
final class PageInk extends PDFGraphicsStreamEngine {

    /** More operators than the densest sheets have. */
    private static final int MOST_OPERATORS = 3_000_000;

    private static final class EnoughException extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    private final PageFrame frame;
    private final Occupied occupied;
    private final GeneralPath path = new GeneralPath();
    private int operators;

    private PageInk(PDPage page, PageFrame frame, Occupied occupied) {
        super(page);
        this.frame = frame;
        this.occupied = occupied;
    }

    /** The ink of the page as displayed; incomplete where the page is damaged. */
    static Occupied of(PDPage page, PageFrame frame) {
        Occupied occupied = new Occupied(frame.width(), frame.height());
        try {
            new PageInk(page, frame, occupied).processPage(page);
        } catch (Patience.GivenUpException e) {
            throw e;
        } catch (IOException | RuntimeException | StackOverflowError e) {
            // a damaged page is still marked: the marks then stand where its known ink leaves room
            return occupied;
        }
        return occupied;
    }

    @Override
    protected void processOperator(Operator operator, java.util.List<COSBase> operands) throws IOException {
        if (++operators > MOST_OPERATORS) throw new EnoughException();
        Patience.check();
        super.processOperator(operator, operands);
    }

    @Override
    protected void showGlyph(Matrix rendering, PDFont font, int code, Vector displacement) throws IOException {
        double w = Math.max(0.2, displacement.getX());
        Path2D cell = new Path2D.Double(new Rectangle2D.Double(0, -0.2, w, 0.95));
        cell.transform(rendering.createAffineTransform());
        // a little room before and behind, so that a note never touches a word
        Rectangle2D bounds = cell.getBounds2D();
        double gap = Math.min(3, Math.max(bounds.getWidth(), bounds.getHeight()) / 3);
        bounds.setRect(bounds.getX() - gap, bounds.getY(), bounds.getWidth() + 2 * gap, bounds.getHeight());
        ink(bounds, Occupied.TEXT);
    }

    @Override
    public void drawImage(PDImage image) {
        Path2D cell = new Path2D.Double(new Rectangle2D.Double(0, 0, 1, 1));
        cell.transform(getGraphicsState().getCurrentTransformationMatrix().createAffineTransform());
        ink(cell.getBounds2D(), Occupied.LINE);
    }

    private void ink(Rectangle2D user, float weight) {
        double[] a = frame.toDisplay(user.getMinX(), user.getMinY()),
                b = frame.toDisplay(user.getMaxX(), user.getMaxY());
        double x = Math.min(a[0], b[0]), y = Math.min(a[1], b[1]);
        if (!Double.isFinite(x + y + user.getWidth() + user.getHeight())) return;
        occupied.add(new Box(x, y, Math.abs(a[0] - b[0]), Math.abs(a[1] - b[1])), weight);
    }

    @Override
    public void strokePath() {
        double[] at = new double[6];
        double sx = 0, sy = 0, x = 0, y = 0;
        for (var i = path.getPathIterator(null); !i.isDone(); i.next()) {
            int segment = i.currentSegment(at);
            int last = segment == java.awt.geom.PathIterator.SEG_CUBICTO ? 4 : 0;
            double nx = at[last], ny = at[last + 1];
            if (segment == java.awt.geom.PathIterator.SEG_MOVETO) {
                sx = nx;
                sy = ny;
            } else {
                if (segment == java.awt.geom.PathIterator.SEG_CLOSE) {
                    nx = sx;
                    ny = sy;
                }
                stroke(x, y, nx, ny);
            }
            x = nx;
            y = ny;
        }
        path.reset();
    }

    /** Slanted lines are followed in steps, so that the diagonal of a large cross does not fill its whole box. */
    private void stroke(double x1, double y1, double x2, double y2) {
        boolean straight = Math.abs(x1 - x2) < 1 || Math.abs(y1 - y2) < 1;
        int steps = straight ? 1 : (int) Math.min(400, Math.max(1, Math.hypot(x2 - x1, y2 - y1) / 4));
        for (int i = 0; i < steps; i++) {
            Rectangle2D piece = new Rectangle2D.Double();
            piece.setFrameFromDiagonal(
                    x1 + (x2 - x1) * i / steps,
                    y1 + (y2 - y1) * i / steps,
                    x1 + (x2 - x1) * (i + 1) / steps,
                    y1 + (y2 - y1) * (i + 1) / steps);
            ink(piece, Occupied.LINE);
        }
    }

    @Override
    public void fillPath(int windingRule) {
        Rectangle2D bounds = path.getBounds2D();
        // thin fills are rulings; wide ones are shading, on which a note can stand
        if (bounds.getWidth() < 3 || bounds.getHeight() < 3) ink(bounds, Occupied.LINE);
        path.reset();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        strokePath();
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        path.moveTo(p0.getX(), p0.getY());
        path.lineTo(p1.getX(), p1.getY());
        path.lineTo(p2.getX(), p2.getY());
        path.lineTo(p3.getX(), p3.getY());
        path.closePath();
    }

    @Override
    public void clip(int windingRule) {
        // a clip paints nothing; taking hidden ink for visible only costs room
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        if (path.getCurrentPoint() == null) path.moveTo(x, y);
        else path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        if (path.getCurrentPoint() == null) path.moveTo(x3, y3);
        else path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.getCurrentPoint() == null ? new Point2D.Double() : path.getCurrentPoint();
    }

    @Override
    public void closePath() {
        if (path.getCurrentPoint() != null) path.closePath();
    }

    @Override
    public void endPath() {
        path.reset();
    }

    @Override
    public void shadingFill(COSName shadingName) {
        // shading is background
    }
}
