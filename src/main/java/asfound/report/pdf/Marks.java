package asfound.report.pdf;

import asfound.finding.Correction;
import asfound.finding.Finding;
import asfound.model.Box;
import asfound.model.Directory;
import asfound.model.Natural;
import asfound.model.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Gathers what findings say about the entries of one drawing. */
final class Marks {

    /** Where a mark goes: boxes that differ by less than half a point are one; without a box, what it is about. */
    private record Spot(int page, long y, long x, long w, long h, String about) implements Comparable<Spot> {

        static Spot of(Place.OnPage place, String about) {
            Box box = place.area().orElse(new Box(-1, -1, 0, 0));
            return new Spot(
                    place.page(),
                    half(box.y()),
                    half(box.x()),
                    half(box.w()),
                    half(box.h()),
                    place.area().isPresent() ? "" : about);
        }

        private static long half(double points) {
            return Math.round(points * 2);
        }

        @Override
        public int compareTo(Spot o) {
            int c = Integer.compare(page, o.page);
            if (c == 0) c = Long.compare(y, o.y);
            if (c == 0) c = Long.compare(x, o.x);
            if (c == 0) c = Long.compare(w, o.w);
            if (c == 0) c = Long.compare(h, o.h);
            return c == 0 ? Natural.ORDER.compare(about, o.about) : c;
        }
    }

    private final Map<Spot, List<Mark.Note>> notes = new TreeMap<>();
    private final Map<Spot, Place.OnPage> places = new TreeMap<>();

    private Marks() {}

    /** The marks of that drawing in reading order. */
    static List<Mark> of(String drawing, List<Finding> findings, List<Directory> directories) {
        Marks marks = new Marks();
        for (Finding finding : findings) marks.add(drawing, finding);
        List<Mark> all = new ArrayList<>();
        Map<Integer, Optional<Double>> pitches = new HashMap<>();
        marks.places.values().forEach(p -> pitches.computeIfAbsent(p.page(), n -> RowPitch.on(p, directories)));
        marks.notes.forEach((spot, said) -> {
            Place.OnPage place = marks.places.get(spot);
            Optional<Box> near = place.area().isPresent() ? Optional.empty() : near(place, spot.about(), directories);
            all.add(new Mark(all.size() + 1, place.page(), place.area(), pitches.get(place.page()), near, said));
        });
        return all;
    }

    /** The directory that the mark is about, or all directories of the page together. */
    private static Optional<Box> near(Place.OnPage page, String about, List<Directory> directories) {
        String panel = about.substring(0, about.indexOf('\n'));
        List<Directory> here = directories.stream()
                .filter(d -> d.place().file().equals(page.file()) && d.place().pageNumber() == page.page())
                .toList();
        List<Directory> named =
                here.stream().filter(d -> d.panel().equalsIgnoreCase(panel)).toList();
        return (named.isEmpty() ? here : named)
                .stream()
                        .flatMap(d -> d.circuits().stream())
                        .map(Directory.Circuit::place)
                        .filter(p -> p.pageNumber() == page.page())
                        .flatMap(p -> onPage(p).area().stream())
                        .reduce(Box::union);
    }

    private void add(String drawing, Finding finding) {
        boolean corrected = false;
        for (Correction correction : finding.corrections()) {
            if (!correction.place().file().equals(drawing)) continue;
            put(onPage(correction.place()), new Mark.Note(finding, Optional.of(correction)));
            corrected = true;
        }
        if (corrected) return;
        for (Place place : finding.drawings())
            if (place.file().equals(drawing)) put(onPage(place), new Mark.Note(finding, Optional.empty()));
    }

    private static Place.OnPage onPage(Place place) {
        return place instanceof Place.OnPage p
                ? p
                : new Place.OnPage(place.file(), place.pageNumber(), Optional.empty());
    }

    private void put(Place.OnPage place, Mark.Note note) {
        String about = note.correction()
                .map(c -> c.panel() + "\n" + c.circuit())
                .orElseGet(() -> note.finding().equipment() + "\n"
                        + note.finding().circuit().orElse(""));
        Spot spot = Spot.of(place, about);
        places.putIfAbsent(spot, place);
        List<Mark.Note> said = notes.computeIfAbsent(spot, s -> new ArrayList<>());
        if (!said.contains(note)) said.add(note);
    }
}
