package asfound.drawing.schedule.sample;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Counts how many random workbooks and text tables are read exactly, with a difference that is told, and silently wrong,
 * and how often something is told of what was read exactly.
 *
 * <p>{@code GridScore FOLDER FIRST_SEED COUNT}
 */
public final class GridScore {

    private GridScore() {}

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        Files.createDirectories(folder);
        long first = Long.parseLong(args[1]), count = Long.parseLong(args[2]);
        int exact = 0, alarmed = 0, told = 0, silent = 0;
        for (long seed = first; seed < first + count; seed++) {
            Path file = folder.resolve("grid-" + seed + GridSheets.ending(seed));
            GridSheets.Drawn drawn = GridSheets.draw(seed, file);
            GridCheck check = GridCheck.of(drawn, RandomGridsTest.read(file));
            if (!check.silent().isEmpty()) silent++;
            else if (!check.different().isEmpty()) told++;
            else if (!check.alarms().isEmpty()) alarmed++;
            else exact++;
            say(seed, "layout", drawn.layout() + " " + drawn.habits());
            for (String s : check.silent()) say(seed, "SILENT", s);
            for (String s : check.different()) say(seed, "different", s);
            for (String s : check.alarms()) say(seed, "ALARM", s);
        }
        System.out.printf(
                "%d tables: %d exact, %d exact and doubted, %d different and told, %d silent%n",
                count, exact, alarmed, told, silent);
    }

    private static void say(long seed, String what, String text) {
        System.out.println(seed + " " + what + " " + text);
    }
}
