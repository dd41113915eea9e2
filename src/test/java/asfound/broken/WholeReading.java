package asfound.broken;

import asfound.drawing.oneline.OneLineReader;
import asfound.drawing.oneline.OneLineReading;
import asfound.drawing.schedule.ScheduleReader;
import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import asfound.model.Problem;
import asfound.recordset.Limits;
import asfound.recordset.RecordSet;
import asfound.recordset.Source;
import asfound.survey.SurveyReader;
import asfound.survey.SurveyReading;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * Everything that is read from a record set, as plain lines to compare, and every problem.
 *
 * @param values one line for each thing read, in order
 * @param problems all of them, in words
 */
record WholeReading(List<String> values, List<String> problems) {

    static WholeReading of(RecordSet set, Limits limits) {
        List<String> values = new ArrayList<>(), problems = new ArrayList<>();
        values.add("settings " + new TreeMap<>(set.settings().columns())
                + new TreeMap<>(set.settings().modified()) + set.settings().same()
                + set.settings().building());
        set.problems().forEach(p -> problems.add(p.inWords()));
        for (Source source : set.sources()) {
            values.add(source.file() + " " + source.kind());
            read(source, set, limits, values, problems);
        }
        return new WholeReading(values, problems);
    }

    private static void read(Source source, RecordSet set, Limits limits, List<String> values, List<String> problems) {
        switch (source.kind()) {
            case PDF, WORKBOOK, SCHEDULE_TABLE -> {
                ScheduleReading r = new ScheduleReader(set.settings(), limits).read(source);
                r.directories().forEach(d -> directory(d, values, problems));
                say(r.problems(), problems);
            }
            case SURVEY -> {
                SurveyReading r = SurveyReader.read(source, set.settings(), limits);
                r.observations().forEach(o -> values.add(o.toString()));
                say(r.problems(), problems);
            }
            case FEEDERS, EQUIPMENT -> {
                OneLineReading r = OneLineReader.read(source, set.settings(), limits);
                r.oneLine().feeders().forEach(f -> values.add(f.toString()));
                r.oneLine().equipment().forEach(e -> values.add(e.toString()));
                say(r.problems(), problems);
            }
            case SETTINGS, UNKNOWN -> {}
        }
    }

    private static void directory(Directory d, List<String> values, List<String> problems) {
        values.add(d.panel() + " " + d.header() + " " + d.totals());
        d.circuits()
                .forEach(c -> values.add(c.positions() + " " + c.poles() + " "
                        + c.ratingA().raw() + " " + c.description().raw() + " " + c.use()));
        if (d.isDoubtful()) problems.add(d.place().inWords() + ": read with doubt");
        say(d.problems(), problems);
    }

    private static void say(List<Problem> from, List<String> to) {
        from.forEach(p -> to.add(p.inWords()));
    }
}
