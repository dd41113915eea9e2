package asfound.drawing.schedule.doubt;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.model.Box;
import asfound.model.Directory;
import asfound.model.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Titles of panels on a sheet of which no directory was read: the table below such a title was not recognised. */
public final class UnreadTitles {

    private static final Pattern MARKS = Pattern.compile("[^A-Z0-9]");
    private static final Pattern SHEET = Pattern.compile("\\b(?:schedule|directory)\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern NAMED = Pattern.compile(
            "(?:panel|panelboard|pnl\\.?|distribution board|load cent(?:er|re))\\s*:?\\s*[\"'“]?\\S+[\"'”]?",
            Pattern.CASE_INSENSITIVE);
    private static final int LONGEST = 6;

    private UnreadTitles() {}

    public static List<Problem> problems(Sheet sheet, Phrases phrases, List<Directory> read, List<Box> tables) {
        Set<String> known = new HashSet<>();
        read.forEach(d -> known.add(key(d.panel())));
        read.forEach(d -> d.header().fedFrom().value().ifPresent(f -> known.add(key(f))));
        List<Problem> out = new ArrayList<>();
        if (read.isEmpty()) return out;
        for (Phrase p : phrases) {
            if (p.words().size() > LONGEST || !phrases.meanings().mayBeTitle(p) || !isTitle(p.text())) continue;
            if (tables.stream().anyMatch(t -> t.contains(p.centreX(), p.centreY()))) continue;
            phrases.meanings()
                    .name(p)
                    .filter(name -> name.chars().anyMatch(Character::isDigit))
                    .filter(name -> known.stream()
                            .noneMatch(k -> k.contains(key(name)) || key(name).contains(k)))
                    .ifPresent(name -> {
                        known.add(key(name));
                        out.add(new Problem(
                                sheet.place(p.box()),
                                "The title '" + p.text()
                                        + "' stands on the sheet, and no directory of that name was read.",
                                "Look whether a table stands below it, and read that by hand."));
                    });
        }
        return out;
    }

    private static boolean isTitle(String text) {
        return SHEET.matcher(text).find() || NAMED.matcher(text).matches();
    }

    private static String key(String name) {
        return MARKS.matcher(name.toUpperCase(Locale.ROOT)).replaceAll("");
    }
}
