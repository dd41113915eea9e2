package asfound.sample;

import static asfound.sample.MadeAudit.saw;
import static asfound.sample.MadeAudit.verdict;

import asfound.audit.Audit;
import asfound.finding.Correction;
import asfound.finding.CrossedFeeds;
import asfound.finding.DeviceDiffers;
import asfound.finding.Event;
import asfound.finding.Finding;
import asfound.finding.Severity;
import asfound.finding.VagueEntry;
import asfound.isolation.DrawingVerdict;
import asfound.isolation.Verdict.Standing;
import asfound.model.Box;
import asfound.model.Directory;
import asfound.model.EquipmentKind;
import asfound.model.Observation;
import asfound.model.Observation.Method;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.model.Stated;
import asfound.model.Voltage;
import asfound.network.DeviceRecord.Tracing;
import asfound.recordset.Source;
import asfound.trust.Trace;
import java.util.List;
import java.util.Optional;

/**
 * Osprey Yard, an invented repair yard: MDP feeds LP-2A and LP-2B, whose feeders were crossed; one rating in LP-2A's
 * directory cannot be read, and one description would run as a formula in a spreadsheet.
 */
public final class OspreyYard {

    public static final String LP_2A = "drawings/LP-2A.pdf";
    public static final String LP_2B = "drawings/LP-2B.pdf";
    public static final String MDP = "drawings/MDP.pdf";
    public static final String FORMULA = "=HYPERLINK(\"http://evil.example\",\"RECEPT RM 204\")";

    private OspreyYard() {}

    /** As first surveyed: the crossing and a rating stand wrong. */
    public static MadeAudit asSurveyed() {
        MadeAudit yard = base();
        yard.findings.add(crossing());
        yard.findings.add(rating());
        yard.findings.add(look());
        yard.verdicts.add(
                verdict("LP-2A", Standing.FAILS, "MDP/7", "MDP/9", "MDP/9 was traced to it, MDP/7 to LP-2B."));
        yard.verdicts.add(
                verdict("LP-2B", Standing.FAILS, "MDP/9", "MDP/7", "MDP/7 was traced to it, MDP/9 to LP-2A."));
        yard.verdicts.add(verdict("MDP", Standing.UNPROVEN, "UTIL/M", null, "UTIL/M was not traced to it."));
        yard.drawings.add(new DrawingVerdict(
                LP_2A, Standing.FAILS, List.of("LP-2A"), List.of("LP-2A: MDP/9 was traced to it, MDP/7 to LP-2B.")));
        yard.drawings.add(new DrawingVerdict(
                LP_2B, Standing.FAILS, List.of("LP-2B"), List.of("LP-2B: MDP/7 was traced to it, MDP/9 to LP-2A.")));
        yard.drawings.add(new DrawingVerdict(
                MDP, Standing.FAILS, List.of("LP-2A", "LP-2B", "MDP"), List.of("MDP: UTIL/M was not traced to it.")));
        yard.plan.add(new Trace(
                1,
                Optional.of("Level 0, switch room"),
                "UTIL",
                "M",
                "MDP",
                Method.OPENED,
                "It settles MDP, and with it everything that MDP feeds.",
                List.of("MDP"),
                List.of()));
        return yard;
    }

    /** After the drafter put the crossing right; the survey is the same. */
    public static MadeAudit asCorrected() {
        MadeAudit yard = base().revised(MDP);
        yard.findings.add(rating());
        yard.verdicts.add(verdict("LP-2A", Standing.AGREES, "MDP/9", "MDP/9", "MDP/9 was traced to it."));
        yard.verdicts.add(verdict("LP-2B", Standing.AGREES, "MDP/7", "MDP/7", "MDP/7 was traced to it."));
        yard.verdicts.add(verdict("MDP", Standing.UNPROVEN, "UTIL/M", null, "UTIL/M was not traced to it."));
        for (String file : List.of(LP_2A, LP_2B, MDP))
            yard.drawings.add(new DrawingVerdict(
                    file, Standing.UNPROVEN, List.of("MDP"), List.of("MDP: UTIL/M was not traced to it.")));
        return yard;
    }

    private static MadeAudit base() {
        MadeAudit yard = new MadeAudit("Osprey Yard");
        yard.input(
                        LP_2A,
                        Source.Kind.PDF,
                        2,
                        new Problem(
                                Place.page(LP_2A, 2),
                                "The page holds a picture and no text.",
                                "Ask for a drawing with text."))
                .input(LP_2B, Source.Kind.PDF, 1)
                .input(MDP, Source.Kind.PDF, 1)
                .input(MadeAudit.SURVEY, Source.Kind.SURVEY, 14);
        yard.equipment("LP-2A", EquipmentKind.PANEL, true, true, "Panel LP2A")
                .equipment("LP-2B", EquipmentKind.PANEL, true, true)
                .equipment("MDP", EquipmentKind.SWITCHBOARD, true, true)
                .equipment("UTIL", EquipmentKind.UTILITY, true, false);
        yard.device("LP-2A", "3", Tracing.TRACED, "RECEPT RM 204", saw(4, "LP-2A", "3", "Receptacles 204", Method.TONE))
                .device("MDP", "7", Tracing.TRACED, "LP-2A", seven())
                .device("MDP", "9", Tracing.TRACED, "LP-2B", nine());
        yard.directories.add(directory());
        return yard.covered(42, 20);
    }

