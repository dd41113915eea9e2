package asfound.sample;

import static asfound.isolation.Verdict.Standing.AGREES;
import static asfound.isolation.Verdict.Standing.FAILS;
import static asfound.isolation.Verdict.Standing.UNPROVEN;
import static asfound.model.EquipmentKind.GENERATOR;
import static asfound.model.EquipmentKind.INVERTER;
import static asfound.model.EquipmentKind.PANEL;
import static asfound.model.EquipmentKind.SWITCHBOARD;
import static asfound.model.EquipmentKind.TRANSFER_SWITCH;
import static asfound.model.EquipmentKind.TRANSFORMER;
import static asfound.model.EquipmentKind.UPS;
import static asfound.model.EquipmentKind.UTILITY;
import static asfound.network.Standing.CONFIRMED;
import static asfound.network.Standing.CONTRADICTED;
import static asfound.network.Standing.FOUND;
import static asfound.network.Standing.IN_CONFLICT;
import static asfound.network.Standing.STALE;
import static asfound.network.Standing.UNTRACED;

import asfound.audit.Audit;
import asfound.finding.CrossedFeeds;
import asfound.finding.EntryBlank;
import asfound.finding.FeedsOther;
import asfound.finding.Severity;
import asfound.finding.SurveyConflict;
import asfound.finding.UndocumentedFeed;
import asfound.finding.UndocumentedSource;
import asfound.finding.VagueEntry;
import asfound.model.Place;
import asfound.network.Connection.Flow;

/** A small invented mill with one of everything that the report page can show. */
public final class BrackenMill {

    /** What a careless or malicious drawing might hold; it must stay text everywhere. */
    public static final String HOSTILE =
            "</script><script>window.ran=1</script><img src=x onerror=window.ran=2>&quot;' `${7*7}";

    private BrackenMill() {}

