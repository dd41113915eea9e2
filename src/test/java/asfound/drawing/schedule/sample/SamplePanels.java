package asfound.drawing.schedule.sample;

import asfound.drawing.schedule.sample.SamplePanel.SampleCircuit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;

/** Invents panels of an invented hospital wing: names, headers and circuits. */
final class SamplePanels {

    private static final String[] THINGS = {
        "Corridor lights",
        "Recept",
        "Nurse call",
        "Exam lights",
        "Autoclave",
        "Dish machine",
        "Chiller controls",
        "Pump",
        "Exhaust fan",
        "Unit heater",
        "Lab bench recept",
        "Fume hood",
        "X-ray viewer",
        "Vending",
        "Tel/data rack",
        "BMS panel",
        "Fire alarm",
        "Emergency lights",
        "Exit signs",
        "Elevator cab lights & fan",
        "Sump pump",
        "Kitchen hood",
        "Oven",
        "Walk-in cooler",
        "Parking gate",
        "Sign lighting",
        "Snow-melt mat",
        "Roof recept (GFI)",
        "Copy machine",
        "Floor box",
        "Water cooler",
        "Door operator",
        "Sprinkler compressor",
        "A/C unit",
        "Split system",
        "Humidifier",
        "Washer",
        "Dryer",
        "UPS",
        "Server rack",
        "Projector",
        "TV outlets",
        "Task lights",
        "Site lighting",
        "Irrigation timer",
        "Welder",
        "Space heater",
        "Spare parts store lights",
        "Battery charger",
        "Panel",
        "Transformer",
        "SPD",
        "Air handler"
    };
    private static final String[] WHERE = {
        "",
        "",
        " rm %d",
        " - rm %d",
        ", room %d",
        " rms %d, %d",
        " rms %d & %d",
        " %d/%d",
        " #%d",
        " no. %d",
        " (%d)",
        " level %d east",
        " - north stair",
        " 2nd floor",
        " at grid C-%d",
        " ward %d-B",
        " e/w corridor",
        " bldg. 4",
        " AHU-%d",
        " P-%dA",
        " EF-%d",
        " via LCP-%d",
        " rm %d (typ of 3)",
        " \"B\" wing",
        " for bed %d",
        " - women's",
        " w/ heat trace"
    };
    private static final int[] SMALL = {15, 20, 20, 20, 20, 25, 30};
    private static final int[] LARGE = {20, 30, 40, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225};
    private static final int[] IEC = {6, 10, 16, 20, 32, 40, 50, 63};

    private final Random random;

    SamplePanels(Random random) {
        this.random = random;
    }

    private <T> T pick(T[] of) {
        return of[random.nextInt(of.length)];
    }

    private int pick(int[] of) {
        return of[random.nextInt(of.length)];
    }

    SamplePanel panel(int index, int step, boolean iec, boolean upper) {
        int phases = iec ? 3 : random.nextInt(4) == 0 ? 1 : 3;
        int poles = phases == 1 && !iec ? 2 : 3;
        int[] sizes = iec ? new int[] {12, 18, 24, 36} : new int[] {12, 18, 20, 24, 30, 42, 42, 54, 60, 84};
        int ways = pick(sizes);
        String name = name(index, iec);
        List<SampleCircuit> circuits = circuits(ways, step, poles, iec, upper);
        SamplePanel panel = new SamplePanel(name, ways, step, poles, iec, header(name, phases, iec, upper), circuits);
        return panel;
    }

    private String name(int index, boolean iec) {
        String[] forms = iec
                ? new String[] {"DB-%d", "DB/L%d", "DB%dA", "SDB-0%d", "MSB%d"}
                : new String[] {
                    "L%dA", "RP-%d", "EM-%dB", "%dHLA", "CP%d", "LS-%d-1", "PNL.%d", "%dL2-N", "UPS-%dA", "KP %d"
                };
        return String.format(pick(forms), index + 1 + random.nextInt(8));
    }

