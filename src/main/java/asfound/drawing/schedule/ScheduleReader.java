package asfound.drawing.schedule;

import asfound.drawing.schedule.cell.TableFileReader;
import asfound.drawing.schedule.pdf.GuardedPdf;
import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.recordset.Limits;
import asfound.recordset.Settings;
import asfound.recordset.Source;

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
        return source.kind() == Source.Kind.PDF
                ? new GuardedPdf(settings, limits).read(source)
                : new TableFileReader(settings, limits).read(source);
    }
}
