package asfound.drawing.schedule.sample;

import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Counts how many random sheets are read exactly, with a difference that is told, and silently wrong, and how often
 * something is told of what was read exactly.
 *
 * <p>{@code SheetScore FOLDER FIRST_SEED COUNT [furnished]}: on the seed's own sheets, or each set on a larger one among notes and lists
 */
public final class SheetScore {

    private SheetScore() {}

    public static void main(String[] args) throws IOException {
        Path file = Path.of(args[0]).resolve("sheet.pdf");
        Files.createDirectories(file.getParent());
        boolean furnished = args.length > 3 && args[3].equals("furnished");
        long first = Long.parseLong(args[1]), count = Long.parseLong(args[2]);
        int exact = 0, alarmed = 0, told = 0, wrong = 0;
        for (long seed = first; seed < first + count; seed++) {
            SampleSheets.Drawn drawn = furnished ? FurnishedSheet.draw(seed, file) : SampleSheets.draw(seed, file);
            ScheduleReading reading = RandomLayoutsTest.read(file);
            List<String> silent = SampleCheck.silentDifferences(drawn, reading);
            List<String> different = SampleCheck.differences(drawn, reading);
            List<Problem> said = new ArrayList<>(reading.problems());
            reading.directories().forEach(d -> said.addAll(d.problems()));
            if (!silent.isEmpty()) wrong++;
            else if (!different.isEmpty()) told++;
            else if (!said.isEmpty()) alarmed++;
            else exact++;
            say(seed, "layout", drawn.layout().toString());
            for (String s : silent) say(seed, "SILENT", s);
            for (String s : different) say(seed, "different", s);
            for (Problem p : said) say(seed, different.isEmpty() ? "ALARM" : "said", p.message());
        }
        System.out.printf(
                "%d sheets: %d exact, %d exact and doubted, %d different and told, %d silent%n",
                count, exact, alarmed, told, wrong);
    }

    private static void say(long seed, String what, String text) {
        System.out.println(seed + " " + what + " " + text);
    }
}
