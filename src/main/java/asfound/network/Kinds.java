package asfound.network;

import asfound.drawing.Drawings;
import asfound.model.Directory;
import asfound.model.EquipmentKind;
import asfound.model.Observation;
import asfound.model.OneLine;
import asfound.model.Place;
import asfound.names.ImpliedKind;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What each equipment is: as listed, else as surveyed, else a panel where it has a directory, else as its name says. */
final class Kinds {

    private record At(EquipmentKind kind, Place place) {}

    private final Map<String, At> listed = new HashMap<>();
    private final Map<String, At> surveyed = new HashMap<>();
    private final Set<String> withDirectory = new HashSet<>();
    private final Map<String, EquipmentKind> answers = new HashMap<>();

    Kinds(Names names, Drawings drawings, List<Observation> survey) {
        for (OneLine.Listed e : drawings.oneLine().equipment())
            e.name().value().ifPresent(n -> note(listed, names.orItself(n), e.kind(), e.place()));
        for (Directory d : drawings.directories()) withDirectory.add(names.orItself(d.panel()));
        for (Observation o : survey)
            if (Names.namesEquipment(o) && o.found().isStated())
                note(surveyed, names.orItself(o.found().value().get()), o.kind(), o.place());
    }

    private static void note(Map<String, At> kinds, String name, EquipmentKind kind, Place place) {
        if (kind == EquipmentKind.UNKNOWN) return;
        kinds.merge(name, new At(kind, place), (a, b) -> a.place().compareTo(b.place()) <= 0 ? a : b);
    }

    EquipmentKind of(String name) {
        return answers.computeIfAbsent(name, this::decide);
    }

    private EquipmentKind decide(String name) {
        if (listed.containsKey(name)) return listed.get(name).kind();
        boolean panel = withDirectory.contains(name);
        if (surveyed.containsKey(name)) {
            EquipmentKind kind = surveyed.get(name).kind();
            if (!(panel && kind.isPureSource())) return kind;
        }
        return panel ? EquipmentKind.PANEL : ImpliedKind.of(name);
    }
}
