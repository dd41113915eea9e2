package asfound.finding;

import asfound.model.Place;
import asfound.model.Problem;
import asfound.recordset.Limit;
import asfound.recordset.Limits;
import asfound.recordset.Source;
import asfound.recordset.YamlText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The findings that the user accepted, kept in {@code accepted.yaml} beside the record set's settings:
 *
 * <pre>
 * accepted:
 *   - id: vague-entry-1a2b3c4d          # as the report gives it
 *     facts: 0f1e2d3c4b5a6978           # as the report gives it: what was accepted
 *     reason: Repainted with the floor next spring.
 *     by: A. Duarte
 *     date: 2026-03-01
 * </pre>
 *
 * All five are needed. A finding whose facts have changed since is open again, and that is reported; so is an entry that
 * fits no finding any more.
 */
public final class Acceptances {

    private static final Set<String> KEYS = Set.of("id", "facts", "reason", "by", "date");

    private record Entry(String id, String facts, String reason, String by, LocalDate date, Place place) {}

    /**
     * Findings parted into those that stand and those that were accepted.
     *
     * @param open in the order given
     * @param problems entries that could not be read, no longer fit, or were made on other facts
     */
    public record Parted(List<Finding> open, List<Accepted> accepted, List<Problem> problems) {

        public Parted {
            open = List.copyOf(open);
            accepted = List.copyOf(accepted);
            problems = List.copyOf(problems);
        }
    }

    private final List<Entry> entries = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();

    private Acceptances() {}

    public static Acceptances none() {
        return new Acceptances();
    }

    /** Reads one file. What is wrong in an entry costs that entry alone: its finding stays open. */
    public static Acceptances read(Source source, Limits limits) {
        Acceptances read = new Acceptances();
        try {
            long most = limits.amount(Limit.SETTINGS_MB);
            if (Files.size(source.path()) > most)
                read.say(
                        Place.file(source.file()),
                        "It is larger than " + most + " bytes; nothing is accepted by it. Shorten it, or "
                                + Limit.SETTINGS_MB.raise() + ".");
            else read.root(YamlText.read(Files.readString(source.path(), StandardCharsets.UTF_8)), source.file());
        } catch (YamlText.Broken broken) {
            read.say(
                    Place.row(source.file(), broken.line()),
                    "The list of accepted findings could not be read: " + broken.getMessage()
                            + ". Nothing is accepted.");
        } catch (IOException e) {
            read.say(
                    Place.file(source.file()), "The list of accepted findings could not be read. Nothing is accepted.");
        }
        return read;
    }

    private void root(YamlText root, String file) {
        boolean list = root instanceof YamlText.Entries all
                && all.entries().size() == 1
                && all.entries().get(0).key().equals("accepted")
                && all.entries().get(0).value() instanceof YamlText.Items;
        if (!list) {
            boolean empty =
                    root instanceof YamlText.Entries all && all.entries().isEmpty();
            if (!empty) say(Place.row(file, root.line()), "It is to hold one key, accepted, with a list.");
            return;
        }
        YamlText.Items items =
                (YamlText.Items) ((YamlText.Entries) root).entries().get(0).value();
        for (YamlText item : items.items()) entry(item, file);
    }

    private void entry(YamlText item, String file) {
        Place at = Place.row(file, item.line());
        Map<String, String> values = new HashMap<>();
        if (item instanceof YamlText.Entries all)
            for (YamlText.Entry e : all.entries())
                if (e.value() instanceof YamlText.Text t && !t.text().isBlank())
                    values.put(e.key(), t.text().strip());
        for (String key : values.keySet().stream().sorted().toList())
            if (!KEYS.contains(key)) say(at, "An accepted finding has no '" + key + "'.");
        List<String> missing =
                KEYS.stream().filter(k -> !values.containsKey(k)).sorted().toList();
        if (!missing.isEmpty()) {
            say(at, "An accepted finding lacks " + Words.list(missing) + "; it is not accepted.");
            return;
        }
        try {
            entries.add(new Entry(
                    values.get("id"),
                    values.get("facts"),
                    values.get("reason"),
                    values.get("by"),
                    LocalDate.parse(values.get("date")),
                    at));
        } catch (DateTimeParseException e) {
            say(at, "'" + values.get("date") + "' is no date (2026-03-01); the finding is not accepted.");
        }
    }

    private void say(Place place, String message) {
        problems.add(new Problem(place, message, "Correct the file and run again."));
    }

    /** Parts the findings. Of entries for one finding the first with the right facts counts. */
    public Parted part(List<Finding> findings) {
        List<Problem> said = new ArrayList<>(problems);
        List<Finding> open = new ArrayList<>();
        List<Accepted> accepted = new ArrayList<>();
        Map<String, List<Entry>> byId = new HashMap<>();
        for (Entry e : entries)
            byId.computeIfAbsent(e.id(), id -> new ArrayList<>(1)).add(e);
        for (Finding f : findings) {
            List<Entry> entered = byId.getOrDefault(f.id(), List.of());
            byId.remove(f.id());
            var fits = entered.stream().filter(e -> e.facts().equals(f.facts())).findFirst();
            if (fits.isPresent())
                accepted.add(new Accepted(
                        f, fits.get().reason(), fits.get().by(), fits.get().date()));
            else open.add(f);
            if (fits.isEmpty() && !entered.isEmpty())
                said.add(new Problem(
                        entered.get(0).place(),
                        "The facts of " + f.id() + " have changed since "
                                + entered.get(0).by() + " accepted it: it is open again.",
                        "Look at it again; to accept it as it is now, write facts: " + f.facts() + "."));
        }
        for (Entry e : entries)
            if (byId.containsKey(e.id()))
                said.add(new Problem(
                        e.place(), "No finding is " + e.id() + " any more.", "Take the entry out of the list."));
        return new Parted(open, accepted, said);
    }
}
