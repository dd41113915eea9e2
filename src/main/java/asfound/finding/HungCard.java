package asfound.finding;

import asfound.finding.Comparison.Answer;
import asfound.network.Device;
import asfound.network.Served;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A panel whose whole card is another panel's: its own entries were traced at the same positions there, or what stands on
 * the other's card was traced here.
 *
 * @param panel whose devices do not feed what its card says
 * @param other whose card it has, or which has its card
 * @param alike the devices at which the two speak of one thing
 * @param devices all devices of the panel that the wrong card explains
 */
record HungCard(String panel, String other, List<Comparison> alike, List<Comparison> devices) {

    private enum Likeness {
        /** What one says was traced at the other, and is not drawn there or not found there as drawn. */
        MOVED,
        /** The two cards say the same, and the other's is right. */
        COPIED,
        /** Both are known, and they have nothing to do with one another. */
        AGAINST,
        SILENT
    }

    /**
     * Empty where too few positions are alike, or too many speak against it.
     *
     * @param copies whether two cards that read the same are enough; where floors repeat, they may be right to do so
     */
    static Optional<HungCard> of(Facts facts, CardPairs.Pair pair, boolean copies) {
        List<Comparison> alike = new ArrayList<>(), devices = new ArrayList<>();
        int against = 0;
        for (Comparison c : facts.index().devicesOf(pair.panel())) {
            Optional<Comparison> there =
                    facts.at(new Device(pair.other(), c.device().key()));
            Likeness likeness = there.map(t -> likeness(facts, c, t)).orElse(Likeness.SILENT);
            boolean hit = likeness == Likeness.MOVED || copies && likeness == Likeness.COPIED;
            if (hit) alike.add(c);
            if (likeness == Likeness.AGAINST) against++;
            else if (facts.isOpen(c)) devices.add(c);
        }
        boolean enough = alike.size() >= Shift.RUN && (copies ? against == 0 : alike.size() > 2 * against);
        return enough ? Optional.of(new HungCard(pair.panel(), pair.other(), alike, devices)) : Optional.empty();
    }

    private static Likeness likeness(Facts facts, Comparison c, Comparison there) {
        boolean right = c.answer() == Answer.AGREES && c.drawn().stream().anyMatch(CardPairs::isSpecific);
        if (right) return Likeness.AGAINST;
        if (!facts.isOpen(c) || c.answer() != Answer.OTHER || c.backfed()) return Likeness.SILENT;
        boolean thereRight = there.answer() == Answer.AGREES;
        boolean drawnThere = meet(facts, c.seen(), there.drawn()), tracedThere = meet(facts, c.drawn(), there.seen());
        if (!thereRight && (drawnThere || tracedThere)) return Likeness.MOVED;
        if (tracedThere || meet(facts, c.drawn(), there.drawn())) return Likeness.COPIED;
        return there.drawn().isEmpty() && there.seen().isEmpty() ? Likeness.SILENT : Likeness.AGAINST;
    }

    private static boolean meet(Facts facts, List<Served> some, List<Served> others) {
        return some.stream()
                .filter(CardPairs::isSpecific)
                .anyMatch(s -> others.stream().anyMatch(o -> facts.sames().same(s, o)));
    }

    /** Cards among one group of panels, in words. */
    static String inWords(Set<String> panels, List<HungCard> cards) {
        int alike = cards.stream().mapToInt(c -> c.alike().size()).sum();
        Set<String> wrong =
                cards.stream().map(HungCard::panel).collect(Collectors.toCollection(java.util.TreeSet::new));
        String count = Words.count(alike, "entry");
        if (wrong.size() == 1) {
            String others =
                    Words.list(panels.stream().filter(p -> !wrong.contains(p)).toList());
            return "The directory of " + wrong.iterator().next() + " is not its own: " + count + " of it and of "
                    + others + " were traced or are drawn at the same position of the other.";
        }
        return "The directories of " + Words.list(List.copyOf(panels)) + " have changed places: " + count
                + " were traced at the same position of another of these panels.";
    }
}
