package asfound.report.page;

import asfound.audit.ToBeTold;
import asfound.isolation.Verdict;
import asfound.model.Observation;
import asfound.model.Place;
import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.network.Equipment;
import asfound.recordset.Source;
import asfound.report.picture.Picture;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How the page says things. */
public final class Words {

    private static final int MOST_NAMES = 20;

    private Words() {}

    /** {@code 1 panel}, {@code 2 panels}; the plural where it is no plain s. */
    public static String count(long n, String one, String many) {
        return String.format(Locale.ROOT, "%,d", n).replace(',', '\u202f') + " " + (n == 1 ? one : many);
    }

    public static String verdict(Verdict.Standing standing) {
        return switch (standing) {
            case FAILS -> "do not isolate by the drawing";
            case UNPROVEN -> "unproven";
            case AGREES -> "paper and survey agree";
        };
    }

    /** The verdict for the legend. */
    public static String explained(Verdict.Standing standing) {
        return switch (standing) {
            case FAILS -> "with the drawn points open, supply still reaches it on the evidence";
            case UNPROVEN -> "not every way for supply to reach it was traced";
            case AGREES -> "paper and survey agree; test all the same";
        };
    }

    /** A short word with a hyphen and a figure is a name, {@code SVC-1/S1}, and is not broken over two lines. */
    public static boolean isName(String word) {
        return word.length() <= 16 && word.indexOf('-') > 0 && word.chars().anyMatch(Character::isDigit);
    }

    public static String devices(List<Device> devices) {
        return devices.isEmpty() ? "none" : devices.stream().map(Device::label).collect(Collectors.joining(" and "));
    }

    public static String foundPoints(Verdict v) {
        return v.foundPoints().map(Words::devices).orElse("not known");
    }

    /** Labels of the drawn points, one to a line, for the picture; null where there is no verdict. */
    public static String drawnLines(Verdict v) {
        return v == null ? null : lines(v.drawnPoints());
    }

    public static String foundLines(Verdict v) {
        return v == null ? null : lines(v.foundPoints().orElse(List.of()));
    }

    /** What keeps it live, one to a line. */
    public static String liveLines(Verdict v) {
        return v == null ? null : String.join("\n", v.path());
    }

    private static String lines(List<Device> devices) {
        return devices.stream().map(Device::label).collect(Collectors.joining("\n"));
    }

    public static String by(Connection c) {
        return c.devices().isEmpty()
                ? "no device"
                : c.devices().stream().map(Device::label).collect(Collectors.joining(", then "));
    }

    public static String kind(String kind) {
        return kind.replace('-', ' ');
    }

    /** {@code opened, 2026-03-04, M. Okafor: survey/walk.csv, row 7}. */
    public static String evidence(Observation o) {
        String how = Stream.of(
                        o.method().word(),
                        o.date().value().map(Object::toString).orElse(o.date().raw()),
                        o.by())
                .filter(s -> !s.isBlank())
                .collect(Collectors.joining(", "));
        return (how.isEmpty() ? "" : how + ": ") + o.place().inWords();
    }

    /** What was seen, in words: {@code MDP/7 feeds LP-2A}. */
    public static String seen(Observation o) {
        String circuit = o.circuit().value().map(c -> "/" + c.inWords()).orElse("");
        return (o.panel().raw() + circuit + " " + o.relation().word() + " "
                        + o.found().raw())
                .strip();
    }

    /** The device as a person writes it: its positions as drawn, else its key. */
    public static String circuit(DeviceRecord d) {
        return d.showings().stream()
                .flatMap(s -> s.circuit().stream())
                .map(c -> c.label().isEmpty() ? c.ref().inWords() : c.label())
                .findFirst()
                .orElse(d.device().key());
    }

    public static String drawn(DeviceRecord d) {
        if (d.showings().isEmpty()) return "not drawn";
        return d.showings().stream()
                .map(s -> s.serves().map(x -> x.text()).orElse(s.use().name().toLowerCase(Locale.ROOT)))
                .distinct()
                .collect(Collectors.joining("; "));
    }

