package asfound.recordset;

import asfound.model.Place;
import asfound.model.Problem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads {@code record.yaml}. What is wrong in one key costs that key alone. */
final class SettingsReader {

    /** Taken for a date of modification that cannot be read: whatever was seen of the equipment may be older. */
    static final LocalDate NOT_YET = LocalDate.of(9999, 12, 31);

    private static final String KEYS =
            "building, columns, same, distinct, abbreviations, modified, numbering, life_safety, chosen";

    /** The settings, with defaults where something could not be read. */
    record Reading(Settings settings, List<Problem> problems) {}

    private final String file;
    private final List<Problem> problems = new ArrayList<>();
    private Optional<String> building = Optional.empty();
    private Map<String, String> columns = Map.of();
    private List<List<String>> same = List.of();
    private List<List<String>> distinct = List.of();
    private Map<String, String> abbreviations = Map.of();
    private final Map<String, LocalDate> modified = new LinkedHashMap<>();
    private Optional<Settings.Numbering> numbering = Optional.empty();
    private List<String> lifeSafety = List.of();
    private Optional<Settings.Chosen> chosen = Optional.empty();

    private SettingsReader(String file) {
        this.file = file;
    }

    static Reading read(Path path, String file, Limits limits) {
        SettingsReader reader = new SettingsReader(file);
        try {
            long most = limits.amount(Limit.SETTINGS_MB);
            if (Files.size(path) > most)
                reader.say(
                        1,
                        "The settings are larger than " + most + " bytes. None of them is used.",
                        "Shorten them, or " + Limit.SETTINGS_MB.raise() + ".");
            else reader.root(YamlText.read(Files.readString(path, StandardCharsets.UTF_8)));
        } catch (YamlText.Broken broken) {
            reader.whole(broken.line(), broken.getMessage());
        } catch (java.nio.charset.CharacterCodingException notUtf8) {
            reader.whole(1, "it is not UTF-8 text");
        } catch (IOException e) {
            reader.problems.add(new Problem(Place.file(file), Reasons.unreadable(e), Reasons.CHECK_FILE));
        }
        return new Reading(reader.settings(), reader.problems);
    }

    private Settings settings() {
        return new Settings(
                building, columns, same, distinct, abbreviations, Map.copyOf(modified), numbering, lifeSafety, chosen);
    }

    private void whole(int line, String why) {
        say(
                line,
                "The settings could not be read: " + why + ". None of them is used.",
                "Correct the file and run again.");
    }

    private void say(int line, String message, String remedy) {
        problems.add(new Problem(Place.row(file, line), message, remedy));
    }

    private void root(YamlText root) {
        if (root instanceof YamlText.Entries all) all.entries().forEach(this::entry);
        else if (!(root instanceof YamlText.Text t && t.text().isBlank()))
            whole(root.line(), "it is not a list of keys with values");
    }

    private void entry(YamlText.Entry e) {
        switch (e.key().strip()) {
            case "building" -> building = text(e).filter(b -> !b.isBlank());
            case "columns" -> columns = columns(e);
            case "same" -> same = groups(e);
            case "distinct" -> distinct = groups(e);
            case "abbreviations" -> abbreviations = texts(e);
            case "modified" -> texts(e).forEach((name, day) -> modified.put(name, date(e, name, day)));
            case "numbering" ->
                numbering = oneOf(e, Map.of("across", Settings.Numbering.ACROSS, "down", Settings.Numbering.DOWN));
            case "life_safety" -> lifeSafety = names(e.value(), e);
            case "chosen" ->
                chosen = oneOf(e, Map.of("random", Settings.Chosen.RANDOM, "targeted", Settings.Chosen.TARGETED));
            default ->
                say(
                        e.line(),
                        "The key '" + shown(e.key()) + "' is not known and was passed over.",
                        "Known keys: " + KEYS + ".");
        }
    }

    private static String shown(String text) {
        String plain = text.replaceAll("\\p{Cntrl}", " ");
        return plain.length() > 60 ? plain.substring(0, 60) + "…" : plain;
    }

