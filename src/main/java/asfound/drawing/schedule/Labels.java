package asfound.drawing.schedule;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The usual labels of a schedule's header and sums. */
final class Labels {

    private static final Map<String, Field> USUAL = usual();
    private static final Set<String> UNITS = Set.of("a", "ka", "amp", "amps", "amperes", "v", "volts", "vac");
    private static final Set<Field> NAMING = EnumSet.of(Field.DESIGNATION, Field.FED_FROM, Field.LOCATION);
    private static final Set<String> BEGINNINGS =
            USUAL.keySet().stream().map(l -> l.split(" ")[0]).collect(Collectors.toUnmodifiableSet());
    /** Words of the longest label. */
    private static final int LONGEST =
            USUAL.keySet().stream().mapToInt(l -> l.split(" ").length).max().orElse(0);

    private static Map<String, Field> usual() {
        Map<String, Field> all = new HashMap<>();
        put(
                all,
                Field.DESIGNATION,
                "panel|panelboard|panel name|panel designation|designation|panel id|name|pnl|board|board name");
        put(
                all,
                Field.DESIGNATION,
                "panel no|panel number|panel #|panel tag|tag|board ref|board reference|distribution board|db|db ref");
        put(
                all,
                Field.DESIGNATION,
                "db name|db no|db reference|panelboard name|panelboard designation|panelboard id|panelboard no|load center");
        put(
                all,
                Field.DESIGNATION,
                "load centre|loadcenter|loadcentre|switchboard|panel schedule|panelboard schedule|schedule|board designation");
        put(
                all,
                Field.DESIGNATION,
                "consumer unit|feeder pillar|feed pillar|board no|board id|equipment designation|distribution panel|panel mark|mark|panelboard mark");
        put(
                all,
                Field.DESIGNATION,
                "pnl name|pnl no|equipment|equipment name|equipment tag|reference|ref|distribution board ref|panel ref|dist board");
        put(
                all,
                Field.DESIGNATION,
                "circuit directory|panel directory|directory|load center name|load center id|dist board ref|db designation");
        put(
                all,
                Field.LOCATION,
                "location|loc|room|located in|located|area|panel location|board location|position|installed in|room no");
        put(
                all,
                Field.LOCATION,
                "rm|rm no|room name|located at|location room|room location|where|db location|installed at");
        put(
                all,
                Field.FED_FROM,
                "fed from|fed by|supply from|supplied from|supply|source|feed from|feeder from|supplied by|origin|fed via");
        put(
                all,
                Field.FED_FROM,
                "served from|served by|supply source|power source|source of supply|incoming supply|fed|feed|feeder source|from");
        put(
                all,
                Field.FED_FROM,
                "supply from panel|supplied from panel|upstream|upstream device|incoming from|power from|fed from panel|origin of supply");
        put(
                all,
                Field.FED_FROM,
                "upstream board|supply origin|fed from source|upstream source|source panel|feeding panel|feeder|parent|parent panel");
        put(
                all,
                Field.VOLTAGE,
                "voltage|volts|system voltage|service|system|v|volt|rated voltage|supply voltage|service voltage|nominal voltage");
        put(
                all,
                Field.VOLTAGE,
                "voltage system|voltage v|panel voltage|volts ph|voltage rating|characteristics|electrical characteristics|electrical");
        put(
                all,
                Field.VOLTAGE,
                "voltage phase wire|volts phase wire|volts phases wires|voltage phases wires|volt phase wire|voltage ph w|v ph w|voltage phase");
        put(all, Field.VOLTAGE, "volts ph w|distribution system|system type|branch voltage|nominal volts|un|ue");
        put(
                all,
                Field.PHASES,
                "phases|phase|ph|no of phases|number of phases|ø|no phases|# phases|# of phases|phase s|no of ph");
        put(all, Field.WIRES, "wires|wire|w|no of wires|number of wires|no wires|# wires|# of wires|wire s|no of w");
        put(
                all,
                Field.PHASE_WIRE,
                "phase wire|phases wires|ph w|ph wire|ø w|phase wires|phase & wire|phases & wires|ø wire|phases wire|config|configuration");
        put(
                all,
                Field.BUS,
                "bus|bus amps|bus rating|bussing|bus size|main bus|busbar|busbar rating|bus amp|bus ampacity|bus a|bus bar");
        put(
                all,
                Field.BUS,
                "ampere rating|amp rating|panel rating|bus capacity|rated current|main bus rating|main bus amps|bus bars|busbars");
        put(
                all,
                Field.BUS,
                "bus rating a|bus amperes|panel amps|panel amp rating|busing|bus bar rating|rating a|rating|bus amperage|main bus a");
        put(
                all,
                Field.BUS,
                "main bus size|bus current|bus rated|panel bus|panel bus amps|panelboard rating|board rating|bus bar a|busbar a|bus ampere rating");
        put(all, Field.BUS, "rated current in|ina|in|bus bar amps|panel size|size");
        put(
                all,
                Field.MAIN,
                "main|mains|main device|main breaker|mcb|main type|main cb|mains type|main circuit breaker|main ocpd|main c b");
        put(
                all,
                Field.MAIN,
                "main rating|main switch|incomer|main ocp|main amps|main overcurrent|main protection|main size|main breaker size|main isolator");
        put(
                all,
                Field.MAIN,
                "incoming device|main breaker rating|main trip|main bkr|mcb rating|m c b|main disconnect|main breaker amps|mains size|mains device");
        put(
                all,
                Field.MAIN,
                "main switch rating|incomer rating|incoming|incoming switch|isolator|main overcurrent device|mains amps|mcb size|main brkr|main a");
        put(
                all,
                Field.MAIN,
                "main overcurrent protection|main cb rating|mains breaker|main device rating|main brk|main incomer|main switchgear|main device type");
        put(all, Field.MAINS_RATING, "mains rating|mains rating a|rating of mains");
        put(
                all,
                Field.POSITIONS,
                "ways|number of ways|no of ways|no of poles|number of poles|no of circuits|number of circuits|no of ckts|number of ckts|# of circuits|# of poles|# of ways|pole spaces|no of spaces|number of spaces|no of pole spaces|no of ckt|branch poles|branch circuits");
        put(
                all,
                Field.MAIN_LUGS,
                "mlo|main lugs|main lugs only|m l o|lugs|main lug only|lugs only|main lug|mlo amps|mlo rating|main lugs rating");
        put(
                all,
                Field.INTERRUPTING,
                "int rating|aic|a i c|ic|i c|ic rating|kaic|short circuit rating|sccr|interrupting rating|aic rating|fault rating|min aic|ka rating");
        put(
                all,
                Field.INTERRUPTING,
                "short circuit current rating|interrupting capacity|interrupting|s c rating|sc rating|ka|kaic rating|short circuit|scc|icu");
        put(
                all,
                Field.INTERRUPTING,
                "breaking capacity|short circuit withstand|withstand|withstand rating|interrupt rating|a i c rating|scc rating|min a i c");
        put(
                all,
                Field.INTERRUPTING,
                "int capacity|interrupting cap|fault level|fault withstand|minimum aic|minimum aic rating|bracing|bus bracing|icn|min kaic|ka i c");
        put(
                all,
                Field.INTERRUPTING,
                "aic kaic|interrupting rating ka|aic ka|sc rating ka|min interrupting rating|required aic|panel aic|min int rating|icw|aic min|s c c r|fault current rating|short circuit rating ka|fault rating ka");
        put(all, Field.MOUNTING, "mounting|mtg|mount|mounted|mounting type|mtg type|panel mounting|mount type");
        put(
                all,
                Field.AMPERES,
                "amps|amperes|total amps|load amps|connected amps|current|total current|conn amps|total amperes|connected current|amp");
        put(
                all,
                Field.AMPERES,
                "total connected amps|total conn amps|demand amps|total a|connected amperes|total load amps|line amps");
        put(
                all,
                Field.LOAD_A,
                "phase a|ph a|øa|a phase|total phase a|total a phase|va a|l1|load phase a|phase a load|phase a total|total ph a|connected phase a|phase l1|a ph|total l1|phase a va|phase a kva|l1 total|phase l1 total|ph l1 total|total phase l1|l1 phase total|phase l1 load|phase a connected|connected l1|l1 load|total ph l1");
        put(
                all,
                Field.LOAD_B,
                "phase b|ph b|øb|b phase|total phase b|total b phase|va b|l2|load phase b|phase b load|phase b total|total ph b|connected phase b|phase l2|b ph|total l2|phase b va|phase b kva|l2 total|phase l2 total|ph l2 total|total phase l2|l2 phase total|phase l2 load|phase b connected|connected l2|l2 load|total ph l2");
        put(
                all,
                Field.LOAD_C,
                "phase c|ph c|øc|c phase|total phase c|total c phase|va c|l3|load phase c|phase c load|phase c total|total ph c|connected phase c|phase l3|c ph|total l3|phase c va|phase c kva|l3 total|phase l3 total|ph l3 total|total phase l3|l3 phase total|phase l3 load|phase c connected|connected l3|l3 load|total ph l3");
        put(
                all,
                Field.LOAD_TOTAL,
                "total connected|total|total load|connected load|total connected load|total va|total kva|connected|conn load|total conn load|total connected va|total conn|connected total|total connected kva|total conn va|total conn kva|grand total|total kw|panel total|total w");
        put(
                all,
                Field.OTHER,
                "notes|note|remarks|manufacturer|mfr|make|type|enclosure|enclosure type|neutral|ground bus|gnd|project|date|drawn by");
        put(
                all,
                Field.OTHER,
                "checked by|scale|sheet|sheet no|job|job no|drawing|drawing no|revision|rev|revisions|feeder size|cable|cable size|nema");
        put(
                all,
                Field.OTHER,
                "model|catalog no|trim|door|lugs type|frequency|hz|earthing|earthing system|ip rating|form|standard|demand load|demand");
        put(
                all,
                Field.OTHER,
                "demand factor|spare capacity|floor|level|building|client|engineer|approved|approved by|by|feeder conductors|wire size");
        put(
                all,
                Field.OTHER,
                "conductors|ground|neutral bus|neutral rating|surge|spd|options|accessories|features|served|area served|serves|rcd|main rcd");
        put(
                all,
                Field.OTHER,
                "ze|zs|pscc|pfc|ipf|psc|prospective fault current|earth|cpc|issue|issued|title|page|of|installed by|year|serial|serial no|sub feed|sub feed lugs|feed through|feed thru|feed thru lugs|fed to|feeds|isolated ground|ig bus|equipment ground|color code|phase rotation|rotation|doors|lock|key");
        put(
                all,
                Field.OTHER,
                "surveyed|surveyed by|prepared by|prepared|version|dwg|dwg no|status|cont|continued|continued from|legend|phase balance|balance|unbalance|max unbalance|imbalance|est demand|estimated demand|total demand|demand kva|demand va|demand current|total est demand|total est demand amps|diversity|diversified load|lighting|receptacle|receptacles|motors|motor|hvac|load classification|largest motor|spares|poles|spaces|circuits");
        return Map.copyOf(all);
    }

