package asfound.drawing.schedule.sample;

import asfound.drawing.schedule.sample.GridLayout.Figures;
import asfound.drawing.schedule.sample.GridPaper.Cell;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;

/** Writes a paper as a delimited text by RFC 4180, and as spreadsheets write it besides. */
final class GridText {

    private final GridPaper paper;
    private final GridLayout layout;
    private final GridHabits habits;
    private final boolean quotedAll;
    private final boolean ragged;
    private final boolean decimalComma;
    private final boolean thousands;
    private final String lineEnd;

    private GridText(GridPaper paper, GridLayout layout, GridHabits habits, Random random) {
        this.paper = paper;
        this.habits = habits;
        this.layout = layout;
        quotedAll = random.nextInt(4) == 0;
        ragged = random.nextInt(3) == 0;
        decimalComma = layout.kind() == GridLayout.Kind.SEMICOLON && random.nextBoolean();
        thousands = random.nextInt(6) == 0;
        lineEnd = GridLayout.any(random, new String[] {"\n", "\r\n", "\r\n", "\r"});
    }

    static void write(Path file, GridPaper paper, GridLayout layout, GridHabits habits, Random random)
            throws IOException {
        String text = new GridText(paper, layout, habits, random).text();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        switch (layout.encoding()) {
            case UTF8 -> out.writeBytes(text.getBytes(StandardCharsets.UTF_8));
            case UTF8_MARKED -> out.writeBytes(("\uFEFF" + text).getBytes(StandardCharsets.UTF_8));
            case UTF16_LITTLE -> out.writeBytes(("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE));
            case UTF16_BIG -> out.writeBytes(("\uFEFF" + text).getBytes(StandardCharsets.UTF_16BE));
            case WINDOWS -> out.writeBytes(text.getBytes(Charset.forName("windows-1252")));
        }
        Files.write(file, out.toByteArray());
    }

    private String text() {
        StringBuilder out = new StringBuilder();
        int width = paper.width(), line = 0;
        if (habits.separator()) {
            out.append("sep=").append(layout.kind().delimiter()).append(lineEnd);
            line++;
        }
        for (int r = 0; r < paper.height(); r++) {
            paper.begins(r, line++);
            int end = width;
            while (ragged && end > 1 && paper.cell(r, end - 1) == null) end--;
            for (int c = 0; c < end; c++) {
                if (c > 0) out.append(layout.kind().delimiter());
                Cell cell = paper.cell(r, c);
                if (cell != null) out.append(quoted(text(cell)));
                if (cell != null)
                    line += (int) cell.text().chars().filter(ch -> ch == '\n').count();
            }
            for (int c = 0; c < habits.trailing(); c++) out.append(layout.kind().delimiter());
            out.append(lineEnd);
        }
        return out.toString();
    }

    private String text(Cell cell) {
        if (cell.day().isPresent()) return habits.inText(cell.day().get());
        return cell.figure() ? figure(cell.text()) : cell.text();
    }

    private String figure(String text) {
        if (layout.figures() == Figures.DECIMALS && !text.contains(".")) return text + (decimalComma ? ",0" : ".0");
        if (decimalComma) return text.replace('.', ',');
        return thousands && text.matches("\\d{4}") ? text.charAt(0) + "," + text.substring(1) : text;
    }

    private String quoted(String text) {
        boolean needed =
                text.indexOf(layout.kind().delimiter()) >= 0 || text.indexOf('"') >= 0 || text.indexOf('\n') >= 0;
        return needed || quotedAll ? '"' + text.replace("\"", "\"\"") + '"' : text;
    }
}
