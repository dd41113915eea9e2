package asfound.drawing.schedule.sample;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;

/** The words that one office heads its columns and labels its headers with. */
final class GridWords {

    private static final Map<String, String> ALL = new HashMap<>();

    static {
        ALL.put(
                "pos",
                "CKT|CKT #|Ckt No.|Circuit|Circuit No.|Cct|No.|#|Pos.|CKT NO|Circuit Number|Cir. No.|Pole|Breaker No.");
        ALL.put(
                "desc",
                "DESCRIPTION|Load|Load Served|Circuit Description|Serves|Load Description|Description of Load|"
                        + "Circuit Designation|Load Name|Feeds|Equipment Served|Area Served|Load / Location");
        ALL.put(
                "rating",
                "TRIP|AMPS|Breaker|BKR|Trip (A)|Rating (A)|Breaker Size|CB|OCPD (A)|Trip Amps|Breaker Rating (A)|Size");
        ALL.put("poles", "P|Poles|# Poles|No. of Poles|POLE");
        ALL.put("device", "BKR|Breaker|CB|Breaker (A/P)|Trip/Poles|OCPD|Protection|Bkr Size");
        ALL.put("device-turned", "P/A|Poles/Trip|BKR|Breaker|OCPD");
        ALL.put("phase", "PH|Phase|Ph.|Leg|Line");
        ALL.put("wire", "WIRE|Wire Size|AWG|Conductor|Cable");
        ALL.put("type", "Type|Curve|Code|Breaker Type");
        ALL.put("way", "WAY|Way No.|Way");
        ALL.put("line", "PH|Phase|Line");
        ALL.put("va", "VA|Load VA|Load (VA)|Conn. VA|Connected Load (VA)");
        ALL.put("kva", "KVA|Load kVA|kVA|Conn. kVA|Load (kVA)");
        ALL.put("w", "W|Watts|Load (W)|Load W");
        ALL.put("of-phase", "%u %p|%u Ph %p|Phase %p (%u)|%p (%u)|%u Ø%p");
        ALL.put("total", "Total VA|Total Load (VA)|VA total");
        ALL.put("panel", "Panel|Panelboard|Panel Name|Board");
        ALL.put("notes", "NOTES|Remarks|Comments|Note");
        ALL.put("designation", "PANEL|Panel|PANEL NAME|Panelboard|Panel ID|Designation|Board");
        ALL.put("location", "LOCATION|Location|LOC|Located in|ROOM");
        ALL.put("fedFrom", "FED FROM|Fed from|SUPPLY FROM|FED BY|Source|Supplied from");
        ALL.put("voltage", "VOLTAGE|Volts|System Voltage|Service|Voltage");
        ALL.put("phases", "PHASE|Phases|PH|No. of phases");
        ALL.put("wires", "WIRE|Wires|No. of wires");
        ALL.put("busA", "BUS|Bus Rating|BUS AMPS|Bus (A)|Bus size");
        ALL.put("mains", "MAINS|MAIN|Main|MAIN TYPE|Main device");
        ALL.put("interruptingKA", "AIC|A.I.C. Rating|Short circuit rating|SCCR|Interrupting rating");
        ALL.put("mounting", "MOUNTING|Mounting|Mtg");
        ALL.put("space", "SPACE|Space|Space only|(space)|Bussed space|BLANK");
        ALL.put("spare", "SPARE|Spare|Spare breaker|SPARE CB");
        ALL.put("bus-value", "%sA|%s A|%s");
        ALL.put("main-value", "%sA MCB|%s A CB|%sA BREAKER|%s AMP MCB");
        ALL.put("lugs-value", "MLO|Main lugs only|MAIN LUGS|M.L.O.");
        ALL.put("ka-value", "%s kA|%skAIC|%s,000|%sKA");
        ALL.put("title", "%k %s|%k: %s|%k SCHEDULE - %s|%k \"%s\"|%s %k SCHEDULE");
    }

    private final Map<String, String> chosen = new HashMap<>();

    /** Chooses one word of each kind, whether it will be needed or not, so that a seed stays what it is. */
    GridWords(Random random) {
        ALL.keySet().stream().sorted().forEach(key -> {
            String[] of = ALL.get(key).split("\\|");
            chosen.put(key, of[random.nextInt(of.length)]);
        });
    }

    String of(String key) {
        return chosen.get(key);
    }

    String with(String key, String value) {
        return of(key).replace("%s", value);
    }
}
