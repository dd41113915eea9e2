package asfound.recordset;

import asfound.model.Place;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The rows of a delimited text (RFC 4180; comma, semicolon or tab), with what real files do besides: a quotation mark that
 * is never closed costs its own row at most, not the rest of the file.
 */
final class DelimitedRows {

    private static final int SHARED_TEXTS = 200_000;
    private static final Pattern NAMED = Pattern.compile("\"?sep=([,;\t|])\"?[,;\t|]*\\s*", Pattern.CASE_INSENSITIVE);

    private record Line(int number, String text) {}

    private final TextLines lines;
    private final Deque<Line> ahead = new ArrayDeque<>();
    private final char delimiter;
    private final int usualDelimiters;
    private final String file;
    private final Limits limits;
    private final ProblemList problems;
    private final Map<String, String> shared = new HashMap<>();

    DelimitedRows(TextLines lines, String file, Limits limits, ProblemList problems) throws IOException {
        this.lines = lines;
        this.file = file;
        this.limits = limits;
        this.problems = problems;
        for (int i = 0; i < 100; i++) {
            Optional<String> line = lines.next();
            if (line.isEmpty()) break;
            ahead.add(new Line(lines.number(), line.get()));
        }
        Optional<Character> named = named();
        this.delimiter = named.orElseGet(this::mostLikely);
        this.usualDelimiters = usualCount(delimiter);
    }

    /** The delimiter that the first line names and nothing else, {@code sep=;}, as spreadsheets read and write it. */
    private Optional<Character> named() {
        if (ahead.isEmpty()) return Optional.empty();
        Matcher m = NAMED.matcher(ahead.peek().text());
        if (!m.matches()) return Optional.empty();
        ahead.poll();
        return Optional.of(m.group(1).charAt(0));
    }

    char delimiter() {
        return delimiter;
    }

    /** The delimiter that most lines have, and have equally often; a comma where none is seen. */
    private char mostLikely() {
        char best = ',';
        double bestScore = 0;
        for (char c : new char[] {',', ';', '\t'}) {
            int usual = usualCount(c);
            long agreeing = ahead.stream()
                    .filter(l -> !l.text().isBlank() && count(l.text(), c) == usual)
                    .count();
            double score = usual == 0 ? 0 : agreeing * Math.sqrt(usual);
            if (score > bestScore) {
                bestScore = score;
                best = c;
            }
        }
        return best;
    }

    /** The most frequent count of a delimiter outside of quotation marks among the first lines that have it. */
    private int usualCount(char c) {
        Map<Integer, Integer> counts = new HashMap<>();
        for (Line l : ahead) counts.merge(count(l.text(), c), 1, Integer::sum);
        counts.remove(0);
        return counts.entrySet().stream()
                .max(Map.Entry.<Integer, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .orElse(0);
    }

    private static int count(String line, char c) {
        int n = 0;
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char at = line.charAt(i);
            if (at == '"') quoted = !quoted;
            else if (at == c && !quoted) n++;
        }
        return n;
    }

    /** The next row, blank ones included; empty at the end. */
    Optional<GridRow> next() throws IOException {
        Optional<Line> first = line();
        if (first.isEmpty()) return Optional.empty();
        Optional<List<String>> cells = quoted(first.get());
        return Optional.of(new GridRow(first.get().number(), cells.orElseGet(() -> literal(first.get()))));
    }

    private Optional<Line> line() throws IOException {
        if (!ahead.isEmpty()) return Optional.of(ahead.poll());
        Optional<String> text = lines.next();
        return text.map(t -> new Line(lines.number(), t));
    }

    /** Reads a row by the rules; empty, with all further lines put back, where a quotation mark is not closed. */
    private Optional<List<String>> quoted(Line first) throws IOException {
        List<String> cells = new ArrayList<>(Math.max(8, usualDelimiters + 1));
        List<Line> further = new ArrayList<>();
        String text = first.text();
        int at = 0;
        while (true) {
            if (at < text.length() && text.charAt(at) == '"') {
                StringBuilder field = new StringBuilder();
                int end = closing(text, at + 1, field);
                while (end < 0) {
                    Optional<Line> next =
                            further.size() < limits.amount(Limit.FIELD_LINES) && field.length() <= limits.fieldChars()
                                    ? line()
                                    : Optional.empty();
                    if (next.isEmpty()) return putBack(first, further);
                    further.add(next.get());
                    text = next.get().text();
                    field.append('\n');
                    end = closing(text, 0, field);
                    if (end < 0 && looksLikeRow(text)) return putBack(first, further);
                }
                int after = skipBlanks(text, end);
                boolean closed = after >= text.length() || text.charAt(after) == delimiter;
                if (!closed) return putBack(first, further);
                add(cells, field.toString(), first.number());
                at = after;
            } else {
                int end = text.indexOf(delimiter, at);
                if (end < 0) end = text.length();
                add(cells, text.substring(at, end), first.number());
                at = end;
            }
            if (at >= text.length()) return Optional.of(cells);
            at++; // the delimiter
        }
    }

    /** Copies a quoted field up to its closing mark; gives the place after the mark, or -1 at the end of the line. */
    private static int closing(String text, int from, StringBuilder field) {
        for (int i = from; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c != '"') field.append(c);
            else if (i + 1 < text.length() && text.charAt(i + 1) == '"') {
                field.append('"');
                i++;
            } else return i + 1;
        }
        return -1;
    }

    private int skipBlanks(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) == ' ') at++;
        return at;
    }

    /** A line inside a quoted field with as many delimiters as rows have: a row that was swallowed. */
    private boolean looksLikeRow(String line) {
        return usualDelimiters >= 2 && count(line, delimiter) >= usualDelimiters;
    }

    private Optional<List<String>> putBack(Line first, List<Line> further) {
        for (int i = further.size() - 1; i >= 0; i--) ahead.addFirst(further.get(i));
        problems.add(
                "rows with a quotation mark that is not closed",
                Place.row(file, first.number()),
                "A quotation mark in this row is not closed, or text follows the closing one; the row was read as it stands.",
                "Close the quotation mark, or write it twice where it belongs to the text.");
        return Optional.empty();
    }

    private List<String> literal(Line line) {
        List<String> cells = new ArrayList<>();
        int at = 0;
        for (int end = line.text().indexOf(delimiter);
                end >= 0;
                end = line.text().indexOf(delimiter, at)) {
            add(cells, line.text().substring(at, end), line.number());
            at = end + 1;
        }
        add(cells, line.text().substring(at), line.number());
        return cells;
    }

    private void add(List<String> cells, String cell, int row) {
        String text = GuardedCell.text(cell);
        if (cells.size() >= limits.columns()) {
            if (!text.isBlank())
                problems.add(
                        "fields past the most columns",
                        Place.row(file, row),
                        "The row has more than " + limits.columns() + " columns; the further ones were not read.",
                        "Look for a wrong delimiter, or " + Limit.COLUMNS.raise() + ".");
            return;
        }
        if (text.length() > limits.fieldChars()) {
            problems.add(
                    "fields that are too long",
                    Place.row(file, row),
                    "A field has " + text.length() + " characters; only the first " + limits.fieldChars()
                            + " were read.",
                    "Look for a missing quotation mark or line end, or " + Limit.FIELD_CHARS.raise() + ".");
            cells.add(text.substring(0, limits.fieldChars()));
        } else cells.add(shared(text));
    }

    /** Most cells of a survey repeat: one text for all of them saves memory. */
    private String shared(String text) {
        if (shared.size() >= SHARED_TEXTS) return shared.getOrDefault(text, text);
        return shared.computeIfAbsent(text, t -> t);
    }
}
