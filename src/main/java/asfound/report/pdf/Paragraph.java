package asfound.report.pdf;

import java.util.ArrayList;
import java.util.List;

/** Text broken into lines of a given width. No text is lost: a word that is too long is broken, at a hyphen or slash where it has one. */
record Paragraph(List<String> lines, Type type) {

    Paragraph {
        lines = List.copyOf(lines);
    }

    static Paragraph of(String text, Type type, double width, Typeface typeface) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : Visible.of(text).strip().split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (typeface.width(longer, type) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) lines.add(line);
            line = word;
            while (typeface.width(line, type) > width && line.codePointCount(0, line.length()) > 1) {
                int fits = fitting(line, type, width, typeface);
                lines.add(line.substring(0, fits));
                line = line.substring(fits);
            }
        }
        if (!line.isEmpty() || lines.isEmpty()) lines.add(line);
        return new Paragraph(lines, type);
    }

    /** How many chars of the word fit, at least one whole character. */
    private static int fitting(String word, Type type, double width, Typeface typeface) {
        int first = word.offsetByCodePoints(0, 1), end = first;
        for (int next = first; next < word.length(); next = word.offsetByCodePoints(next, 1)) {
            if (typeface.width(word.substring(0, next), type) > width) break;
            end = next;
        }
        int joint = Math.max(word.lastIndexOf('-', end - 1), word.lastIndexOf('/', end - 1)) + 1;
        return joint > end / 3 ? joint : end;
    }

    double height() {
        return lines.size() * type.leading();
    }

    double width(Typeface typeface) {
        return lines.stream().mapToDouble(l -> typeface.width(l, type)).max().orElse(0);
    }

    /** Draws it with its top at {@code y}; gives the y below it. */
    double draw(Canvas canvas, double x, double y) {
        double baseline = y + type.size() * 0.92;
        for (String line : lines) {
            canvas.text(line, x, baseline, type);
            baseline += type.leading();
        }
        return y + height();
    }
}
