package asfound.drawing.schedule.text;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** What the words above a column say that it holds: the usual headings of the trade, and what their words have in common. */
public final class Headings {

    private static final Pattern PHASE = Pattern.compile("ø\\s*([abc]|l[123])\\b");
    private static final Pattern KVA = Pattern.compile("\\bk\\.?\\s?v[-.]?\\s?a\\b\\.?");
    private static final Pattern VA = Pattern.compile("\\bv[-.]?\\s?a\\b\\.?");
    private static final Pattern MARKS = Pattern.compile("[^\\p{L}\\p{N}#&%]+");
    /** Which side of the panel a column in the middle serves is told by its place. */
    private static final Pattern SIDE = Pattern.compile("(?<=\\S )(?:left|right)(?: side)?\\s*$");

    private static final Pattern NUMBER = Pattern.compile("(?<=[a-z])#|#(?=[a-z])");
    private static final Pattern BREAKER = Pattern.compile("\\bc b\\b");
    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final int LONGEST = 60;
    private static final Map<String, Role> USUAL = new HashMap<>();

    static {
        put(
                Role.POSITION,
                "ckt|ckt no|ckt num|ckt number|ckt #|circuit|circuit no|circuit number|circuit #|cct|cct no|cct #");
        put(
                Role.POSITION,
                "no|nr|#|num|number|pos|position|positions|pole no|pole #|pole position|way|way no|ways|way #");
        put(
                Role.POSITION,
                "cir|cir no|cir #|cir number|circ|circ no|circ #|space no|slot|slot no|brkr no|breaker no|bkr no");
        put(
                Role.POSITION,
                "ckts|circuits|ckt nos|circuit nos|cb no|device no|id no|c #|c no|ckt id|circuit id|way phase");
        put(
                Role.POSITION,
                "circuit ref|cct ref|ckt ref|ref|poles used|pole nos|outgoing way|mcb no|item no|position no|pos no");
        put(
                Role.DESCRIPTION,
                "load|description|load description|circuit description|load served|serves|served|serving|load name");
        put(
                Role.DESCRIPTION,
                "designation|circuit designation|service|use|load type|equipment served|area served|equipment");
        put(
                Role.DESCRIPTION,
                "description of load|load designation|description of circuit|details|circuit details|name|feeds");
        put(
                Role.DESCRIPTION,
                "outlet description|consumer|consumers|loads|load serving|circuit served|remarks description|supplies|supplying|feeding|what");
        put(
                Role.RATING,
                "rating|trip|amps|amp|a|bkr|breaker|brkr|cb|c b|ocpd|ocp|trip amps|trip a|bkr amps|breaker a|brkr a");
        put(
                Role.RATING,
                "breaker amps|rating a|rating amps|in|in a|at|trip rating|breaker size|bkr size|breaker trip|bkr trip");
        put(
                Role.RATING,
                "amp trip|cb amps|cb a|mcb a|mcb rating|mcb|fuse|fuse a|device rating|device a|ampere|amperes|ampacity");
        put(
                Role.RATING,
                "breaker rating|cb size|cb trip|bkr a|size a|trip size|circuit breaker|amp rating|ocpd a|protective device a");
        put(
                Role.POLES,
                "p|pole|poles|no poles|no of poles|# poles|# p|#p|number of poles|pls|np|bkr poles|breaker poles|poles no");
        put(
                Role.DEVICE,
                "bkr p|bkr pole|a p|amp pole|amps poles|amp p|trip poles|trip p|cb p|a poles|breaker p|trip pole|amps pole");
        put(
                Role.DEVICE,
                "p a|pole amp|poles amps|p amp|p trip|poles trip|rating poles|breaker poles a|breaker amps poles|size poles");
        put(
                Role.DEVICE,
                "amps p|bkr trip p|device|protection|protective device|overcurrent device|ocpd a p|breaker a p|cb a p");
        put(
                Role.DEVICE,
                "breaker amp pole|breaker a pole|cb a poles|brkr a p|bkr a p|breaker trip poles|bkr size poles|at p");
        put(Role.PHASE, "ph|phase|phases|ø|line|leg|phase line");
        put(
                Role.LOAD,
                "va|kva|load va|load kva|conn va|conn kva|conn load|connected load|connected va|connected kva|w|watts");
        put(
                Role.LOAD,
                "kw|load w|load kw|load watts|connected w|connected kw|volt amperes|volt amps|volt amp|demand|conn w|total va");
        put(
                Role.LOAD,
                "total load|total load va|load total|total kva|va load|kva load|kw load|amps load|load amps|va total|load in va");
        put(
                Role.LOAD,
                "va pole|va per pole|kva pole|va ph|va phase|load per pole|va ea|total w|total kw|design load|est load");
        put(
                Role.LOAD_A,
                "ph a|phase a|a va|va a|a kva|kva a|øa|l1 va|l1 kva|a phase|l1 load|load a|load l1|a w|a kw|phase l1|va l1");
        put(
                Role.LOAD_B,
                "ph b|phase b|b va|va b|b kva|kva b|øb|l2 va|l2 kva|b phase|l2 load|load b|load l2|b w|b kw|phase l2|b|va l2");
        put(
                Role.LOAD_C,
                "ph c|phase c|c va|va c|c kva|kva c|øc|l3 va|l3 kva|c phase|l3 load|load c|load l3|c w|c kw|phase l3|c|va l3");
        put(Role.LOAD_A, "r kw|r kva|r va|r w|kw r|kva r|va r|red|red kw|red va|brown|phase r|r phase");
        put(Role.LOAD_B, "y kw|y kva|y va|y w|kw y|kva y|va y|yellow|yellow kw|yellow va|black|phase y|y phase");
        put(Role.LOAD_C, "blue|blue kw|blue va|grey|gray");
        put(Role.LOAD_A, "l1|kw l1|w l1|l1 kw|l1 w|kva l1|load kva a|load va a|load w a|load kw a");
        put(Role.LOAD_B, "l2|kw l2|w l2|l2 kw|l2 w|kva l2|load kva b|load va b|load w b|load kw b");
        put(Role.LOAD_C, "l3|kw l3|w l3|l3 kw|l3 w|kva l3|load kva c|load va c|load w c|load kw c");
        put(
                Role.WIRE,
                "wire|cond|wire size|conductor|conductors|cable|cable size|csa|csa mm2|mm2|awg|conduit|gnd|ground|cpc|live cpc");
        put(
                Role.WIRE,
                "wire awg|cable mm2|conductor size|cond size|c|raceway|wire & conduit|feeder|branch circuit|size mm2|cable csa");
        put(
                Role.PANEL,
                "panel|panelboard|panel name|pnl|board|panel designation|panel id|db|distribution board|panel no|switchboard");
        put(
                Role.OTHER,
                "hp|horsepower|motor hp|fla|mca|mocp|rla|lamp|lamps|lumens|manufacturer|model|catalog no|df|divf");
        put(
                Role.OTHER,
                "type|curve|notes|note|remarks|code|rcd|rcd ma|rcbo|ka|aic|af|frame|frame a|frame size|room|room no|comments");
        put(
                Role.OTHER,
                "length|length m|length ft|vd|vd %|volt drop|%|df|demand factor|load code|load class|type curve|location|key");
        put(Role.WIRE, "live|live conductor|live conductors|phase conductor|live mm2|cpc mm2");
        put(
                Role.OTHER,
                "ref method|reference method|method|points|no of points|pts|bs en|standard|prot|protection type|status|connection|panel ckt");
        put(
                Role.OTHER,
                "trip type|breaker type|device type|mcb type|char|characteristic|ma|sensitivity|zs|gfci|rev|qty|volts|voltage");
    }

