package asfound.drawing.schedule.table;

import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.PositionText;
import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.text.Role;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A board with a row for each way and its three phases side by side: description and device under L1, then under L2, then
 * under L3. Each phase becomes a side of its own, with the ways as its positions.
 */
public final class AcrossWays {

    public static final int PHASES = 3;
    /** Two or three lines of headings, in sizes of their type. */
    private static final double REACH = 7;

    private static final Set<Role> OF_DEVICE = EnumSet.of(Role.DESCRIPTION, Role.RATING, Role.DEVICE, Role.POLES);

    private static final Pattern PHASE = Pattern.compile(
            "(?i).*\\b(?:L[123]|[RYB]|red|yellow|blue|brown|black|gr[ae]y|(?:phase|ph)\\s*[ABC123])\\b.*");

    private AcrossWays() {}

    /** The three sides; empty where the columns do not repeat three times under their phases. */
    static Optional<List<Side>> of(Side side, List<Phrase> phrases) {
        List<Column> columns = side.columns().stream()
                .filter(c -> c.left() > side.spine().centreX())
                .toList();
        int each = columns.size() / PHASES;
        if (!side.spine().isSingle() || side.spine().step() != 1 || each < 2 || columns.size() != each * PHASES)
            return Optional.empty();
        List<Side> out = new ArrayList<>();
        for (int k = 0; k < PHASES; k++) {
            List<Column> own = columns.subList(k * each, (k + 1) * each);
            Side one = Side.of(spine(side.spine(), k + 1), own);
            boolean device = one.roles().containsKey(Role.RATING) || one.roles().containsKey(Role.DEVICE);
            boolean headed =
                    own.stream().anyMatch(c -> PHASE.matcher(c.heading()).matches())
                            || isUnderPhase(side.spine(), own, phrases);
            if (!device || !headed || !one.roles().containsKey(Role.DESCRIPTION)) return Optional.empty();
            out.add(one);
        }
        return out.stream().map(AcrossWays::device).distinct().count() == 1 ? Optional.of(out) : Optional.empty();
    }

    /**
     * What is told of a device, from left to right; sizes of cable may be such that nobody knows them for what they are. Where a
     * device of three poles is written under one phase, {@code 40 TP}, that alone has devices and the others have ratings.
     */
    private static List<Role> device(Side side) {
        return side.sequence().stream()
                .filter(OF_DEVICE::contains)
                .map(r -> r == Role.DEVICE ? Role.RATING : r)
                .toList();
    }

    /** The phase stands over its columns together, above their own headings. */
    private static boolean isUnderPhase(Spine ways, List<Column> own, List<Phrase> phrases) {
        double left = own.get(0).left(), right = own.get(own.size() - 1).right();
        return phrases.stream()
                .filter(p -> p.centreY() < ways.firstY() && p.centreY() > ways.firstY() - REACH * ways.size())
                .filter(p -> p.centreX() > left && p.centreX() < right)
                .anyMatch(p -> p.words().size() <= 2 && PHASE.matcher(p.text()).matches());
    }

    private static Spine spine(Spine ways, int phase) {
        List<Spine.Token> tokens = ways.tokens().stream()
                .map(t -> new Spine.Token(
                        new PositionText(
                                t.text().numbers(), List.of(phase), t.text().first() + "L" + phase),
                        t.phrase()))
                .toList();
        return new Spine(tokens, ways.heading());
    }

    public static boolean isAcross(Table table) {
        return table.sides().size() == PHASES
                && table.sides().stream()
                        .allMatch(s -> s.spine().tokens().get(0).text().isWay()
                                && s.spine().left()
                                        == table.sides().get(0).spine().left());
    }
}