    private static Observation seven() {
        return saw(2, "MDP", "7-9-11", "LP-2B", Method.OPENED);
    }

    private static Observation nine() {
        return saw(3, "MDP", "9", "LP-2A", Method.TONE);
    }

    private static Finding crossing() {
        Place seven = Place.page(MDP, 1, new Box(60.126, 184, 200, 12));
        Place nine = Place.page(MDP, 1, new Box(60.126, 196, 200, 12));
        return new CrossedFeeds(new Event(
                Severity.DANGER,
                Finding.Part.of("MDP", "7"),
                List.of(Finding.Part.of("MDP", "9")),
                "MDP/7 feeds LP-2A; MDP/9 feeds LP-2B",
                "MDP/7 feeds LP-2B; MDP/9 feeds LP-2A",
                List.of(seven, nine),
                List.of(seven(), nine()),
                "The feeders of LP-2A and LP-2B are crossed: opening MDP/7 for LP-2A leaves it live.",
                "Exchange LP-2A and LP-2B in MDP's directory.",
                List.of(
                        new Correction(
                                seven, "MDP", "7", Correction.Field.DESCRIPTION, "LP-2A", "LP-2B", "Traced to LP-2B."),
                        new Correction(
                                nine,
                                "MDP",
                                "9",
                                Correction.Field.DESCRIPTION,
                                "LP-2B",
                                "LP-2A",
                                "Traced to LP-2A."))));
    }

    private static Finding rating() {
        Place at = Place.page(LP_2A, 1, new Box(60, 112, 200, 12));
        return new DeviceDiffers(new Event(
                Severity.CAUTION,
                Finding.Part.of("LP-2A", "3"),
                List.of(),
                "20 A",
                "30 A",
                List.of(at),
                List.of(saw(4, "LP-2A", "3", "Receptacles 204", Method.TONE)),
                "LP-2A/3 is drawn with 20 A and was found with 30 A.",
                "Write 30 A.",
                List.of(new Correction(at, "LP-2A", "3", Correction.Field.RATING, "20", "30", FORMULA))));
    }

    private static Finding look() {
        return new VagueEntry(new Event(
                Severity.NOTICE,
                Finding.Part.of("LP-2A", "5"),
                List.of(),
                "LIGHTS",
                "",
                List.of(Place.page(LP_2A, 1)),
                List.of(),
                "LP-2A/5 says LIGHTS and not which.",
                "Find out which lights it serves, and write it.",
                List.of()));
    }

    private static Directory directory() {
        Place page = Place.page(LP_2A, 1);
        Directory.Header header = new Directory.Header(
                Stated.of("LP-2A", "PANEL LP-2A", page),
                Stated.text("Level 2, corridor", page),
                Stated.text("MDP CKT 7", page),
                Stated.of(new Voltage(208, Optional.of(120)), "120/208V", page),
                Stated.of(3, "3", page),
                Stated.of(4, "4", page),
                Stated.of(100, "100A", page),
                Stated.blank(page),
                Stated.of(Directory.Mains.LUGS, "MLO", page),
                Stated.of(22.0, "22 KAIC", page),
                Stated.blank(page));
        return new Directory(
                "LP-2A",
                header,
                List.of(
                        circuit(1, Stated.unreadable("2O", box(1)), "LTG RM 201", 850.5),
                        circuit(3, Stated.of(20, "20", box(3)), FORMULA, 1440),
                        new Directory.Circuit(
                                List.of(2, 4),
                                "",
                                2,
                                Stated.of(30, "30", box(2)),
                                Stated.text("WH-1 \u202Eflow heater", box(2)),
                                Directory.Use.LOAD,
                                List.of(Stated.of(1500.0, "1.5", box(2)), Stated.of(1500.0, "1.5", box(2))),
                                box(2)),
                        new Directory.Circuit(
                                List.of(6),
                                "",
                                1,
                                Stated.of(20, "20", box(6)),
                                Stated.text("SPARE", box(6)),
                                Directory.Use.SPARE,
                                List.of(),
                                box(6))),
                new Directory.Totals(
                        List.of(Stated.of(2350.5, "2,351", page), Stated.blank(), Stated.unreadable("l440", page)),
                        Stated.of(5290.5, "5.3 kVA", page),
                        Stated.blank()),
                page,
                0.93,
                List.of(8),
                List.of(new Problem(box(8), "Position 8 cannot be read.", "Look at the drawing.")));
    }

    private static Directory.Circuit circuit(int position, Stated<Integer> rating, String description, double va) {
        Place at = box(position);
        return new Directory.Circuit(
                List.of(position),
                "",
                1,
                rating,
                Stated.text(description, at),
                Directory.Use.LOAD,
                List.of(Stated.of(va, Double.toString(va), at)),
                at);
    }

    private static Place box(int position) {
        return Place.page(LP_2A, 1, new Box(60, 100 + 6 * position, 200, 12));
    }

    public static Audit audit() {
        return asSurveyed().build();
    }
}
