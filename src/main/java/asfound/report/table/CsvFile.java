package asfound.report.table;

import asfound.report.Cautions;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Writes a table as CSV, with the caution as its last column. */
public final class CsvFile {

    static final String CAUTION = "caution";

    private CsvFile() {}

    /** Leaves {@code out} open. */
    public static void write(Rows table, String caution, OutputStream out) throws IOException {
        Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
        CSVPrinter printer = CSVFormat.RFC4180.print(writer);
        printer.printRecord(with(table.columns(), CAUTION));
        for (List<String> row : table.rows())
            printer.printRecord(
                    with(row, caution).stream().map(CellText::guarded).toList());
        printer.flush();
    }

    /** With the usual caution. */
    public static void write(Rows table, OutputStream out) throws IOException {
        write(table, Cautions.SHORT, out);
    }

    private static List<String> with(List<String> row, String last) {
        List<String> all = new ArrayList<>(row);
        all.add(last);
        return all;
    }
}
