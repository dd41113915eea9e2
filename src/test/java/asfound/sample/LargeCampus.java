package asfound.sample;

import asfound.audit.Audit;
import asfound.finding.FeedsOther;
import asfound.finding.Severity;
import asfound.finding.VagueEntry;
import asfound.isolation.Verdict;
import asfound.model.EquipmentKind;
import asfound.network.Standing;
import java.util.Random;

/** An invented campus of 400 panels and 12,000 circuits, of the size that the report must bear. The same each time. */
public final class LargeCampus {

    private LargeCampus() {}

    public static Audit audit() {
        Random random = new Random(20260301);
        AuditSketch campus = new AuditSketch("Tern Hill campus");
        campus.equipment(EquipmentKind.UTILITY, "UTIL-1", "UTIL-2");
        int panels = 0;
        for (int board = 1; board <= 4; board++) {
            String msb = "MSB-" + board;
            campus.equipment(EquipmentKind.SWITCHBOARD, msb)
                    .feeder("UTIL-" + (board + 1) / 2, msb, Standing.CONFIRMED, msb + "/M")
                    .verdict(msb, Verdict.Standing.AGREES, msb + "/M", msb + "/M", "", "Its only supply was traced.");
            for (int i = 1; i <= 10; i++) {
                String main = "DP-" + board + "." + i;
                panel(campus, main, msb + "/" + i, random);
                for (int j = 1; j <= 9; j++)
                    panel(campus, "LP-" + board + "." + i + "." + j, main + "/" + (40 + j), random);
                panels += 10;
            }
        }
        if (panels != 400) throw new IllegalStateException("the campus has " + panels + " panels");
        return campus.build();
    }

    private static void panel(AuditSketch campus, String name, String device, Random random) {
        String from = device.substring(0, device.lastIndexOf('/'));
        Standing[] some = {
            Standing.CONFIRMED, Standing.CONFIRMED, Standing.CONFIRMED, Standing.UNTRACED, Standing.CONTRADICTED
        };
        Standing standing = some[random.nextInt(some.length)];
        campus.equipment(EquipmentKind.PANEL, name).feeder(from, name, standing, device);
        if (standing == Standing.CONTRADICTED) campus.feeder(from, name, Standing.FOUND, device + "9");
        Verdict.Standing verdict = switch (standing) {
            case CONFIRMED -> Verdict.Standing.AGREES;
            case UNTRACED -> Verdict.Standing.UNPROVEN;
            default -> Verdict.Standing.FAILS;
        };
        campus.verdict(
                name, verdict, device, null, "", "The drawn point " + device + " of " + name + " was looked at.");
        for (int circuit = 1; circuit <= 30; circuit++) {
            String says = "Receptacles room " + name.replaceAll("[^0-9]", "") + circuit;
            boolean other = random.nextInt(12) == 0;
            campus.circuit(name, circuit, says, random.nextInt(3) == 0 && !other ? "" : other ? says + "B" : says);
            if (other)
                campus.finding(
                        FeedsOther::new,
                        Severity.WARNING,
                        name + "/" + circuit,
                        says,
                        says + "B",
                        name + "/" + circuit + " is drawn to feed " + says + " and was traced to " + says + "B.");
            else if (random.nextInt(20) == 0)
                campus.finding(
                        VagueEntry::new,
                        Severity.NOTICE,
                        name + "/" + circuit,
                        says,
                        "",
                        name + "/" + circuit + " cannot be told from others.");
        }
    }
}
