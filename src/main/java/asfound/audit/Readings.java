package asfound.audit;

import asfound.drawing.Drawings;
import asfound.drawing.oneline.OneLineReader;
import asfound.drawing.oneline.OneLineReading;
import asfound.drawing.schedule.ScheduleReader;
import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import asfound.model.Observation;
import asfound.model.OneLine;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.recordset.Limits;
import asfound.recordset.NothingToDoException;
import asfound.recordset.RecordSet;
import asfound.recordset.RecordSets;
import asfound.recordset.Source;
import asfound.survey.SurveyReader;
import asfound.survey.SurveyReading;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Every source of a record set read once, each by the reader of its kind, in order of file name. */
final class Readings {

    private final RecordSet set;
    private final Limits limits;
    private final ScheduleReader schedules;
    private final List<Audit.Input> inputs = new ArrayList<>();
    private final List<Directory> directories = new ArrayList<>();
    private final List<OneLine.Feeder> feeders = new ArrayList<>();
    private final List<OneLine.Listed> equipment = new ArrayList<>();
    private final List<Observation> survey = new ArrayList<>();
    /** Files that were not understood at first sight, and then were. */
    private final Set<String> understood = new HashSet<>();

    private Readings(RecordSet set, Limits limits) {
        this.set = set;
        this.limits = limits;
        this.schedules = new ScheduleReader(set.settings(), limits);
    }

    static Readings of(RecordSet set, Limits limits, Stages stages) {
        Readings readings = new Readings(set, limits);
        int done = 0;
        for (Source source : set.sources()) {
            stages.at("reading " + source.file(), done++, set.sources().size());
            readings.boundedly(source);
        }
        return readings;
    }

    /** One file that asks for more memory than there is, or is being changed, must not cost the others. */
    private void boundedly(Source source) {
        int[] before = {directories.size(), feeders.size(), equipment.size(), survey.size(), inputs.size()};
        try {
            read(source);
            Source.Kind kind = inputs.get(inputs.size() - 1).source().kind();
            boolean used = kind != Source.Kind.UNKNOWN && kind != Source.Kind.SETTINGS;
            Optional<Problem> changed = used ? RecordSets.changed(source) : Optional.empty();
            if (changed.isPresent()) {
                cut(directories, before[0]);
                cut(feeders, before[1]);
                cut(equipment, before[2]);
                cut(survey, before[3]);
                cut(inputs, before[4]);
                inputs.add(new Audit.Input(source, 0, 0, List.of(changed.get())));
            }
        } catch (OutOfMemoryError e) {
            long megabytes = Runtime.getRuntime().maxMemory() >> 20;
            Problem given = new Problem(
                    Place.file(source.file()),
                    "The file asks for more memory than Java has here (" + megabytes + " MB); it was not read.",
                    "Split the file, or give Java more memory: java -Xmx4g -jar asfound.jar ...");
            inputs.add(new Audit.Input(source, 0, 0, List.of(given)));
        }
    }

    private static void cut(List<?> list, int size) {
        list.subList(size, list.size()).clear();
    }

    private void read(Source source) {
        switch (source.kind()) {
            case PDF, WORKBOOK, SCHEDULE_TABLE -> schedule(source, schedules.read(source));
            case FEEDERS, EQUIPMENT -> {
                OneLineReading reading = OneLineReader.read(source, set.settings(), limits);
                feeders.addAll(reading.oneLine().feeders());
                equipment.addAll(reading.oneLine().equipment());
                inputs.add(new Audit.Input(source, 0, reading.rows(), reading.problems()));
            }
            case SURVEY -> {
                SurveyReading reading = SurveyReader.read(source, set.settings(), limits);
                survey.addAll(reading.observations());
                inputs.add(new Audit.Input(source, 0, reading.rows(), reading.problems()));
            }
            case UNKNOWN -> unknown(source);
            case SETTINGS -> inputs.add(new Audit.Input(source, 0, 0, List.of()));
        }
    }

    private void schedule(Source source, ScheduleReading reading) {
        directories.addAll(reading.directories());
        List<Problem> problems = new ArrayList<>(reading.problems());
        reading.directories().forEach(d -> problems.addAll(d.problems()));
        inputs.add(new Audit.Input(source, reading.pages(), 0, problems));
    }

    /** A table whose columns nobody knows may be a two-sided directory: it counts where it reads as one beyond doubt. */
    private void unknown(Source source) {
        boolean text =
                source.bytes() > 0 && source.file().toLowerCase(Locale.ROOT).matches(".*\\.(csv|tsv|txt)");
        ScheduleReading reading = text ? schedules.read(source) : new ScheduleReading(List.of(), List.of(), 0);
        boolean sure = !reading.directories().isEmpty()
                && reading.directories().stream().noneMatch(Directory::isDoubtful);
        if (!sure) {
            inputs.add(new Audit.Input(source, 0, 0, List.of()));
            return;
        }
        understood.add(source.file());
        schedule(
                new Source(source.file(), source.path(), Source.Kind.SCHEDULE_TABLE, source.bytes(), source.sha256()),
                reading);
    }

    /** @throws NothingToDoException where there is neither a drawing nor an observation to compare */
    void demandSomething() throws NothingToDoException {
        if (directories.isEmpty() && feeders.isEmpty() && equipment.isEmpty() && survey.isEmpty())
            throw new NothingToDoException("No drawing and no survey could be read in " + set.root() + " ("
                    + set.sources().size()
                    + " files). Put panel schedules in drawings/, one-line exports in one-line/ and"
                    + " survey tables in survey/; 'asfound read FILE' tells what is wrong with one file.");
    }

    /** The inputs with their problems; what the set as a whole lacks is a problem of the folder itself. */
    List<Audit.Input> inputs() {
        return List.copyOf(inputs);
    }

    /** What the record set as a whole lacks. */
    List<Problem> lacking() {
        List<Problem> lacking = new ArrayList<>(set.problems());
        lacking.removeIf(p -> understood.contains(p.place().file()));
        if (directories.isEmpty() && feeders.isEmpty() && equipment.isEmpty())
            lacking.add(new Problem(
                    Place.file("."),
                    "No drawing could be read: nothing can be compared with the survey.",
                    "Add panel schedules (PDF, XLSX, CSV) or a one-line export (CSV)."));
        if (survey.isEmpty())
            lacking.add(new Problem(
                    Place.file("."),
                    "No survey could be read: nothing is traced, so nothing can agree.",
                    "Add the survey as a CSV with the columns panel, circuit and found."));
        return lacking;
    }

    Drawings drawings() {
        return new Drawings(directories, new OneLine(feeders, equipment));
    }

    List<Observation> survey() {
        return List.copyOf(survey);
    }
}
