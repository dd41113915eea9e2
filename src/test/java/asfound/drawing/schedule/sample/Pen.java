package asfound.drawing.schedule.sample;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;

/** Draws on a page in points from its top left corner. */
final class Pen {

    private final PDPageContentStream out;
    private final double height;
    private final PDFont font;
    private final PDFont bold;
    private final SampleLayout.TextStyle style;
    private final Random random;

    Pen(PDPageContentStream out, double height, PDFont font, PDFont bold, SampleLayout.TextStyle style, Random random) {
        this.out = out;
        this.height = height;
        this.font = font;
        this.bold = bold;
        this.style = style;
        this.random = random;
    }

    double width(String text, double size, boolean heavy) throws IOException {
        double spacing = style == SampleLayout.TextStyle.SPACED ? 0.08 * size * text.length() : 0;
        return (heavy ? bold : font).getStringWidth(text) / 1000 * size + spacing;
    }

    /** Writes with its baseline at {@code y}. */
    void text(String text, double x, double y, double size, boolean heavy) throws IOException {
        if (text.isEmpty()) return;
        PDFont f = heavy ? bold : font;
        switch (style) {
            case LETTERS -> letters(text, x, y, size, f);
            case SPACED -> {
                out.setCharacterSpacing((float) (0.08 * size));
                show(text, x, y, size, f);
                out.setCharacterSpacing(0);
            }
            case ONE_STRING -> words(text, x, y, size, f);
            case DOUBLED -> {
                show(text, x, y, size, f);
                if (heavy) show(text, x + 0.25, y, size, f);
            }
            default -> show(text, x, y, size, f);
        }
    }

    private void show(String text, double x, double y, double size, PDFont f) throws IOException {
        out.beginText();
        out.setFont(f, (float) size);
        out.newLineAtOffset((float) x, (float) (height - y));
        out.showText(text);
        out.endText();
    }

    /** Letter by letter, in any order, without spaces. */
    private void letters(String text, double x, double y, double size, PDFont f) throws IOException {
        List<double[]> places = new ArrayList<>();
        double at = x;
        for (int i = 0; i < text.length(); i++) {
            places.add(new double[] {i, at});
            at += f.getStringWidth(text.substring(i, i + 1)) / 1000 * size;
        }
        if (random.nextBoolean()) java.util.Collections.shuffle(places, random);
        for (double[] p : places) {
            String letter = text.substring((int) p[0], (int) p[0] + 1);
            if (!letter.isBlank()) show(letter, p[1], y, size, f);
        }
    }

    /** Each word by itself, the gaps made by placing alone. */
    private void words(String text, double x, double y, double size, PDFont f) throws IOException {
        double at = x;
        for (String word : text.split(" ")) {
            show(word, at, y, size, f);
            at += f.getStringWidth(word + " ") / 1000 * size;
        }
    }

    /** Reading upwards, its foot at {@code y} and its baseline at {@code x}. */
    void turned(String text, double x, double y, double size) throws IOException {
        out.beginText();
        out.setFont(bold, (float) size);
        out.setTextMatrix(Matrix.getRotateInstance(Math.PI / 2, (float) x, (float) (height - y)));
        out.showText(text);
        out.endText();
    }

    void line(double x0, double y0, double x1, double y1) throws IOException {
        out.setLineWidth(0.5f);
        out.moveTo((float) x0, (float) (height - y0));
        out.lineTo((float) x1, (float) (height - y1));
        out.stroke();
    }

    void shade(double x, double y, double w, double h, float grey) throws IOException {
        out.setNonStrokingColor(grey);
        out.addRect((float) x, (float) (height - y - h), (float) w, (float) h);
        out.fill();
        out.setNonStrokingColor(0f);
    }
}
