package asfound.drawing.schedule.header;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.phrase.Meanings;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.text.Field;
import asfound.drawing.schedule.text.NameText;
import asfound.drawing.schedule.text.Value;
import asfound.model.Stated;
import java.util.Comparator;

/** The name of a panel, gathered from label, title and words that stand alone; the first that names it is believed. */
final class PanelName {

    private final Sheet sheet;
    private final Meanings meanings;
    private Stated<String> designation = Stated.blank();

    PanelName(Sheet sheet, Meanings meanings) {
        this.sheet = sheet;
        this.meanings = meanings;
    }

    /** What stands behind a label for the name. */
    void labelled(Value name) {
        if (designation.isBlank())
            designation = Stated.of(NameText.name(name.text()), name.text(), sheet.place(name.box()));
    }

    /** Of several labels the one nearest to a directory below. */
    void nearest(LabelReader.Labelled region) {
        region.values().stream()
                .filter(v -> v.field() == Field.DESIGNATION)
                .max(Comparator.comparingDouble(v -> v.box().y()))
                .ifPresent(this::labelled);
    }

    /** The name with which a line begins that stands as a title. */
    void line(NamedLine line) {
        Phrase first = line.phrases().get(0);
        designation = Stated.of(line.name(), first.text(), sheet.place(first.box()));
    }

    /** A text where it is a title: {@code PANEL L2A}. */
    void title(Phrase p) {
        if (designation.isBlank())
            meanings.name(p).ifPresent(n -> designation = Stated.of(n, p.text(), sheet.place(p.box())));
    }

    /** A heading that is nothing but the name. */
    void heading(Phrase p) {
        designation = Stated.of(NameText.name(p.text()), p.text(), sheet.place(p.box()));
    }

    /** A name that stands beside a title without one, or alone. */
    void alone(LabelReader.Labelled region) {
        besideTitle(region);
        if (designation.isBlank())
            LoneName.in(region)
                    .ifPresent(p -> designation = Stated.of(LoneName.bare(p), p.text(), sheet.place(p.box())));
    }

    /** A name that stands beside a title without one. */
    void besideTitle(LabelReader.Labelled region) {
        if (designation.isBlank())
            BesideTitle.in(region.said())
                    .ifPresent(p -> designation = Stated.of(NameText.name(p.text()), p.text(), sheet.place(p.box())));
    }

    /** Blank where nothing names the panel. */
    Stated<String> stated() {
        return designation;
    }
}
