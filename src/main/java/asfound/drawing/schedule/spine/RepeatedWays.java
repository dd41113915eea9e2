package asfound.drawing.schedule.spine;

import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.PositionText;
import asfound.drawing.schedule.spine.Spine.Token;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Ways whose number stands in each of the rows of their phases, with the phase in a column beside it: {@code 1 | L2}. */
final class RepeatedWays {

    private static final int FEWEST = 4;
    private static final int PHASES = 3;
    private static final Pattern PHASE = Pattern.compile("(?i)(?:L ?[123]|[RYB]|[ABC])|TP&?N?|L1 ?[-–] ?L3");
    /** The phase stands no further from its way, in sizes of its type. */
    private static final double NEAR = 40;

    private RepeatedWays() {}

    /** The entries with their phases; as they are where they are no such ways. */
    static List<Token> of(List<Token> column, List<Phrase> phrases) {
        if (!isRepeated(column)) return column;
        List<String> phases = new ArrayList<>();
        for (Token t : column)
            phase(t, phrases)
                    .ifPresent(p -> phases.add(p.text().replace(" ", "").toUpperCase(Locale.ROOT)));
        if (phases.size() < column.size() || !areInTurn(column, phases)) return column;
        // where numbers of poles begin again, their column's heading still says what they are
        if (ColumnHead.saysPoles(phrases, column.get(0).phrase())) return column;
        boolean abc = phases.contains("A") || phases.contains("C");
        List<Token> out = new ArrayList<>();
        for (int i = 0; i < column.size(); i++) {
            Token t = column.get(i);
            String written = phases.get(i);
            boolean three = written.length() > 2 || written.equals("TP");
            List<Integer> phase =
                    three ? List.of(1, 2, 3) : List.of(abc && written.equals("B") ? 2 : PositionText.phase(written));
            String raw = t.text().first() + written;
            out.add(new Token(new PositionText(t.text().numbers(), phase, raw), t.phrase()));
        }
        return out;
    }

    /** The phases rise within a way, and begin again with the next: poles beside the phases of positions do neither. */
    private static boolean areInTurn(List<Token> column, List<String> phases) {
        int ways = 1;
        for (int i = 1; i < column.size(); i++) {
            int up = column.get(i).text().first() - column.get(i - 1).text().first();
            boolean three = phases.get(i).length() > 2 || phases.get(i).equals("TP");
            if (three && up == 0) return false;
            if (three || phases.get(i - 1).length() > 2 || phases.get(i - 1).equals("TP")) {
                if (up > 0) ways++;
                continue;
            }
            boolean rises = phases.get(i).compareTo(phases.get(i - 1)) > 0
                    || phases.get(i - 1).equals("R");
            if (rises != (up == 0)) return false;
            if (up > 0) ways++;
        }
        return ways > 1;
    }

    /** One number to an entry, none below the one before, and most of them more than once but not more than thrice. */
    static boolean isRepeated(List<Token> column) {
        if (column.size() < FEWEST) return false;
        int again = 0, same = 1;
        for (int i = 0; i < column.size(); i++) {
            PositionText here = column.get(i).text();
            if (here.isWay() || here.numbers().size() > 1) return false;
            if (i == 0) continue;
            int up = here.first() - column.get(i - 1).text().first();
            if (up < 0 || up > 1) return false;
            same = up == 0 ? same + 1 : 1;
            if (same > PHASES) return false;
            if (up == 0) again++;
        }
        return again * 2 >= column.size() - 1;
    }

    private static Optional<Phrase> phase(Token t, List<Phrase> phrases) {
        Phrase own = t.phrase();
        return phrases.stream()
                .filter(p -> p != own && Math.abs(p.centreY() - own.centreY()) < 0.4 * own.size())
                .filter(p -> p.left() >= own.right() - 0.5 && p.left() - own.right() < NEAR * own.size())
                .min(Comparator.comparingDouble(Phrase::left))
                .filter(p -> PHASE.matcher(p.text()).matches());
    }
}
