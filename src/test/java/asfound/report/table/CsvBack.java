package asfound.report.table;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads a table that was written as CSV, as a careful program would: RFC 4180, then the apostrophe off. */
public final class CsvBack {

    private CsvBack() {}

    /** Each row by its column's name. */
    public static List<Map<String, String>> rows(byte[] csv) throws IOException {
        List<Map<String, String>> rows = new ArrayList<>();
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        for (CSVRecord record : format.parse(new StringReader(new String(csv, StandardCharsets.UTF_8)))) {
            Map<String, String> row = new LinkedHashMap<>();
            record.toMap().forEach((column, cell) -> row.put(column, CellText.plain(cell)));
            List<String> order = record.getParser().getHeaderNames();
            Map<String, String> inOrder = new LinkedHashMap<>();
            order.forEach(column -> inOrder.put(column, row.get(column)));
            rows.add(inOrder);
        }
        return rows;
    }
}
