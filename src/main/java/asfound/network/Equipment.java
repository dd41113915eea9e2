package asfound.network;

import asfound.model.EquipmentKind;
import asfound.model.Observation;
import asfound.model.Place;
import java.util.List;

/**
 * One piece of equipment under its one name.
 *
 * @param name the one name it goes by in every output: as the drawings write it, or as the survey does where it is not drawn
 * @param kind what it is, as far as paper and survey say
 * @param drawn some drawing shows it (as a directory, listed, or at either end of a drawn connection)
 * @param found an observation met it; one by {@code label} or {@code does not feed} does not
 * @param alsoWritten the other ways in which it is written, sorted
 * @param drawnAt where drawings show it
 * @param seenBy the observations that met it
 * @param lifeSafety the user named it as life-safety equipment, or its name says so
 * @param doubtful a drawing of it was read with doubt: never {@code agrees}
 */
public record Equipment(
        String name,
        EquipmentKind kind,
        boolean drawn,
        boolean found,
        List<String> alsoWritten,
        List<Place> drawnAt,
        List<Observation> seenBy,
        boolean lifeSafety,
        boolean doubtful) {

    public Equipment {
        alsoWritten = List.copyOf(alsoWritten);
        drawnAt = List.copyOf(drawnAt);
        seenBy = List.copyOf(seenBy);
    }
}