    private Map<String, String> header(String name, int phases, boolean iec, boolean upper) {
        Map<String, String> h = new LinkedHashMap<>();
        h.put("designation", name);
        String[] rooms = {
            "Electrical room 1.14",
            "Rm B-07",
            "Closet E3",
            "Level 2 riser",
            "Plant room",
            "Stair 4 landing",
            "Corridor 118"
        };
        h.put("location", cased(pick(rooms), upper));
        String[] from = {"MSB-1", "DP-2", "SWBD M-5", "T-2A", "MDP CKT 12", "EMDP-9", "LVSB / 4", "DB-M", "ATS-LS"};
        h.put("fedFrom", pick(from));
        boolean high = random.nextInt(3) == 0;
        h.put("voltage", iec ? "400/230" : phases == 1 ? "120/240" : high ? "480Y/277" : "208Y/120");
        h.put("phases", Integer.toString(phases));
        h.put("wires", phases == 1 ? "3" : "4");
        h.put("busA", Integer.toString(pick(new int[] {100, 125, 225, 400})));
        if (random.nextBoolean()) {
            h.put("mains", "breaker");
            h.put("mainA", Integer.toString(pick(new int[] {60, 100, 125, 175, 225})));
        } else h.put("mains", "lugs");
        h.put("interruptingKA", Integer.toString(pick(new int[] {10, 14, 18, 22, 35, 42, 65})));
        h.put("mounting", cased(pick(new String[] {"Surface", "Flush", "Recessed"}), upper));
        return h;
    }

    private List<SampleCircuit> circuits(int ways, int step, int most, boolean iec, boolean upper) {
        TreeSet<Integer> free = new TreeSet<>();
        for (int p = 1; p <= ways; p++) free.add(p);
        List<SampleCircuit> out = new ArrayList<>();
        double full = 0.5 + 0.5 * random.nextDouble();
        while (!free.isEmpty()) {
            int first = free.first();
            int poles = random.nextInt(10) < 6 ? 1 : 1 + random.nextInt(most);
            List<Integer> positions = new ArrayList<>();
            for (int k = 0; k < poles; k++) {
                int p = first + k * step;
                boolean sameWay = !iec || (p - 1) / 3 == (first - 1) / 3;
                if (free.contains(p) && sameWay && p <= ways) positions.add(p);
                else break;
            }
            // a board's two-pole device takes two neighbouring phases only where they are there; a halved sheet keeps
            // sides apart
            if (step == 1 && !iec && first <= ways / 2 && positions.get(positions.size() - 1) > ways / 2)
                positions = new ArrayList<>(List.of(first));
            if (iec && positions.size() == 2) positions = new ArrayList<>(List.of(first));
            free.removeAll(positions);
            out.add(circuit(positions, random.nextDouble() > full, iec, upper));
        }
        out.sort(java.util.Comparator.comparingInt(SampleCircuit::first));
        return out;
    }

    private SampleCircuit circuit(List<Integer> positions, boolean idle, boolean iec, boolean upper) {
        int rating = iec ? pick(IEC) : positions.size() == 1 ? pick(SMALL) : pick(LARGE);
        if (idle && positions.size() == 1 && random.nextBoolean())
            return new SampleCircuit(positions, 0, cased("Space", upper), "space", 0, "");
        if (idle) return new SampleCircuit(positions, rating, cased("Spare", upper), "spare", 0, "");
        String where = String.format(pick(WHERE), 1 + random.nextInt(320), 1 + random.nextInt(320));
        String wire =
                iec ? pick(new String[] {"1.5", "2.5", "4", "6", "10"}) : pick(new String[] {"#12", "#10", "#8", "#6"});
        int va = 20 * (5 + random.nextInt(120));
        return new SampleCircuit(positions, rating, cased(pick(THINGS) + where, upper), "load", va, wire);
    }

    private static String cased(String text, boolean upper) {
        return upper ? text.toUpperCase(java.util.Locale.ROOT) : text;
    }
}
