package asfound.report;

import asfound.audit.Audit;
import asfound.drawing.Drawings;
import asfound.finding.Corrected;
import asfound.finding.Correction;
import asfound.model.Box;
import asfound.model.Directory;
import asfound.model.Place;
import asfound.report.table.CorrectionRows;
import asfound.report.table.CsvBack;
import asfound.report.table.CsvFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Works through {@code corrections.csv} from the top, knowing nothing but what stands in it and the drawings. */
final class Drafter {

    private static final Pattern PAGE = Pattern.compile("page (\\d+)");
    private static final Pattern ROW = Pattern.compile("(?:sheet (.*), )?row (\\d+)");

    private final Set<Place> places = new HashSet<>();

    private Drafter(Drawings drawings) {
        for (Directory d : drawings.directories()) {
            places.add(d.place());
            d.header().fedFrom().place().ifPresent(places::add);
            d.circuits().forEach(c -> places.add(c.place()));
        }
        drawings.oneLine().feeders().forEach(f -> places.add(f.place()));
        drawings.oneLine().equipment().forEach(e -> places.add(e.place()));
    }

    /** The drawings with every change made that the list has. */
    static Drawings worksThrough(Audit audit) throws IOException {
        ByteArrayOutputStream csv = new ByteArrayOutputStream();
        CsvFile.write(CorrectionRows.of(audit), csv);
        Drafter drafter = new Drafter(audit.drawings());
        List<Correction> corrections = new ArrayList<>();
        for (Map<String, String> row : CsvBack.rows(csv.toByteArray()))
            if (!row.get("field").equals(CorrectionRows.LOOK_FIRST)) corrections.add(drafter.correction(row));
        return Corrected.apply(audit.drawings(), corrections);
    }

    private Correction correction(Map<String, String> row) {
        Correction.Field field = Arrays.stream(Correction.Field.values())
                .filter(f -> f.word().equals(row.get("field")))
                .findFirst()
                .orElseThrow();
        return new Correction(
                place(row.get("drawing"), row.get("sheet or page"), row.get("box")),
                row.get("panel"),
                row.get("circuit"),
                field,
                row.get("reads"),
                row.get("should read"),
                row.get("why"));
    }

    /** The place on the drawings that is meant; a new one, where an entry is to be added. */
    private Place place(String file, String within, String box) {
        List<Place> meant = places.stream()
                .filter(p -> p.file().equals(file) && p.within().equals(within) && boxOf(p).equals(box))
                .toList();
        if (meant.size() > 1) throw new AssertionError("the list does not tell which is meant: " + meant);
        return meant.isEmpty() ? newPlace(file, within) : meant.get(0);
    }

    private static Place newPlace(String file, String within) {
        Matcher page = PAGE.matcher(within), row = ROW.matcher(within);
        if (page.matches()) return Place.page(file, Integer.parseInt(page.group(1)));
        if (row.matches())
            return Place.row(file, row.group(1) == null ? "" : row.group(1), Integer.parseInt(row.group(2)));
        return Place.file(file);
    }

    private static String boxOf(Place place) {
        if (!(place instanceof Place.OnPage page) || page.area().isEmpty()) return "";
        Box box = page.area().get();
        return String.format(Locale.ROOT, "%.2f %.2f %.2f %.2f", box.x(), box.y(), box.w(), box.h());
    }
}
