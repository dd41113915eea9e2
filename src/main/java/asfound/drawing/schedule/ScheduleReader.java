package asfound.drawing.schedule;

import asfound.model.Place;
import asfound.model.Problem;
import asfound.recordset.Limits;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import java.util.List;

/** Reads the panel schedules of one file, whatever the sheet looks like, and says what it could not read. */
public final class ScheduleReader {

    private final Settings settings;
    private final Limits limits;

    public ScheduleReader(Settings settings, Limits limits) {
        this.settings = settings;
        this.limits = limits;
    }

    /** Reads a PDF, a workbook or a table of circuits. Never throws for what the file holds. */
    public ScheduleReading read(Source source) {
        return new ScheduleReading(
                List.of(),
                List.of(new Problem(
                        Place.file(source.file()),
                        "The reading of schedules is not built yet: nothing was read.",
                        "Check this file by hand.")),
                0);
    }
}
