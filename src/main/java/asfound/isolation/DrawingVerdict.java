package asfound.isolation;

import java.util.List;

/**
 * A drawing's verdict: the worst of the equipment that it shows.
 *
 * @param file the drawing
 * @param standing the worst verdict
 * @param equipment the equipment that it shows, in natural order
 * @param reasons why, one sentence for each equipment that fails or is unproven, and one for findings of danger
 */
public record DrawingVerdict(String file, Verdict.Standing standing, List<String> equipment, List<String> reasons) {

    public DrawingVerdict {
        equipment = List.copyOf(equipment);
        reasons = List.copyOf(reasons);
    }
}
