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

    /** How much a heading speaks for each role; not to be changed. */
    public Map<Role, Double> weigh(String heading) {
        return known.of(heading).weights();
    }

    public double weight(String heading, Role role) {
        return weigh(heading).getOrDefault(role, 0.0);
    }

    /** How much a heading speaks for any role. */
    public double most(String heading) {
        double most = 0;
        for (double weight : weigh(heading).values()) most = Math.max(most, weight);
        return most;
    }

    /** Whether it has a word without which nothing is a title. */
    public boolean mayBeTitle(String text) {
        return known.of(text).mayBeTitle();
    }

    /** The name of a panel that a title gives. */
    public Optional<String> name(String text) {
        return known.of(text).name();
    }

    /** A name without what else a header writes around it. */
    public String bareName(String text) {
        return known.of(text).bareName();
    }

    /** The label with which a phrase begins. */
    public Optional<Labels.Label> label(Phrase p) {
        String first = p.words().get(0).text();
        // most begin with no label's first word, and are not taken apart
        boolean whole = first.indexOf(':') < 0 && first.indexOf('=') < 0;
        return whole && !known.of(first).beginsLabel()
                ? Optional.empty()
                : labels.computeIfAbsent(p, q -> Labels.at(HeaderWords.of(q), 0));
    }

    /** Whether a text is the label of a value of a panel, or begins with one that is marked. */
    public boolean isLabelOfValue(String text) {
        return known.of(text).isLabelOfValue();
    }

    /** Whether a text tells of the panel without a label. */
    boolean saysItself(String text) {
        return known.of(text).saysItself();
    }

    /** Whether a phrase tells of the panel, and heads no column. */
    public boolean saysOfPanel(Phrase p) {
        return ofPanel.computeIfAbsent(p, q -> HeaderLines.saysOfPanel(q, this));
    }
}