    private Headings() {}

    private static void put(Role role, String names) {
        for (String name : names.split("\\|")) USUAL.putIfAbsent(name, role);
    }

    /** A heading in lower case with its punctuation gone, {@code #} kept. */
    public static String plain(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        if (isPlain(lower)) return lower;
        String t = lower.replace("mm²", "mm2")
                .replace("n°", "no")
                .replace("nº", "no")
                .replace("№", "no")
                .replace("φ", "ø")
                .replace("∅", "ø")
                .replace("⌀", "ø")
                .strip();
        if (t.indexOf('ø') >= 0) t = PHASE.matcher(t).replaceAll("ph $1");
        if (t.indexOf('v') >= 0)
            t = VA.matcher(KVA.matcher(t).replaceAll("kva")).replaceAll("va");
        t = MARKS.matcher(t).replaceAll(" ");
        if (t.contains("left") || t.contains("right")) t = SIDE.matcher(t).replaceAll("");
        // but for those around a number's sign all blanks are single by now
        if (t.indexOf('#') >= 0)
            t = SPACES.matcher(NUMBER.matcher(t).replaceAll(" # ")).replaceAll(" ");
        return t.strip();
    }

    /** One word of nothing but letters and figures. */
    private static boolean isPlain(String lower) {
        for (int i = 0; i < lower.length(); i++) {
            char c = lower.charAt(i);
            if (!(c >= 'a' && c <= 'z' || c >= '0' && c <= '9')) return false;
        }
        return true;
    }

    /** How much a heading speaks for each role, from 0 to 1. */
    public static Map<Role, Double> weigh(String heading) {
        Map<Role, Double> out = new EnumMap<>(Role.class);
        if (heading.length() > LONGEST) return out;
        String plain = plain(heading);
        if (plain.isEmpty()) return out;
        Role usual = USUAL.get(plain);
        if (usual != null) {
            out.put(usual, 1.0);
            ambiguous(plain, out);
            return out;
        }
        byWords(
                new HashSet<>(
                        Arrays.asList(BREAKER.matcher(plain).replaceAll("cb").split(" "))),
                out);
        return out;
    }

