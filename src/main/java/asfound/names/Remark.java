package asfound.names;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What follows a designation and is no part of it: a floor, a room, a rating, the way of supply. */
final class Remark {

    private static final Set<String> STARTS = Set.of(
            "FLOOR",
            "FLR",
            "LEVEL",
            "LVL",
            "ROOM",
            "RM",
            "ELEC",
            "ELECTRICAL",
            "CLOSET",
            "CORRIDOR",
            "CORR",
            "LOBBY",
            "IN",
            "AT",
            "LOCATED",
            "NEAR",
            "VIA",
            "THRU",
            "THROUGH",
            "FED",
            "FROM",
            "FEEDS",
            "SERVES",
            "SERVING");
    private static final Set<String> PLACES = Set.of("BASEMENT", "BSMT", "PENTHOUSE", "ROOF", "MEZZANINE", "MEZZ");
    private static final Set<String> UNITS = Set.of("V", "VOLT", "VOLTS", "VAC", "KV", "KVA", "AMP", "AMPS");
    private static final Set<String> SHORT_UNITS = Set.of("A", "P", "W", "PH", "HP", "KW", "Y", "POLE");
    private static final Pattern FLOOR = Pattern.compile(
            "\\b(?:([0-9]{1,2})(?:ST|ND|RD|TH)(?:\\s+(?:FLOOR|FLR|FL|LEVEL))?|(?:FLOOR|FLR|FL|LEVEL|LVL)[\\s.\\-#]*([0-9]{1,2})"
                    + "|(GROUND|BASEMENT|BSMT|PENTHOUSE|ROOF|MEZZANINE|MEZZ)(?:\\s+(?:FLOOR|LEVEL))?)\\b");
    private static final Pattern ROOM = Pattern.compile("\\b(?:ROOM|RM)[\\s.\\-#]*([0-9][0-9A-Z]*)");
    private static final Map<String, String> NAMED_FLOORS = Map.of("BSMT", "BASEMENT", "MEZZ", "MEZZANINE");

    private String floor = "";

    /** The floor that was named ({@code 2}, {@code BASEMENT}), else the room ({@code ROOM 204}); empty where none was. */
    String floor() {
        return floor;
    }

    void note(String text) {
        Matcher m = FLOOR.matcher(text);
        if (!floor.isEmpty()) return;
        Matcher room = ROOM.matcher(text);
        if (room.find()) floor = "ROOM " + room.group(1);
        if (!m.find()) return;
        for (int g = 1; g <= 3; g++) if (m.group(g) != null) floor = NAMED_FLOORS.getOrDefault(m.group(g), m.group(g));
    }

    /** Cuts the remark off, before or after the designation, and notes its floor. */
    void cutFrom(List<DesignationToken> tokens) {
        cutLeadingFloor(tokens);
        boolean letters = false, digits = false, mark = false;
        for (int i = 0; i < tokens.size(); i++) {
            if (i > 0 && (letters || digits) && starts(tokens, i, letters && digits, mark)) {
                note(inWords(tokens.subList(i, tokens.size())));
                tokens.subList(i, tokens.size()).clear();
                return;
            }
            DesignationToken t = tokens.get(i);
            letters |= t.isLetters();
            digits |= t.isDigits();
            mark |= isMark(t.text());
        }
    }

    private void cutLeadingFloor(List<DesignationToken> tokens) {
        if (tokens.size() < 3) return;
        DesignationToken first = tokens.get(0), second = tokens.get(1);
        boolean ordinal = first.isOrdinal() && second.text().matches("FLOOR|FLR|FL|LEVEL") && second.standsApart();
        boolean level = first.text().matches("FLOOR|FLR|LEVEL|LVL") && second.isDigits() && second.standsApart();
        if (!(ordinal || level) || !tokens.get(2).standsApart()) return;
        note(inWords(tokens.subList(0, 2)));
        tokens.subList(0, 2).clear();
    }

    private static boolean isMark(String text) {
        return Family.ofWord(text).isPresent()
                || (text.length() > 1 && Family.ofMark(text).isPresent());
    }

    private static boolean isComma(DesignationToken t) {
        return t.text().equals(",") || t.text().equals(";");
    }

    private static boolean starts(List<DesignationToken> tokens, int i, boolean complete, boolean mark) {
        DesignationToken t = tokens.get(i);
        if (t.text().equals("@")) return true;
        if (isComma(t)) return i + 1 < tokens.size() && starts(tokens, i + 1, complete, mark);
        boolean apart = t.standsApart() || isComma(tokens.get(i - 1));
        if (!apart) return false;
        if ((complete || mark) && (t.isOrdinal() || STARTS.contains(t.text()))) return true;
        if (complete && PLACES.contains(t.text())) return true;
        return isRating(tokens, i, complete);
    }

    private static boolean isRating(List<DesignationToken> tokens, int i, boolean complete) {
        if (!tokens.get(i).isDigits() || i + 1 >= tokens.size()) return false;
        String unit = tokens.get(i + 1).text();
        boolean twoFigures = tokens.get(i).text().length() >= 2;
        if (unit.equals("Y") && tokens.get(i).text().length() == 3) return true;
        return UNITS.contains(unit) || (complete && (twoFigures || !unit.equals("A")) && SHORT_UNITS.contains(unit));
    }

    private static String inWords(List<DesignationToken> tokens) {
        StringBuilder text = new StringBuilder();
        for (DesignationToken t : tokens) text.append(t.before()).append(t.text());
        return text.toString();
    }
}