    private Optional<String> text(YamlText.Entry e) {
        if (e.value() instanceof YamlText.Text t) return Optional.of(t.text().strip());
        wrong(e, "a single text");
        return Optional.empty();
    }

    private void wrong(YamlText.Entry e, String wanted) {
        say(
                e.line(),
                "'" + shown(e.key()) + "' is not " + wanted + " and was passed over.",
                "Write it as the documentation shows.");
    }

    private <T> Optional<T> oneOf(YamlText.Entry e, Map<String, T> values) {
        Optional<String> word = text(e).map(w -> w.toLowerCase(Locale.ROOT));
        if (word.isPresent() && !values.containsKey(word.get()))
            say(
                    e.line(),
                    "'" + shown(e.key()) + ": " + shown(word.get()) + "' is not known and was passed over.",
                    "Write "
                            + String.join(
                                    " or ", values.keySet().stream().sorted().toList()) + ".");
        return word.map(values::get);
    }

    private Map<String, String> texts(YamlText.Entry e) {
        Map<String, String> texts = new LinkedHashMap<>();
        if (e.value() instanceof YamlText.Entries all) {
            for (YamlText.Entry one : all.entries()) {
                if (one.value() instanceof YamlText.Text t && !t.text().isBlank())
                    texts.put(one.key().strip(), t.text().strip());
                else wrong(one, "a single text");
            }
        } else if (!(e.value() instanceof YamlText.Text t && t.text().isBlank())) wrong(e, "a list of 'name: text'");
        return texts;
    }

    private Map<String, String> columns(YamlText.Entry e) {
        Map<String, String> known = new LinkedHashMap<>();
        texts(e).forEach((their, our) -> {
            String name = our.toLowerCase(Locale.ROOT).replace(' ', '_');
            if (Columns.ours().contains(name)) known.put(their, name);
            else
                say(
                        e.line(),
                        "'columns' gives '" + shown(their) + "' the meaning '" + shown(our) + "', which is no column.",
                        "Known columns: " + String.join(", ", Columns.ours()) + ".");
        });
        return known;
    }

    private List<List<String>> groups(YamlText.Entry e) {
        List<List<String>> groups = new ArrayList<>();
        if (e.value() instanceof YamlText.Items all) {
            for (YamlText one : all.items()) {
                List<String> names = names(one, e);
                if (names.size() >= 2) groups.add(names);
                else
                    say(
                            one.line(),
                            "A group under '" + e.key() + "' has fewer than two names and was passed over.",
                            "Write a group as [LP-2A, L2A].");
            }
        } else if (!(e.value() instanceof YamlText.Text t && t.text().isBlank())) wrong(e, "a list of groups of names");
        return groups;
    }

    private List<String> names(YamlText value, YamlText.Entry e) {
        if (value instanceof YamlText.Text t)
            return t.text().isBlank() ? List.of() : List.of(t.text().strip());
        List<String> names = new ArrayList<>();
        if (value instanceof YamlText.Items all)
            for (YamlText one : all.items()) {
                if (one instanceof YamlText.Text t && !t.text().isBlank())
                    names.add(t.text().strip());
                else wrong(e, "a list of names");
            }
        else wrong(e, "a list of names");
        return names;
    }

    private LocalDate date(YamlText.Entry e, String name, String day) {
        int line = e.value() instanceof YamlText.Entries all
                ? all.entries().stream()
                        .filter(o -> o.key().strip().equals(name))
                        .mapToInt(YamlText.Entry::line)
                        .findFirst()
                        .orElse(e.line())
                : e.line();
        try {
            return LocalDate.parse(day);
        } catch (DateTimeParseException none) {
            say(
                    line,
                    "'" + shown(day) + "' is no date: " + shown(name)
                            + " was modified on a day that is not known, and every"
                            + " observation of it counts as older.",
                    "Write the day as 2024-05-02.");
            return NOT_YET;
        }
    }
}