    /** Headings that mean different things in different offices: the column's content decides. */
    private static void ambiguous(String plain, Map<Role, Double> out) {
        switch (plain) {
            case "a" -> {
                out.put(Role.LOAD_A, 0.9);
                out.put(Role.PHASE, 0.3);
            }
            // the third phase beside R and Y, which are claimed first
            case "b", "b kw", "b kva", "b va", "b w", "kw b", "kva b", "va b", "ph b", "phase b" ->
                out.put(Role.LOAD_C, 0.7);
            case "c" -> out.put(Role.WIRE, 0.5);
            case "load", "loads" -> out.put(Role.LOAD, 0.9);
            case "amps", "amp", "amperes" -> out.put(Role.LOAD, 0.3);
            case "bkr", "breaker", "brkr", "cb" -> {
                out.put(Role.DEVICE, 0.9);
                out.put(Role.POSITION, 0.3);
            }
            case "c b", "ocpd", "mcb", "circuit breaker", "trip", "rating", "fuse" -> out.put(Role.DEVICE, 0.9);
            case "device", "protection", "protective device" -> out.put(Role.RATING, 0.8);
            case "no", "#", "number", "pos", "pole no" -> out.put(Role.POLES, 0.2);
            // the numbers beside it are known by themselves
            case "circuit" -> out.put(Role.DESCRIPTION, 0.8);
            case "ph", "phase", "phases", "ø" -> out.put(Role.POLES, 0.3);
            case "pole", "poles" -> out.put(Role.POSITION, 0.3);
            case "equipment", "name", "room", "location", "type", "remarks", "notes", "area" ->
                out.put(Role.DESCRIPTION, 0.4);
            case "designation" -> out.put(Role.POSITION, 0.3);
            case "size" -> out.put(Role.RATING, 0.6);
            case "l1", "l2", "l3" -> out.put(Role.PHASE, 0.2);
            case "w" -> out.put(Role.WIRE, 0.2);
            default -> {}
        }
    }

    private static void byWords(Set<String> words, Map<Role, Double> out) {
        boolean circuit = any(words, "ckt", "circuit", "cct", "cir", "circ", "way", "pole");
        boolean number = any(words, "no", "#", "number", "num", "nr");
        boolean amps = any(words, "trip", "amps", "amp", "a", "rating", "at", "size", "amperes", "in", "ampere");
        boolean breaker = any(words, "breaker", "bkr", "brkr", "cb", "ocpd", "mcb", "mccb", "fuse", "ocp", "rcbo");
        boolean poles = any(words, "pole", "poles", "p");
        boolean load = any(words, "va", "kva", "kw", "watts", "w") || words.contains("load") && !amps;
        boolean panel =
                any(words, "panel", "panelboard", "pnl", "board", "db", "switchboard", "loadcentre", "loadcenter");
        boolean named = any(words, "id", "name", "ref", "reference", "designation", "tag", "mark", "code");
        boolean described = any(words, "description", "served", "serves", "serving", "designation", "service", "name");
        boolean ofPhase = any(words, "l1", "l2", "l3", "red", "yellow", "blue") && words.size() == 2;
        boolean tested = any(words, "zs", "impedance", "time", "disconnection", "ohm", "ohms", "points", "method")
                || any(words, "capacity", "current") && any(words, "breaking", "operating", "ka", "ma", "fault");
        if (tested) out.put(Role.OTHER, 0.8);
        else if (ofPhase && circuit && !number) out.put(Role.DESCRIPTION, 0.8);
        else if (panel && words.size() <= 3 && (number || named) && !circuit) out.put(Role.PANEL, 0.9);
        else if (described) out.put(Role.DESCRIPTION, 0.9);
        else if (circuit && number && !breaker) out.put(Role.POSITION, 0.8);
        else if (any(words, "wire", "cable", "conductor", "conduit", "csa", "awg", "mm2", "mm", "cond", "cpc"))
            out.put(Role.WIRE, 0.8);
        else if (poles && (amps || breaker)) {
            out.put(Role.DEVICE, 0.8);
            out.put(Role.POLES, number ? 0.7 : 0.3);
        } else if (load && any(words, "a", "l1")) out.put(Role.LOAD_A, 0.8);
        else if (load && any(words, "b", "l2")) out.put(Role.LOAD_B, 0.8);
        else if (load && any(words, "c", "l3")) out.put(Role.LOAD_C, 0.8);
        else if (load) out.put(Role.LOAD, 0.8);
        else if (breaker && any(words, "type", "curve", "frame")) out.put(Role.OTHER, 0.6);
        else if (breaker || amps && words.size() <= 3) {
            out.put(Role.RATING, 0.7);
            out.put(Role.DEVICE, 0.6);
        } else if (poles) out.put(Role.POLES, 0.7);
        else if (any(words, "phase", "ph")) out.put(Role.PHASE, 0.6);
        else if (any(words, "equipment", "area", "load", "feeds")) out.put(Role.DESCRIPTION, 0.5);
        else if (any(words, "type", "notes", "remarks", "code", "rcd", "ka", "frame", "length"))
            out.put(Role.OTHER, 0.6);
    }

    private static boolean any(Set<String> words, String... these) {
        for (String word : these) if (words.contains(word)) return true;
        return false;
    }

    public static double weight(String heading, Role role) {
        return weigh(heading).getOrDefault(role, 0.0);
    }
}
