package asfound.drawing.schedule.sample;

import asfound.drawing.schedule.sample.GridLayout.Beside;
import asfound.drawing.schedule.sample.GridLayout.HeaderPlace;
import asfound.drawing.schedule.sample.GridLayout.HeadingStyle;
import asfound.drawing.schedule.sample.GridTable.Cell;
import asfound.drawing.schedule.sample.GridTable.Col;
import asfound.drawing.schedule.sample.SamplePanel.SampleCircuit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;

/** Puts one panel on paper: its header, headings, rows, sums, and what stands beside them. */
final class GridBlock {

    private final GridSheets.Written written;
    private final GridPaper paper;
    private final SamplePanel panel;
    private final GridTable table;
    private final GridLayout layout;
    private final GridHabits habits;
    private final GridWords words;
    private final Random random;

    GridBlock(
            GridSheets.Written written,
            SamplePanel panel,
            GridTable table,
            GridLayout layout,
            GridHabits habits,
            GridWords words,
            Random random) {
        this.habits = habits;
        this.written = written;
        this.paper = written.paper();
        this.panel = panel;
        this.table = table;
        this.layout = layout;
        this.words = words;
        this.random = random;
    }

    /** Gives the first row below and the first column beside the block. */
    int[] whole(int row, int column) {
        int width = table.columns().size(), at = row, right = column + width;
        GridHeader header = new GridHeader(paper, panel, layout, words, 1 + random.nextInt(3));
        boolean titled = GridSheets.isTitled(layout, random);
        if (titled) at = header.title(at, column, width);
        if (layout.headerPlace() == HeaderPlace.ABOVE) at = header.labels(at, column, !titled);
        at += random.nextInt(2);
        int top = at;
        int[] end = rows(at, column, true);
        at = end[0] + random.nextInt(2);
        at = header.totals(at, column, table.columns());
        if (layout.headerPlace() == HeaderPlace.BELOW) at = header.labels(at + 1, column, !titled);
        right = Math.max(right, end[1]);
        if (layout.headerPlace() == HeaderPlace.RIGHT) {
            header = new GridHeader(paper, panel, layout, words, 1);
            at = Math.max(at, header.labels(top, right + 1, !titled));
        }
        for (int r = row; r < at; r++)
            for (int c = column; c < column + 30; c++) if (paper.cell(r, c) != null) right = Math.max(right, c + 1);
        return new int[] {at, right};
    }

    int[] rows(int row, int column, boolean headed) {
        int at = headed ? headings(row, column) : row,
                notes = column + table.columns().size();
        if (layout.beside() == Beside.NOTES_APART || layout.beside() == Beside.KEYED_NOTES) notes++;
        List<Col> columns = table.columns();
        int struck = layout.struck() ? random.nextInt(table.rowCount()) : -1;
        for (int r = 0; r < table.rowCount(); r++) {
            if (habits.repeat() > 0 && r > 0 && r % habits.repeat() == 0) at = again(at, column);
            for (int c = 0; c < columns.size(); c++) {
                Col col = columns.get(c);
                if (!col.key().equals("pos") || !changed(at, column + c, table.position(r, col.side()), r))
                    put(at, column + c, table.cell(col, r));
            }
            boolean crossedOut = struck == r && isWritten(r);
            for (int side = 0; side <= columns.get(columns.size() - 1).side(); side++) stands(at, r, side, crossedOut);
            if (crossedOut) for (int c = 0; c < columns.size(); c++) paper.strike(at, column + c);
            if (layout.beside() != Beside.NOTHING) note(at, notes);
            if (layout.hidden() && random.nextInt(12) == 0) paper.hideRow(at);
            at++;
            boolean between = layout.spacers() && layout.carry() != GridLayout.Carry.JOINED;
            if (between && r % 6 == 5 && r + 1 < table.rowCount()) at++;
        }
        if (headed && layout.hidden() && random.nextInt(3) == 0)
            paper.hideColumn(column + random.nextInt(columns.size()));
        return new int[] {at, layout.beside() == Beside.NOTHING ? column + columns.size() : notes + 1};
    }

