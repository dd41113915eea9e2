package asfound.names;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.recordset.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Descriptions of one building, each written anew in random ways: other words for the same, case, punctuation, order of
 * place and load. Seeded; the seed stands in the failure message.
 */
class DescriptionVariantsTest {

    private static final int SEEDS = 8;

    /** Ways of writing one thing, each with its place apart: load | place. */
    private static final String[][] LOADS = {
        {"RECEPT", "RECEPTACLES", "RECEPTS", "RCPT", "OUTLETS", "PLUGS", "DUPLEX RECEPT", "CONV OUTLETS", "RECEPTACLE"},
        {"LIGHTING", "LTG", "LTS", "LIGHTS", "LUMINAIRES", "LTG."},
        {"COPIER", "COPY MACHINE", "COPIER RECEPT"},
        {"REFRIGERATOR", "REFRIG", "FRIDGE", "REFRIG."},
        {"PROJECTOR", "PROJ", "PROJ."},
        {"TV", "TELEVISION"},
        {"TELECOM RACK", "DATA RACK", "SRVR RACK", "TELECOM RK", "NETWORK RACK"},
        {"BASEBOARD HTR", "BASEBOARD HEATER", "ELEC BASEBOARD"},
        {"SYSTEMS FURNITURE", "SYS FURNITURE", "MODULAR FURNITURE"},
        {"EM LTG", "EMERGENCY LIGHTING", "EMERG LTS", "EMER. LIGHTS"},
        {"WORKBENCH RECEPT", "BENCH OUTLETS", "WORKBENCH RECEPTACLES"},
    };

    private static final String[][] TAGGED = {
        {"EF-#", "E.F.-#", "EXHAUST FAN EF-#", "EXH FAN EF-#", "EF #", "EF#", "EXHAUST FAN #"},
        {"AHU-#", "A.H.U. #", "AIR HANDLER AHU-#", "AHU #", "AIR HANDLING UNIT AHU-#"},
        {"WATER HEATER WH-#", "WH-#", "WTR HTR WH-#", "WATER HTR #", "HW HTR WH #"},
        {"SUMP PUMP SP-#", "SP-#", "SUMP PUMP #", "SP#"},
        {"PANEL LP-#A", "LP-#A", "PNL LP#A", "Panelboard LP-#A", "LP #A", "PNL. LP-#A"},
        {"PANEL LP-#B", "LP-#B", "PNL LP#B"},
        {"XFMR T-#", "TRANSFORMER T-#", "T-#", "XFMR T#"},
        {"ELEVATOR #", "ELEV #", "ELEV. NO. #", "ELEVATOR NO #"},
        {"HEAT PUMP HP-#", "HP-#", "HT PUMP HP-#"},
        {"CONDENSING UNIT CU-#", "CU-#", "COND UNIT CU-#", "CU #"},
        {"RTU-#", "ROOFTOP UNIT RTU-#", "RTU #"},
        {"UH-#", "UNIT HEATER UH-#", "UNIT HTR UH #", "UH#"},
        {"LATHE #", "LATHE NO. #", "LATHE-#"},
        {"EV CHARGER #", "EV CHGR #", "CAR CHARGER #"},
        {"SUMP PUMP SP-# CONTROL", "SP-# CONTROLS", "SP-# CTRL"},
    };
    private static final String[] SINGLE_PLACES = {"RM", "ROOM", "RM.", ""};

    /** One circuit: what it is, apart from how it is written. */
    private record Circuit(String identity, List<String> ways) {}

    private final Descriptions descriptions = Descriptions.of(Settings.none());

    @Test
    void one_circuit_written_anew_is_the_same_and_never_different() {
        int same = 0, all = 0;
        List<String> unclear = new ArrayList<>();
        for (long seed = 1; seed <= SEEDS; seed++) {
            Random random = new Random(seed);
            for (Circuit c : building(random)) {
                String a = pick(c.ways(), random), b = written(pick(c.ways(), random), random);
                Sameness s = descriptions.compare(a, b);
                assertThat(s).as("seed %d: %s | %s", seed, a, b).isNotEqualTo(Sameness.DIFFERENT);
                all++;
                if (s == Sameness.SAME) same++;
                else unclear.add(a + " | " + b);
            }
        }
        assertThat(same / (double) all).as("unclear: %s", unclear).isGreaterThan(0.98);
    }

    @Test
    void two_circuits_are_never_the_same_however_they_are_written() {
        int different = 0, all = 0;
        for (long seed = 1; seed <= SEEDS; seed++) {
            Random random = new Random(seed);
            List<Circuit> building = building(random);
            for (Circuit x : building)
                for (Circuit y : building) {
                    if (x.identity().compareTo(y.identity()) >= 0) continue;
                    String a = written(pick(x.ways(), random), random), b = written(pick(y.ways(), random), random);
                    Sameness s = descriptions.compare(a, b);
                    assertThat(s).as("seed %d: %s | %s", seed, a, b).isNotEqualTo(Sameness.SAME);
                    all++;
                    if (s == Sameness.DIFFERENT) different++;
                }
        }
        assertThat(different / (double) all).isGreaterThan(0.97);
    }

    private static List<Circuit> building(Random random) {
        List<Circuit> all = new ArrayList<>();
        for (int load = 0; load < LOADS.length; load++)
            for (int k = 0; k < 3; k++) {
                String room = Integer.toString(101 + random.nextInt(30) + 100 * k);
                List<String> ways = new ArrayList<>();
                for (String way : LOADS[load])
                    for (String rm : SINGLE_PLACES) {
                        ways.add(way + " - " + rm + " " + room);
                        ways.add(way + " " + rm + " " + room);
                        if (!rm.isEmpty()) ways.add(rm + " " + room + " " + way);
                    }
                all.add(new Circuit(load + "/" + room, ways));
            }
        for (int tagged = 0; tagged < TAGGED.length; tagged++)
            for (int number : new int[] {1, 2, 11, 12}) {
                List<String> ways = new ArrayList<>();
                for (String way : TAGGED[tagged]) ways.add(way.replace("#", Integer.toString(number)));
                all.add(new Circuit("t" + tagged + "/" + number, ways));
            }
        return all;
    }

    private static String pick(List<String> ways, Random random) {
        return ways.get(random.nextInt(ways.size()));
    }

    /** Case, punctuation and spaces at random. */
    private static String written(String text, Random random) {
        String t = text;
        if (random.nextBoolean()) t = t.replace(" - ", random.nextBoolean() ? ", " : " ");
        if (random.nextInt(3) == 0) t = t.replace(" ", "  ");
        return switch (random.nextInt(3)) {
            case 0 -> t.toLowerCase(Locale.ROOT);
            case 1 -> t.substring(0, 1) + t.substring(1).toLowerCase(Locale.ROOT);
            default -> t;
        };
    }
}
