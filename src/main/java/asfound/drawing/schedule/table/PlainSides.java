package asfound.drawing.schedule.table;

import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.column.Columns;
import asfound.drawing.schedule.column.Contents;
import asfound.drawing.schedule.phrase.HeaderWords;
import asfound.drawing.schedule.phrase.PanelAbove;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.text.DeviceInWords;
import asfound.drawing.schedule.text.Labels;
import asfound.drawing.schedule.text.Look;
import asfound.drawing.schedule.text.Looks;
import asfound.drawing.schedule.text.Role;
import asfound.drawing.schedule.text.Texts;
import asfound.drawing.schedule.text.UseText;
import asfound.model.Box;
import asfound.model.Directory.Use;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Directories without headings, as they are typed for a panel's door or written down by whoever traced the circuits: numbers
 * from 1 on and what they feed, perhaps a rating. They count where a panel's name stands over them, where odd and even numbers
 * complete each other, or where spares stand among the entries.
 */
final class PlainSides {

    private static final int ROWS = 6, TITLED_ROWS = 4, HALF = 5, TITLED_HALF = 3;
    /** Entries of more words than these, on the whole, are sentences: notes. */
    private static final double WORDS = 5;

    private final List<Spine> spines;
    private final Columns columns;
    private final Phrases phrases;

    private PlainSides(List<Spine> spines, Columns columns, Phrases phrases) {
        this.spines = spines;
        this.columns = columns;
        this.phrases = phrases;
    }

    /** One side for each spine, from left to right; empty where not all of them are such lists. */
    static Optional<List<Side>> of(List<Spine> spines, Columns columns, Phrases phrases) {
        if (spines.stream().anyMatch(Spine::headed)) return Optional.empty();
        return new PlainSides(spines, columns, phrases).sides();
    }

    private Optional<List<Side>> sides() {
        List<Side> out = new ArrayList<>();
        double left = Double.NEGATIVE_INFINITY;
        for (int s = 0; s < spines.size(); ) {
            boolean pair = s + 1 < spines.size() && areHalves(spines.get(s), spines.get(s + 1));
            int next = s + (pair ? 2 : 1);
            double right = next < spines.size() ? spines.get(next).left() : Double.POSITIVE_INFINITY;
            List<Side> own = pair ? halves(s, left, right) : single(s, right, out);
            if (own.isEmpty()) return Optional.empty();
            out.addAll(own);
            left = own.get(own.size() - 1).right();
            s = next;
        }
        return Optional.of(out);
    }

    private static boolean areHalves(Spine odd, Spine even) {
        return odd.isOdd()
                && even.isEven()
                && odd.numbers().get(0) == 1
                && even.numbers().get(0) == 2
                && Math.abs(odd.tokens().size() - even.tokens().size()) <= 1
                && odd.regular() > 0.9
                && even.regular() > 0.9;
    }

    /** Every way to share out the columns between the two is tried: positions stand left, right, outside or in the middle. */
    private List<Side> halves(int s, double left, double right) {
        Spine odd = spines.get(s), even = spines.get(s + 1);
        List<Column> between = within(odd.right(), even.left());
        List<Side> best = List.of();
        for (int cut = 0; cut <= between.size(); cut++) {
            List<Column> first = new ArrayList<>(within(left, odd.left())), second = new ArrayList<>();
            first.addAll(between.subList(0, cut));
            second.addAll(between.subList(cut, between.size()));
            second.addAll(within(even.right(), right));
            List<Side> sides = List.of(side(odd, first), side(even, second));
            if (sides.stream().allMatch(this::isWhole) && (best.isEmpty() || quality(sides) >= quality(best) - 1e-9))
                best = sides;
        }
        if (best.isEmpty()) return best;
        int rows = Math.min(odd.tokens().size(), even.tokens().size());
        boolean titled = title(best).isPresent();
        return rows >= HALF || titled && rows >= TITLED_HALF ? best : List.of();
    }

    private static double quality(List<Side> sides) {
        return sides.stream().mapToDouble(Side::quality).sum();
    }