    private Labels() {}

    private static void put(Map<String, Field> all, Field field, String names) {
        for (String name : names.split("\\|")) all.putIfAbsent(name, field);
    }

    static String plain(String text) {
        if (isPlain(text)) return text.toLowerCase(Locale.ROOT);
        String lower = text.toLowerCase(Locale.ROOT).replace('φ', 'ø').replace('∅', 'ø');
        StringBuilder out = new StringBuilder(lower.length());
        for (int i = 0; i < lower.length(); i++) {
            char c = lower.charAt(i);
            boolean kept = Character.isLetterOrDigit(c) || c == '#' || c == '&';
            if (kept) out.append(c);
            else if (!out.isEmpty() && out.charAt(out.length() - 1) != ' ') out.append(' ');
        }
        return out.toString().strip();
    }

    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) if (!isLetter(text.charAt(i))) return false;
        return true;
    }

    /** A plain letter or a figure. */
    private static boolean isLetter(char c) {
        return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9';
    }

    /**
     * A label found in a row of words.
     *
     * @param field what it announces
     * @param end the index after its last word
     * @param marked whether a colon or the like ends it
     */
    record Label(Field field, int end, boolean marked) {}

    /** A label with its unit behind it, {@code AIC Rating (kA)}, is the same label; {@code PANEL A} is a name and no label. */
    private static Field field(String plain) {
        Field usual = USUAL.get(plain);
        int unit = plain.lastIndexOf(' ');
        boolean measured = unit > 0 && UNITS.contains(plain.substring(unit + 1)) && isLetter(plain.charAt(unit - 1));
        if (usual != null || !measured) return usual;
        Field bare = USUAL.get(plain.substring(0, unit));
        return bare == null || NAMING.contains(bare) ? null : bare;
    }

    private static boolean isBeginning(String plain) {
        int space = plain.indexOf(' ');
        return BEGINNINGS.contains(space < 0 ? plain : plain.substring(0, space));
    }

    /** Whether a label can begin with the first of the text's words. */
    static boolean mayBegin(String text) {
        int space = text.indexOf(' ');
        return isBeginning(plain(space < 0 ? text : text.substring(0, space)));
    }

    private static boolean isMarked(String word) {
        return word.endsWith(":") || word.endsWith("=");
    }

    /** The longest label that begins at a word; empty where none does. */
    static Optional<Label> at(List<String> words, int start) {
        String first = plain(words.get(start));
        if (!isBeginning(first)) return Optional.empty();
        List<String> plain = new ArrayList<>(List.of(first));
        int most = Math.min(LONGEST + 1, words.size() - start);
        // a mark ends a label
        for (int n = 1; n < most && !isMarked(words.get(start + n - 1)); n++)
            plain.add((plain.get(n - 1) + " " + plain(words.get(start + n))).strip());
        for (int n = plain.size(); n > 0; n--) {
            String last = words.get(start + n - 1);
            boolean own = last.equals(":") || last.equals("=");
            Field field = field(plain.get(n - 1));
            if (field == null || own && n == 1) continue;
            boolean marked = isMarked(last);
            int end = start + n;
            if (!marked
                    && end < words.size()
                    && (words.get(end).equals(":") || words.get(end).equals("="))) {
                marked = true;
                end++;
            }
            return Optional.of(new Label(field, end, marked));
        }
        return Optional.empty();
    }
}
