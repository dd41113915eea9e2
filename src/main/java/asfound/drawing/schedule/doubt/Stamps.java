package asfound.drawing.schedule.doubt;

import asfound.drawing.schedule.phrase.Overprint;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.model.Box;
import asfound.model.Directory;
import asfound.model.Place;
import asfound.model.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * Texts in large type over a directory: that the sheet is void, superseded or no more than a draft. The directory is read as it
 * stands, told, and not relied on.
 *
 * @param problems one for each text that does not only say that the sheet holds
 */
public record Stamps(List<Problem> problems) {

    private static final String REMEDY = "Find out whether the sheet still holds before it is used for isolation.";

    /** It says nothing against the sheet: {@code AS-BUILT}, {@code RECORD DRAWING}, {@code CONFIDENTIAL}. */
    private static final Pattern HARMLESS = Pattern.compile(
            "(?i)(?:AS[- ]?(?:BUILT|FOUND|FITTED|INSTALLED)|RECORDS?|DRAWINGS?|SET|COPY|\\d++|CONFIDENTIAL|(?:ISSUED )?FOR CONSTRUCTION|FINAL|CONTROLLED|APPROVED|[\\s.,:/-]++)+");

    /** @param table where the directory stands */
    public static Stamps over(Phrases phrases, Box table, Function<Box, Place> places) {
        List<Problem> problems = new ArrayList<>();
        for (Overprint o : phrases.overprints())
            if (o.box().overlaps(table)) tell("Over the directory", o, places, problems);
        return new Stamps(List.copyOf(problems));
    }

    /** Those over other texts of a sheet with directories, and over none of these: which of them they mean is for a person to say. */
    public static List<Problem> beside(Phrases phrases, List<Box> tables, Function<Box, Place> places) {
        List<Problem> problems = new ArrayList<>();
        for (Overprint o : phrases.overprints())
            if (!tables.isEmpty() && tables.stream().noneMatch(o.box()::overlaps))
                tell("Beside the directories of the sheet", o, places, problems);
        return problems;
    }

    private static void tell(String where, Overprint o, Function<Box, Place> places, List<Problem> problems) {
        if (HARMLESS.matcher(o.text()).matches()) return;
        problems.add(new Problem(places.apply(o.box()), where + " stands in large type: '" + o.text() + "'.", REMEDY));
    }

    /** The confidence of a reading over which they stand. */
    public double confidence(double of) {
        return problems.isEmpty() ? of : Math.min(of, Directory.DOUBTFUL - 0.05);
    }
}
