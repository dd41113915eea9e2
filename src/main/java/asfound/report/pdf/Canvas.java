package asfound.report.pdf;

import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDResources;

/**
 * A rectangle to draw on, measured in points from its top left corner. What it gathers is a content stream and the fonts
 * that it needs: for a page, or for the appearance of an annotation.
 */
final class Canvas {

    private final Typeface typeface;
    private final double width;
    private final double height;
    private final ByteArrayOutputStream content = new ByteArrayOutputStream();
    private final PDResources resources = new PDResources();
    private final Set<String> fonts = new HashSet<>();

    Canvas(Typeface typeface, double width, double height) {
        this.typeface = typeface;
        this.width = width;
        this.height = height;
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    Typeface typeface() {
        return typeface;
    }

    byte[] content() {
        return content.toByteArray();
    }

    PDResources resources() {
        return resources;
    }

    /** Sets a line of text; {@code x} is its left end, {@code y} its baseline. */
    Canvas text(String text, double x, double y, Type type) {
        double at = x;
        for (Typeface.Run run : typeface.runs(text, type.bold())) {
            COSName key = COSName.getPDFName(run.key());
            if (fonts.add(run.key())) resources.put(key, run.font());
            op("BT").colour(type.tint(), "rg");
            if (run.thickened()) colour(type.tint(), "RG").op(num(type.size() * 0.035) + " w 2 Tr");
            op("/" + run.key() + " " + num(type.size()) + " Tf " + num(at) + " " + num(height - y) + " Td");
            op("<" + hex(run.codes()) + "> Tj");
            op(run.thickened() ? "0 Tr ET" : "ET");
            at += run.width() * type.size() / 1000;
        }
        return this;
    }

    Canvas textRight(String text, double right, double y, Type type) {
        return text(text, right - typeface.width(text, type), y, type);
    }

    Canvas textCentred(String text, double centre, double y, Type type) {
        return text(text, centre - typeface.width(text, type) / 2, y, type);
    }

    Canvas line(double x1, double y1, double x2, double y2, Pen pen) {
        return path(List.of(new double[] {x1, y1}, new double[] {x2, y2}), pen);
    }

    /** Strokes the line through all the points. */
    Canvas path(List<double[]> points, Pen pen) {
        pen(pen);
        trace(points);
        return op("S");
    }

    Canvas polygon(List<double[]> points, Tint fill) {
        colour(fill, "rg");
        trace(points);
        return op("h f");
    }

    Canvas box(double x, double y, double w, double h, Pen pen) {
        return pen(pen).op(rectangle(x, y, w, h) + " S");
    }

    Canvas fill(double x, double y, double w, double h, Tint tint) {
        return colour(tint, "rg").op(rectangle(x, y, w, h) + " f");
    }

    Canvas circle(double x, double y, double r, Pen pen) {
        return pen(pen).arcs(x, y, r).op("s");
    }

    Canvas disc(double x, double y, double r, Tint tint) {
        return colour(tint, "rg").arcs(x, y, r).op("f");
    }

    /** Operators as they are, measured from the bottom left: for shapes that this class has no word for. */
    Canvas raw(String operators) {
        return op(operators);
    }

    private Canvas arcs(double x, double y, double r) {
        double k = r * 0.5523, b = height - y;
        op(num(x + r) + " " + num(b) + " m");
        curve(x + r, b + k, x + k, b + r, x, b + r);
        curve(x - k, b + r, x - r, b + k, x - r, b);
        curve(x - r, b - k, x - k, b - r, x, b - r);
        return curve(x + k, b - r, x + r, b - k, x + r, b);
    }

    private Canvas curve(double... xy) {
        StringBuilder out = new StringBuilder();
        for (double v : xy) out.append(num(v)).append(' ');
        return op(out + "c");
    }

    private void trace(List<double[]> points) {
        String verb = " m";
        for (double[] p : points) {
            op(num(p[0]) + " " + num(height - p[1]) + verb);
            verb = " l";
        }
    }

    private String rectangle(double x, double y, double w, double h) {
        return num(x) + " " + num(height - y - h) + " " + num(w) + " " + num(h) + " re";
    }

    /** Takes up a pen for {@link #raw} strokes. */
    Canvas pen(Pen pen) {
        colour(pen.tint(), "RG");
        StringBuilder dashes = new StringBuilder("[");
        for (double d : pen.dashes()) dashes.append(num(d)).append(' ');
        return op(num(pen.width()) + " w 1 j " + dashes.toString().strip() + "] 0 d");
    }

    private Canvas colour(Tint tint, String verb) {
        return op(num(tint.r()) + " " + num(tint.g()) + " " + num(tint.b()) + " " + verb);
    }

    private Canvas op(String operators) {
        content.writeBytes((operators + "\n").getBytes(StandardCharsets.ISO_8859_1));
        return this;
    }

    private static String hex(byte[] bytes) {
        return HexFormat.of().formatHex(bytes);
    }

    /** A number as content streams have it: at most three decimals, no exponent, no locale. */
    static String num(double value) {
        if (!Double.isFinite(value)) throw new IllegalArgumentException("no place on a page: " + value);
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