    public static Audit audit() {
        AuditSketch mill = new AuditSketch("Bracken Mill, weaving shed");
        mill.equipment(UTILITY, "UTILITY")
                .equipment(GENERATOR, "GEN-1")
                .equipment(INVERTER, "PV-1")
                .equipment(SWITCHBOARD, "MSB", "SB-2")
                .equipment(TRANSFORMER, "T-1")
                .equipment(TRANSFER_SWITCH, "ATS-1")
                .equipment(UPS, "UPS-1")
                .equipment(PANEL, "HP-1", "LP-1A", "LP-1B", "LP-2A", "EP-1", "LP-3", "LP-4")
                .drawnIn("drawings/level 2 panels.pdf", "LP-2A", "LP-3")
                .notDrawn("LP-4", "PV-1");
        mill.feeder("UTILITY", "MSB", CONFIRMED, "MSB/M1")
                .feeder("MSB", "HP-1", CONFIRMED, "MSB/1")
                .feeder("MSB", "T-1", CONFIRMED, "MSB/2")
                .feeder("T-1", "LP-1A", CONTRADICTED, "T-1/1")
                .feeder("T-1", "LP-1B", FOUND, "T-1/1")
                .feeder("T-1", "LP-1B", CONTRADICTED, "T-1/2")
                .feeder("T-1", "LP-1A", FOUND, "T-1/2")
                .connect("MSB", "SB-2", Flow.TIE, true, UNTRACED, "MSB/TIE")
                .connect("MSB", "ATS-1", Flow.ONE_WAY, false, CONFIRMED, "MSB/4")
                .connect("GEN-1", "ATS-1", Flow.ONE_WAY, false, UNTRACED, "GEN-1/M")
                .feeder("ATS-1", "EP-1", CONFIRMED)
                .connect("EP-1", "UPS-1", Flow.ONE_WAY, false, STALE, "EP-1/3")
                .feeder("UPS-1", "LP-2A", IN_CONFLICT, "UPS-1/1")
                .feeder("SB-2", "LP-3", UNTRACED, "SB-2/3")
                .feeder("UTILITY", "SB-2", CONFIRMED, "SB-2/M")
                .feeder("HP-1", "LP-4", FOUND, "HP-1/7")
                .feeder("PV-1", "HP-1", FOUND, "PV-1/D", "HP-1/12");
        mill.circuit("HP-1", 1, "Loom row A", "Loom row A")
                .circuit("HP-1", 3, "Loom row B", "Humidifier")
                .circuit("HP-1", 5, HOSTILE, "")
                .circuit("HP-1", 7, "", "LP-4")
                .circuit("LP-2A", 1, "Office receptacles", "")
                .circuit("LP-1A", 2, "Yard lighting", "Yard lighting");
        mill.verdict("MSB", AGREES, "MSB/M1", "MSB/M1", "", "Its only source was traced to the main device.")
                .verdict(
                        "HP-1",
                        FAILS,
                        "MSB/1",
                        "MSB/1, HP-1/12",
                        "PV-1",
                        "With MSB/1 open, PV-1 still feeds HP-1 through HP-1/12, which no drawing shows.")
                .verdict("T-1", AGREES, "MSB/2", "MSB/2", "", "MSB/2 was traced to T-1.")
                .verdict(
                        "LP-1A",
                        FAILS,
                        "T-1/1",
                        "T-1/2",
                        "UTILITY",
                        "T-1/1 was traced to LP-1B; LP-1A stays live through T-1/2.")
                .verdict(
                        "LP-1B",
                        FAILS,
                        "T-1/2",
                        "T-1/1",
                        "UTILITY",
                        "T-1/2 was traced to LP-1A; LP-1B stays live through T-1/1.")
                .verdict("ATS-1", UNPROVEN, "MSB/4, GEN-1/M", null, "", "GEN-1/M was not traced to ATS-1.")
                .verdict("EP-1", UNPROVEN, "MSB/4, GEN-1/M", null, "", "GEN-1/M was not traced.")
                .verdict("UPS-1", UNPROVEN, "EP-1/3", null, "", "EP-1/3 was traced before EP-1 was modified.")
                .verdict("LP-2A", UNPROVEN, "UPS-1/1", null, "", "Observations of UPS-1/1 contradict each other.")
                .verdict("SB-2", UNPROVEN, "SB-2/M, MSB/TIE", null, "", "The tie MSB/TIE was not traced.")
                .verdict("LP-3", UNPROVEN, "SB-2/3", null, "", "SB-2/3 was not traced to LP-3.")
                .verdict("LP-4", FAILS, "", "HP-1/7", "UTILITY", "LP-4 was found and no drawing shows it.");
        mill.finding(
                        UndocumentedSource::new,
                        Severity.DANGER,
                        "HP-1/12",
                        "",
                        "PV-1",
                        "PV-1 feeds HP-1 through HP-1/12 and no drawing shows it.")
                .finding(
                        CrossedFeeds::new,
                        Severity.DANGER,
                        "T-1/1",
                        "LP-1A",
                        "LP-1B",
                        "T-1/1 and T-1/2 are crossed: each was traced to the panel that the other is drawn to feed.")
                .finding(
                        UndocumentedFeed::new,
                        Severity.WARNING,
                        "HP-1/7",
                        "space",
                        "LP-4",
                        "HP-1/7 is drawn as a space and was traced to LP-4.")
                .finding(
                        FeedsOther::new,
                        Severity.WARNING,
                        "HP-1/3",
                        "Loom row B",
                        "Humidifier",
                        "HP-1/3 is drawn to feed Loom row B and was traced to Humidifier.")
                .finding(VagueEntry::new, Severity.NOTICE, "HP-1/5", HOSTILE, "", "The entry reads " + HOSTILE + ".")
                .finding(
                        SurveyConflict::new,
                        Severity.CAUTION,
                        "UPS-1/1",
                        "LP-2A",
                        "nothing",
                        "UPS-1/1 was seen to feed LP-2A and to feed nothing.")
                .accepted(
                        EntryBlank::new,
                        Severity.NOTICE,
                        "LP-1A/2",
                        "LP-1A/2 has no description.",
                        "To be corrected with the relamping.");
        mill.problem(
                        Place.page("drawings/basement.pdf", 2),
                        "The page holds a picture and no text.",
                        "Read it by eye, or supply a drawing with text.")
                .trace("GEN-1", "M", "ATS-1", "It would settle ATS-1 and EP-1, and all that they feed.")
                .trace("SB-2", "3", "LP-3", "It would settle LP-3.");
        return mill.build();
    }
}