    /** A line through blank cells shows nothing. */
    private boolean isWritten(int r) {
        return table.columns().stream().anyMatch(c -> !table.cell(c, r).text().isBlank());
    }

    /** The headings once more, and the panel's name where the office writes that too; gives the next free row. */
    private int again(int row, int column) {
        int at = row;
        if (habits.titled()) {
            String kind = panel.iec() ? "DISTRIBUTION BOARD" : "PANEL";
            at++;
            paper.text(at++, column, words.with("title", panel.name()).replace("%k", kind) + " (CONTINUED)");
        }
        return headings(at, column);
    }

    /** What the spreadsheet made of a list of positions, where it made something of it. */
    private boolean changed(int row, int column, int position, int r) {
        if (position == 0) return false;
        SampleCircuit c = panel.at(position).orElseThrow();
        boolean head = layout.sides() == GridLayout.Sides.LIST || c.first() == position;
        Optional<LocalDate> day = habits.day(c.positions());
        Optional<String> fraction = habits.fraction(c.positions());
        if (!head || day.isEmpty() && fraction.isEmpty()) return false;
        day.ifPresent(d -> paper.day(row, column, d));
        fraction.ifPresent(f -> paper.text(row, column, f));
        if (layout.carry() == GridLayout.Carry.JOINED && layout.sides() != GridLayout.Sides.LIST)
            paper.join(row, column, row + c.poles() - 1, column);
        return true;
    }

    private void put(int row, int column, Cell cell) {
        if (cell.figure()) paper.figure(row, column, cell.text());
        else paper.text(row, column, cell.text());
        if (cell.span() > 1) paper.join(row, column, row + cell.span() - 1, column);
    }

    private void note(int row, int column) {
        String note = GridSheets.note(random, layout);
        if (layout.beside() == Beside.KEYED_NOTES) paper.figure(row, column, note);
        else paper.text(row, column, note);
    }

    private void stands(int row, int r, int side, boolean struck) {
        int p = table.position(r, side);
        if (p == 0) return;
        SampleCircuit c = panel.at(p).orElseThrow();
        c.positions().forEach(q -> paper.stands(row, q));
        if (struck)
            written.crossedOut()
                    .computeIfAbsent(panel.name(), n -> new TreeSet<>())
                    .addAll(c.positions());
    }

    private int headings(int row, int column) {
        List<Col> columns = table.columns();
        int height = layout.heading() == HeadingStyle.TWO_ROWS || layout.heading() == HeadingStyle.GROUPED ? 2 : 1;
        for (int c = 0; c < columns.size(); c++) {
            String text = columns.get(c).heading();
            int space = text.indexOf(' ');
            switch (layout.heading()) {
                case TWO_LINES -> paper.text(row, column + c, space < 0 ? text : text.replaceFirst(" ", "\n"));
                case TWO_ROWS -> {
                    if (space > 0) paper.text(row, column + c, text.substring(0, space));
                    paper.text(row + 1, column + c, space > 0 ? text.substring(space + 1) : text);
                }
                default -> paper.text(row + height - 1, column + c, text);
            }
        }
        if (layout.heading() == HeadingStyle.GROUPED) groups(row, column);
        boolean notes = layout.beside() == Beside.NOTES_HEADED;
        if (notes) paper.text(row + height - 1, column + columns.size(), words.of("notes"));
        return row + height;
    }

    /** A heading over the columns of the device, and one over those of the loads. */
    private void groups(int row, int column) {
        List<Col> columns = table.columns();
        for (int c = 0; c < columns.size(); ) {
            String group = group(columns.get(c));
            int end = c + 1;
            while (end < columns.size()
                    && columns.get(end).side() == columns.get(c).side()
                    && group(columns.get(end)).equals(group)) end++;
            if (!group.isEmpty() && end - c > 1) {
                paper.text(row, column + c, group);
                if (layout.kind() == GridLayout.Kind.WORKBOOK) paper.join(row, column + c, row, column + end - 1);
            }
            c = end;
        }
    }

    private static String group(Col col) {
        return switch (col.key()) {
            case "rating", "poles" -> "BREAKER";
            case "l0", "l1", "l2" -> "LOAD";
            default -> "";
        };
    }
}