    public static String found(DeviceRecord d) {
        return d.sightings().stream()
                .map(s -> s.serves()
                        .map(x -> (s.observation().relation() == Observation.Relation.FEEDS
                                        ? ""
                                        : s.observation().relation().word() + " ")
                                + x.text())
                        .orElse(s.observation().relation().word()))
                .distinct()
                .collect(Collectors.joining("; "));
    }

    public static String tracing(DeviceRecord.Tracing tracing) {
        return switch (tracing) {
            case TRACED -> "traced";
            case CONFLICT -> "conflict";
            case STALE -> "out of date";
            case NOT_TRACED -> "not traced";
            case NOT_SEEN -> "not seen";
        };
    }

    /** The records that a correction touches, in a line; the first of many, and how many more there are. */
    public static String lockoutRecords(ToBeTold told) {
        if (told.leavesLockout()) return "none: no isolation point changes";
        String named = told.devices().isEmpty() ? "" : "any that name " + some(told.devices());
        return Stream.of(some(told.equipment()), named)
                .filter(s -> !s.isEmpty())
                .collect(Collectors.joining("; "));
    }

    /** The first of them, and how many more there are. */
    public static String some(List<String> names) {
        if (names.size() <= MOST_NAMES) return String.join(", ", names);
        return String.join(", ", names.subList(0, MOST_NAMES)) + " and " + (names.size() - MOST_NAMES)
                + " more (audit.json has all)";
    }

    public static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", Math.floor(share * 100 + 1e-9));
    }

    public static String bound(OptionalDouble bound) {
        return bound.isPresent()
                ? String.format(Locale.ROOT, "%.1f %%", Math.ceil(bound.getAsDouble() * 1000) / 10)
                : "none";
    }

    /** One place for each page or row: entries of one page lead to one page. */
    public static List<Place> places(List<Place> places) {
        Map<String, Place> byWords = new LinkedHashMap<>();
        places.forEach(p -> byWords.putIfAbsent(p.inWords(), p));
        return List.copyOf(byWords.values());
    }

    public static String orDash(String text) {
        return text.isBlank() ? "nothing" : text;
    }

    public static String drawing(Verdict.Standing standing) {
        return switch (standing) {
            case FAILS -> "Do not use for isolation.";
            case UNPROVEN -> "Not proven for isolation.";
            case AGREES -> "Agrees with the survey.";
        };
    }

    public static String source(Source.Kind kind) {
        return switch (kind) {
            case PDF -> "drawing, PDF";
            case WORKBOOK -> "workbook";
            case SURVEY -> "field survey";
            case FEEDERS -> "one-line, feeders";
            case EQUIPMENT -> "one-line, equipment";
            case SCHEDULE_TABLE -> "panel schedule, table";
            case SETTINGS -> "settings";
            case UNKNOWN -> "not understood";
        };
    }

    /** What an equipment is and how it is known, in a line. */
    public static String about(Equipment e) {
        String known = e.drawn()
                ? e.found() ? "drawn and found" : "drawn, not met by the survey"
                : e.found() ? "found, on no drawing" : "named, neither drawn nor found";
        String kind = e.kind().word().isEmpty() ? "kind not known" : e.kind().word();
        String also = e.alsoWritten().isEmpty() ? "" : "; also written " + String.join(", ", e.alsoWritten());
        String life = e.lifeSafety() ? "; life safety" : "";
        String doubt = e.doubtful() ? "; its drawing was read with doubt" : "";
        return kind + ", " + known + life + doubt + also;
    }

    /** What a search looks into besides the name. */
    public static String search(Equipment e) {
        return String.join(" ", e.alsoWritten()) + " " + e.kind().word();
    }

    /** A symbol of the one-line for those who hear it. */
    public static String symbol(Picture.Symbol s) {
        return s.name() + ", " + s.detail()
                + s.verdict().map(v -> ", " + verdict(v)).orElse("");
    }
}
