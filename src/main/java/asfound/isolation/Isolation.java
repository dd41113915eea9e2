package asfound.isolation;

import asfound.network.Network;
import java.util.List;

/** Isolation verdicts of a building. */
public final class Isolation {

    private Isolation() {}

    /** One verdict for each equipment but pure sources, in natural order of name. */
    public static List<Verdict> verdicts(Network network) {
        return new Judge(network).verdicts();
    }

    /** One verdict for each drawing that shows equipment, in order of file: the worst of what it shows. */
    public static List<DrawingVerdict> drawingVerdicts(Network network, List<Verdict> verdicts) {
        return DrawingVerdicts.of(network, verdicts);
    }
}
