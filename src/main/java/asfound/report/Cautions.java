package asfound.report;

import java.util.List;

/**
 * The cautions that stand on everything that could be acted on, in one wording.
 *
 * <p>Paraphrased from 29 CFR 1910.333(b)(2) and 1910.147(d) and from NFPA 70E 120.5; local codes and licensed practice
 * decide. {@link #TELL} from 29 CFR 1910.147(c)(6)-(7).
 */
public final class Cautions {

    /** What a sheet of this kind is, and is not. */
    public static final String WORK_AID = "A work aid made from records. It is no procedure and no permit.";

    /** What the best of the three verdicts means. */
    public static final String AGREES =
            "'agrees' means that drawing and survey agree. It never means that the equipment is safe or dead.";

    /** Each a sentence, in the order in which they matter at the equipment. */
    public static final List<String> ALL = List.of(
            "Test for absence of voltage, every conductor, with a tester proven on a known source before and after.",
            "Lock and tag every source. There may be sources that no record shows: backfeeds, generators, inverters,"
                    + " UPS, control and emergency supplies.",
            "Release stored energy: capacitors, batteries, UPS, springs, turning motors.",
            "Qualified persons only. Local codes and licensed practice decide.");

    /** All of them in one paragraph. */
    public static final String PARAGRAPH = String.join(" ", ALL);

    /** For one cell of a table or one line of a terminal. */
    public static final String SHORT =
            "Before work: test for absence of voltage with a proven tester; lock and tag every source; release stored"
                    + " energy. Qualified persons only; local codes and licensed practice decide.";

    /** A reminder alone: what applies where the work is done is decided there. */
    public static final String TELL =
            "Reminder, deferring to local rules and the site's own procedures: 29 CFR 1910.147(c)(6) has energy control"
                    + " procedures inspected at least once a year, and (c)(7) has those who rely on them trained again when"
                    + " equipment or its procedure changes. Tell them before work.";

    private Cautions() {}
}
