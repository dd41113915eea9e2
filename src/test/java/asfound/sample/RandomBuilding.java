package asfound.sample;

import asfound.network.Device;
import asfound.recordset.Settings;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/**
 * A random building with planted events, the same for the same seed.
 *
 * @param building drawings, survey and settings
 * @param planted the events planted in it
 * @param traced the devices that the survey traced (stale traces included)
 */
public record RandomBuilding(long seed, Building building, List<Planted> planted, Set<Device> traced) {

    /** Every kind of event that can be planted. */
    public static List<String> kinds() {
        return List.copyOf(new Plants(new Campus(new Random(0), 1)).byKind().keySet());
    }

    /**
     * A building with one event of each kind that finds room, in an order of chance.
     *
     * @param panels how many panels besides the main switchboard and the emergency panel
     * @param coverage from 0 to 1: the chance of each device to be traced
     */
    public static RandomBuilding withEveryKind(long seed, int panels, double coverage) {
        return with(seed, panels, coverage, kinds());
    }

    /** A building without any event. */
    public static RandomBuilding plain(long seed, int panels, double coverage) {
        return with(seed, panels, coverage, List.of());
    }

    /** A building with these kinds of events; a kind may stand several times. */
    public static RandomBuilding with(long seed, int panels, double coverage, List<String> kinds) {
        Random random = new Random(seed);
        Campus campus = new Campus(random, panels);
        List<Planted> planted = new ArrayList<>();
        List<String> order = new ArrayList<>(kinds);
        Collections.shuffle(order, random);
        var ways = new Plants(campus).byKind();
        for (String kind : order) ways.get(kind).get().ifPresent(planted::add);
        SurveyWriter survey = new SurveyWriter(campus, random, coverage);
        Building building = new Building(new PaperWriter(campus, random).drawings(), survey.rows, settings(campus));
        return new RandomBuilding(seed, building, List.copyOf(planted), Set.copyOf(survey.traced));
    }

    /** What an audit is to find: exactly this. */
    public List<Planted.Expected> expected() {
        return planted.stream().flatMap(p -> p.says().apply(traced).stream()).toList();
    }

    private static Settings settings(Campus campus) {
        Map<String, LocalDate> modified = new LinkedHashMap<>();
        for (Board b : campus.boards) if (b.stale) modified.put(b.name, SurveyWriter.MODIFIED);
        Settings none = Settings.none();
        return new Settings(
                none.building(),
                none.columns(),
                none.same(),
                none.distinct(),
                none.abbreviations(),
                modified,
                none.numbering(),
                none.lifeSafety(),
                none.chosen());
    }
}
