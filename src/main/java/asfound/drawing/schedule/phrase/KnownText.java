package asfound.drawing.schedule.phrase;

import asfound.drawing.schedule.text.FrameAndTrip;
import asfound.drawing.schedule.text.Headings;
import asfound.drawing.schedule.text.Labels;
import asfound.drawing.schedule.text.NameText;
import asfound.drawing.schedule.text.Role;
import asfound.drawing.schedule.text.SystemText;
import asfound.drawing.schedule.text.Texts;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One text with what it means by itself, each looked at when it is first asked for. */
final class KnownText {

    private final String text;
    private Map<Role, Double> weights;
    private Optional<String> name;
    private String bareName;
    private Boolean mayBeTitle;
    private Boolean labelOfValue;
    private Boolean mayBeginLabel;
    private Boolean saysItself;
    private Boolean aboutPanels;
    private Boolean foreignTitle;
    private Boolean frameAndTrip;
    private Boolean headsPositions;
    private Optional<PositionText> position;
    private Optional<String> voltage;
    private Optional<Integer> phases;
    private Optional<Integer> wires;

    KnownText(String text) {
        this.text = text;
    }

    /** As a heading; not to be changed. */
    Map<Role, Double> weights() {
        if (weights == null) weights = Headings.weigh(text);
        return weights;
    }

    /** As a title. */
    Optional<String> name() {
        if (name == null) name = Titles.nameIn(text);
        return name;
    }

    String bareName() {
        if (bareName == null) bareName = NameText.name(text);
        return bareName;
    }

    boolean mayBeTitle() {
        if (mayBeTitle == null) mayBeTitle = Titles.mayBeTitle(text);
        return mayBeTitle;
    }

    boolean isLabelOfValue() {
        if (labelOfValue == null) labelOfValue = isOfValue(text);
        return labelOfValue;
    }

    /** Its first word is one that labels begin with, or has the mark of a label in it. */
    boolean mayBeginLabel() {
        if (mayBeginLabel == null) {
            int end = text.indexOf(' ');
            String first = end < 0 ? text : text.substring(0, end);
            mayBeginLabel = first.indexOf(':') >= 0 || first.indexOf('=') >= 0 || Labels.isFirstWord(first);
        }
        return mayBeginLabel;
    }

    boolean saysItself() {
        if (saysItself == null) saysItself = HeaderLines.saysItself(text);
        return saysItself;
    }

    boolean isAboutPanels() {
        if (aboutPanels == null) aboutPanels = ForeignTables.isAboutPanels(text);
        return aboutPanels;
    }

    boolean isForeignTitle() {
        if (foreignTitle == null) foreignTitle = ForeignTables.isPlainTitle(text);
        return foreignTitle;
    }

    /** As a heading it names both. */
    boolean isFrameAndTrip() {
        if (frameAndTrip == null) frameAndTrip = FrameAndTrip.isHeading(text);
        return frameAndTrip;
    }

    /** Its first word or its last by itself heads positions. */
    boolean headsPositions() {
        if (headsPositions == null) {
            String first = text.substring(0, Math.max(0, text.indexOf(' '))),
                    last = text.substring(text.lastIndexOf(' ') + 1);
            headsPositions = isOfPositions(first) || isOfPositions(last);
        }
        return headsPositions;
    }

    private static boolean isOfPositions(String word) {
        return !Texts.hasFigure(word) && Headings.weight(word, Role.POSITION) >= TightHeadings.HEADED;
    }

    /** As the positions of a device. */
    Optional<PositionText> position() {
        if (position == null) position = PositionText.parse(text);
        return position;
    }

    /** Said without a label, as the phases and the wires. */
    Optional<String> voltage() {
        if (voltage == null) voltage = SystemText.voltageOf(text);
        return voltage;
    }

    Optional<Integer> phases() {
        if (phases == null) phases = SystemText.phases(text, false);
        return phases;
    }

    Optional<Integer> wires() {
        if (wires == null) wires = SystemText.wires(text, false);
        return wires;
    }

    private static boolean isOfValue(String text) {
        if (!Labels.mayBegin(text)) return false;
        List<String> words = List.of(text.split(" "));
        return Labels.at(words, 0)
                .filter(l -> l.field().isKept() && !l.field().isTotal() && (l.marked() || l.end() == words.size()))
                .isPresent();
    }
}