    /** @param before the sides so far: the numbers may go on from those of the last */
    private List<Side> single(int s, double right, List<Side> before) {
        Spine spine = spines.get(s);
        Side side = side(spine, within(spine.right(), right));
        int first = spine.everyNumber().get(0);
        boolean further = !before.isEmpty()
                && Collections.max(before.get(before.size() - 1).spine().everyNumber()) + 1 == first;
        boolean counts = (first == 1 || further) && spine.step() == 1 && spine.regular() > 0.9;
        if (!counts || !isWhole(side)) return List.of();
        boolean titled = further || title(List.of(side)).isPresent();
        int rows = spine.tokens().size();
        return titled && rows >= TITLED_ROWS || rows >= ROWS && hasFree(side) ? List.of(side) : List.of();
    }

    private List<Column> within(double left, double right) {
        return columns.all().stream()
                .filter(c -> (c.left() + c.right()) / 2 > left && (c.left() + c.right()) / 2 < right)
                .filter(c -> spines.stream().noneMatch(s -> c.holds(s.centreX())))
                .filter(c -> !c.isBlank())
                .toList();
    }

    private static Side side(Spine spine, List<Column> own) {
        return Side.of(spine, own.stream().map(PlainSides::described).toList());
    }

    /** Short names without a heading are descriptions here: there is nothing else for them to be. */
    private static Column described(Column c) {
        List<Look> entries = new Looks().of(c.texts());
        List<Look> others =
                entries.stream().filter(e -> e.device().isEmpty() || e.figure()).toList();
        // a card with the device in words below each entry
        boolean rated = others.size() < entries.size() && others.size() * 3 >= entries.size();
        double words = Math.max(c.weight(Role.DESCRIPTION), 2 * Contents.tags(entries));
        if (rated) words = Math.max(words, Contents.of(Role.DESCRIPTION, others));
        if (words < 0.5 || c.weight(Role.DESCRIPTION) >= 0.8) return c;
        Map<Role, Double> weights = new EnumMap<>(Role.class);
        weights.putAll(c.weights());
        weights.put(Role.DESCRIPTION, 0.8);
        return new Column(c.left(), c.right(), c.heading(), c.texts(), weights);
    }

    /** Each of its columns says something that a directory says, and the descriptions are no sentences. */
    private boolean isWhole(Side side) {
        Column description = side.roles().get(Role.DESCRIPTION);
        if (description == null || !side.roles().values().containsAll(side.columns())) return false;
        double words = description.texts().stream()
                .mapToInt(t ->
                        DeviceInWords.of(t).map(DeviceInWords::load).orElse(t).split(" ").length)
                .average()
                .orElse(0);
        return words <= WORDS && side.columns().stream().allMatch(c -> isHeadedByNothing(side, c));
    }

    /** What stands over it is nothing, or belongs to the title's line or one above. */
    private boolean isHeadedByNothing(Side side, Column c) {
        if (c.heading().isEmpty()) return true;
        Optional<Phrase> title = title(List.of(side));
        if (title.isEmpty()) return false;
        Set<String> words = new HashSet<>();
        double size = title.get().size(), level = title.get().centreY();
        double top = side.spine().firstY() - 0.5 * side.spine().size();
        for (Phrase p : phrases.between(level - 5 * size, top))
            if (p.centreY() < level + 0.3 * size || isBehindLabel(p))
                words.addAll(Arrays.asList(p.text().split(" ")));
        return words.containsAll(Arrays.asList(c.heading().split(" ")));
    }

    /** It is a label of the header or stands on the line of one. */
    private boolean isBehindLabel(Phrase p) {
        return phrases.near(p.centreY(), 0.3 * p.size()).stream()
                .min(Comparator.comparingDouble(Phrase::left))
                .map(HeaderWords::of)
                .flatMap(words -> Labels.at(words, 0).filter(l -> l.end() == words.size()))
                .filter(l -> l.field().isKept())
                .isPresent();
    }

    private Optional<Phrase> title(List<Side> sides) {
        Spine first = sides.get(0).spine();
        double left = sides.stream().mapToDouble(Side::left).min().orElse(0);
        double right = sides.stream().mapToDouble(Side::right).max().orElse(0);
        double top = first.firstY() - 0.5 * first.size();
        return PanelAbove.of(phrases, new Box(left, top, right - left, first.lastY() - top), first.size());
    }

    private static boolean hasFree(Side side) {
        return side.roles().get(Role.DESCRIPTION).texts().stream()
                .anyMatch(t -> UseText.of(t, false) != Use.LOAD && !Texts.saysNothing(t));
    }
}
