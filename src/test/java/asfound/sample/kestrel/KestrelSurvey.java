package asfound.sample.kestrel;

import asfound.sample.kestrel.DrawnPanel.DrawnCircuit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * The field survey of 2025: Okafor traced the main electrical room and the 480 V side, Lindqvist the floors, each with a
 * table of their own making. About seven entries in ten were traced.
 */
final class KestrelSurvey {

    private static final String OKAFOR_HEAD =
            "panel,circuit,relation,found,kind,method,poles,rating_a,voltage,phase,wire,location,by,date,note,photo";
    private static final String LINDQVIST_HEAD = "Board;Cct;Result;Serves;Sort;How;P;Amps;Where;Who;Day;Remarks";

    private final KestrelDrawings drawings;

    KestrelSurvey(KestrelDrawings drawings) {
        this.drawings = drawings;
    }

    Map<String, String> files() {
        return Map.of("okafor-electrical-room.csv", okafor(), "lindqvist-floors.csv", lindqvist());
    }

    private String okafor() {
        List<String> rows = new ArrayList<>(List.of(OKAFOR_HEAD));
        rows.addAll(KestrelWharfStory.FEEDERS_TRACED.strip().lines().toList());
        for (String panel : List.of("HP-1A", "HP-1B", "HL-1", "EDP"))
            for (Seen seen : walk(panel, FieldWords::inFull))
                rows.add(String.join(
                        ",",
                        panel,
                        seen.circuit.inWords(),
                        seen.relation,
                        seen.found,
                        "",
                        seen.method,
                        seen.circuit.isSpace() ? "" : "" + seen.circuit.poles(),
                        seen.circuit.isSpace() ? "" : "" + seen.circuit.ratingA(),
                        "",
                        "",
                        "",
                        drawings.panel(panel).location(),
                        "N. Okafor",
                        KestrelWharfStory.SURVEYED.get(panel).toString(),
                        "",
                        ""));
        return String.join("\r\n", rows) + "\r\n";
    }

    private String lindqvist() {
        List<String> rows =
                new ArrayList<>(List.of("Kestrel Wharf, walk of the floors, November 2025", "", LINDQVIST_HEAD));
        for (String panel : List.of("LP-1A", "LP-1B", "LP-2A", "LP-2B", "LP-3A", "KP-1", "ELP-1"))
            for (Seen seen : walk(panel, FieldWords::jotted))
                rows.add(String.join(
                        ";",
                        KestrelWharfStory.LINDQVIST_WRITES.getOrDefault(panel, panel),
                        seen.circuit.inWords().replace('-', '/'),
                        seen.relation,
                        seen.found,
                        seen.kind,
                        seen.method,
                        seen.circuit.isSpace() ? "" : "" + seen.circuit.poles(),
                        seen.circuit.isSpace() ? "" : "" + seen.circuit.ratingA(),
                        drawings.panel(panel).location(),
                        "S. Lindqvist",
                        KestrelWharfStory.SURVEYED.get(panel).toString(),
                        seen.remark));
        rows.addAll(KestrelWharfStory.LINDQVIST_BESIDES.strip().lines().toList());
        // A spreadsheet on her laptop wrote it: with a byte order mark.
        return "\uFEFF" + String.join("\r\n", rows) + "\r\n";
    }

    private record Seen(
            DrawnCircuit circuit, String relation, String found, String kind, String method, String remark) {}

    /** What a surveyor wrote down along one panel: as drawn, in their own words, but for what the story says was otherwise. */
    private List<Seen> walk(String panel, UnaryOperator<String> words) {
        Map<Integer, Seen> seen = new LinkedHashMap<>();
        for (DrawnCircuit c : drawings.panel(panel).circuits()) {
            KestrelWharfStory.Otherwise otherwise = KestrelWharfStory.OTHERWISE.get(panel + "/" + c.position());
            if (otherwise != null)
                seen.put(
                        c.position(),
                        new Seen(
                                c,
                                otherwise.relation(),
                                otherwise.found(),
                                otherwise.kind(),
                                "opened",
                                otherwise.remark()));
            else if (!KestrelWharfStory.NOT_TRACED.contains(panel + "/" + c.position()) && isTraced(panel, c))
                seen.put(c.position(), asDrawn(c, words));
        }
        return List.copyOf(seen.values());
    }

    private static Seen asDrawn(DrawnCircuit c, UnaryOperator<String> words) {
        String method = c.position() % 5 == 0 ? "opened" : "tone";
        if (c.isSpace()) return new Seen(c, "no device", "", "", "visual", "");
        if (c.isSpare()) return new Seen(c, "nothing", "", "", "opened", "");
        return new Seen(c, "feeds", words.apply(c.description()), "", method, "");
    }

    /** Seven in ten, spread evenly over a panel and beginning elsewhere in each. */
    private static boolean isTraced(String panel, DrawnCircuit c) {
        return Math.floorMod(c.position() * 3 + panel.length() + panel.charAt(panel.length() - 1), 10) < 7;
    }
}
