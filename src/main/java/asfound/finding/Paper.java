package asfound.finding;

import asfound.drawing.Drawings;
import asfound.model.Directory;
import asfound.model.OneLine;
import asfound.model.Place;
import asfound.network.Device;
import asfound.network.Equipment;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The drawings by the one name of what they show: where a value stands, and where one is to be added. */
final class Paper {

    private final Map<String, String> names = new HashMap<>();
    private final Map<String, List<Directory>> directories = new HashMap<>();
    private final Map<String, List<OneLine.Listed>> listed = new HashMap<>();
    private final Set<String> onOneLine = new HashSet<>();
    private final Set<Place> feederRows = new HashSet<>();
    private final Optional<Place> oneLine;
    private final Optional<Place> anyDrawing;

    Paper(Drawings drawings, List<Equipment> equipment) {
        for (Equipment e : equipment) {
            names.put(e.name(), e.name());
            for (String written : e.alsoWritten()) names.put(written, e.name());
        }
        for (Directory d : drawings.directories())
            directories
                    .computeIfAbsent(nameOf(d.panel()), n -> new ArrayList<>())
                    .add(d);
        OneLine lines = drawings.oneLine();
        for (OneLine.Listed e : lines.equipment()) {
            String name = nameOf(e.name().or(""));
            listed.computeIfAbsent(name, n -> new ArrayList<>()).add(e);
            onOneLine.add(name);
        }
        for (OneLine.Feeder f : lines.feeders()) {
            feederRows.add(f.place());
            f.from().value().ifPresent(n -> onOneLine.add(nameOf(n)));
            f.to().value().ifPresent(n -> onOneLine.add(nameOf(n)));
        }
        oneLine = lines.feeders().stream()
                .map(f -> Place.file(f.place().file()))
                .findFirst()
                .or(() -> lines.equipment().stream()
                        .map(e -> Place.file(e.place().file()))
                        .findFirst());
        anyDrawing = oneLine.or(() -> drawings.directories().stream()
                .map(d -> Place.file(d.place().file()))
                .findFirst());
    }

    /** The one name of what drawings write; the writing itself where the network has none for it. */
    String nameOf(String written) {
        return names.getOrDefault(written, written);
    }

    List<Directory> directories(String name) {
        return directories.getOrDefault(name, List.of());
    }

    List<OneLine.Listed> listed(String name) {
        return listed.getOrDefault(name, List.of());
    }

    boolean onOneLine(String name) {
        return onOneLine.contains(name);
    }

    boolean isFeederRow(Place place) {
        return feederRows.contains(place);
    }

    boolean hasOneLine() {
        return oneLine.isPresent();
    }

    /** The file of the one-line's tables, or of any drawing where there are none. */
    Place forNewRow() {
        return anyDrawing.orElse(Place.file("one-line"));
    }

    /** The device can stand as an entry of a directory that is drawn. */
    boolean canHoldEntry(Device device) {
        return Comparisons.isNumber(device.key()) && directories.containsKey(device.in());
    }

    /** The file and page of the directory that an entry is to be added to; empty where the equipment has none. */
    Optional<Place> forNewEntry(String name) {
        return directories(name).stream()
                .findFirst()
                .map(d -> d.place() instanceof Place.OnPage p
                        ? Place.page(p.file(), p.page())
                        : Place.file(d.place().file()));
    }
}
