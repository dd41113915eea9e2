package asfound.drawing.schedule.device;

import asfound.model.Box;
import asfound.model.Directory.Use;
import asfound.model.Stated;
import java.util.List;

/**
 * A circuit as it comes from the rows, before it has its place in a file.
 *
 * @param positions in rising order
 * @param label as printed where that is no plain number; else empty
 * @param trouble what about it could not be read; empty where all could
 */
public record Draft(
        List<Integer> positions,
        String label,
        int poles,
        Stated<Integer> ratingA,
        String description,
        Use use,
        List<Stated<Double>> loads,
        Box box,
        String trouble) {

    /** The same at one of its positions alone. */
    Draft at(int position) {
        return new Draft(List.of(position), "", 1, ratingA, description, use, List.of(), box, trouble);
    }

    /** A position with nothing beside it. */
    public boolean saysNothing() {
        return isBlank() && trouble.isEmpty();
    }

    /** Nothing or a mark stands beside the position. */
    boolean isBlank() {
        return use == Use.SPACE && description.isEmpty() && ratingA.isBlank();
    }
}
