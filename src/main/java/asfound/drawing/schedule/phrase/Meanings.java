package asfound.drawing.schedule.phrase;

import asfound.drawing.schedule.text.Labels;
import asfound.drawing.schedule.text.Looks;
import asfound.drawing.schedule.text.Role;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What the texts of one sheet mean as entries, headings, labels and titles. Each is asked for again by every table, and once more by
 * whoever looks for names: it is looked at once. What hangs on the text alone was perhaps known before from another sheet.
 */
public final class Meanings {

    private final KnownTexts known;
    private final Map<Phrase, Optional<Labels.Label>> labels = new IdentityHashMap<>();
    private final Map<Phrase, Boolean> ofPanel = new IdentityHashMap<>();

    /** Those of one sheet, with what is known of texts already. */
    Meanings(KnownTexts known) {
        this.known = known;
        known.makeRoom();
    }

    /** What entries look like. */
    public Looks looks() {
        return known.looks();
    }

    private KnownText of(Phrase p) {
        return p.known(known);
    }

    /** How much a heading speaks for each role; not to be changed. */
    public Map<Role, Double> weigh(String heading) {
        return known.of(heading).weights();
    }

    /** How much a phrase speaks for each role as a heading; not to be changed. */
    public Map<Role, Double> weigh(Phrase heading) {
        return of(heading).weights();
    }

    public double weight(String heading, Role role) {
        return weigh(heading).getOrDefault(role, 0.0);
    }

    public double weight(Phrase heading, Role role) {
        return weigh(heading).getOrDefault(role, 0.0);
    }

    /** How much a heading speaks for any role. */
    public double most(String heading) {
        return most(weigh(heading));
    }

    /** How much a phrase speaks for any role as a heading. */
    public double most(Phrase heading) {
        return most(weigh(heading));
    }

    private static double most(Map<Role, Double> weights) {
        double most = 0;
        for (double weight : weights.values()) most = Math.max(most, weight);
        return most;
    }

    /** Whether its first word or its last by itself heads positions. */
    boolean headsPositions(Phrase p) {
        return of(p).headsPositions();
    }

    /** The positions of a device that a phrase is. */
    public Optional<PositionText> position(Phrase p) {
        return of(p).position();
    }

    /** The voltage that a text tells without a label. */
    public Optional<String> voltage(String text) {
        return known.of(text).voltage();
    }

    /** The phases that a text tells without a label. */
    public Optional<Integer> phases(String text) {
        return known.of(text).phases();
    }

    /** The wires that a text tells without a label. */
    public Optional<Integer> wires(String text) {
        return known.of(text).wires();
    }

    /** Whether a heading names the frame and the trip of a device. */
    public boolean isFrameAndTrip(String heading) {
        return known.of(heading).isFrameAndTrip();
    }

    /** Whether it has a word without which nothing is a title. */
    public boolean mayBeTitle(Phrase p) {
        return of(p).mayBeTitle();
    }

    /** The name of a panel that a title gives. */
    public Optional<String> name(Phrase title) {
        return of(title).name();
    }

    /** A name without what else a header writes around it. */
    public String bareName(String text) {
        return known.of(text).bareName();
    }

    /** The label with which a phrase begins. */
    public Optional<Labels.Label> label(Phrase p) {
        // most begin with no label's first word, and are not taken apart
        return of(p).mayBeginLabel()
                ? labels.computeIfAbsent(p, q -> Labels.at(HeaderWords.of(q), 0))
                : Optional.empty();
    }

    /** Whether a text is the label of a value of a panel, or begins with one that is marked. */
    public boolean isLabelOfValue(Phrase p) {
        return of(p).isLabelOfValue();
    }

    /** Whether it names a list that speaks of a panel and is no directory of it. */
    boolean isAboutPanels(Phrase p) {
        return of(p).isAboutPanels();
    }

    /** Whether it names a list of something that is no panel. */
    public boolean isForeignTitle(Phrase p) {
        return of(p).isForeignTitle();
    }

    /** Whether a text tells of the panel without a label. */
    boolean saysItself(Phrase p) {
        return of(p).saysItself();
    }

    /** Whether a phrase tells of the panel, and heads no column. */
    public boolean saysOfPanel(Phrase p) {
        return ofPanel.computeIfAbsent(p, q -> HeaderLines.saysOfPanel(q, this));
    }
}
