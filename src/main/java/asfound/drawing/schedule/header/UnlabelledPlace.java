package asfound.drawing.schedule.header;

import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Titles;
import asfound.drawing.schedule.text.Field;
import asfound.drawing.schedule.text.PlaceWords;
import asfound.drawing.schedule.text.PlacedName;
import asfound.drawing.schedule.text.RatingText;
import asfound.drawing.schedule.text.SystemText;
import asfound.drawing.schedule.text.Texts;
import asfound.drawing.schedule.text.Value;
import asfound.model.Box;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a panel stands, said without a label: behind its name ({@code Panel PP-2, Janitor 118}), or among its ratings or beside its name.
 * Only a text that holds a word for a place is one.
 */
final class UnlabelledPlace {

    private static final Pattern PIECES = Pattern.compile("[,;]\\s+|\\.\\s+(?=\\S)|\\s+[-–—]\\s+");

    /** {@code EXISTING 225A, 120/208 VOLT PANEL IN CORR. 200}. */
    private static final Pattern PANEL_IN =
            Pattern.compile("\\b(?:PANEL(?:\\s?BOARD)?|BOARD)\\s+IN\\s+([^,;]+)", Pattern.CASE_INSENSITIVE);

    private UnlabelledPlace() {}

    /** The place that stands behind the panel's name, behind its label or in a title; empty where none does. */
    static Optional<Value> behindName(LabelReader.Labelled region, String name) {
        for (Value v : region.values())
            if (v.field() == Field.DESIGNATION) {
                Optional<PlacedName> placed =
                        PlacedName.of(v.text()).filter(p -> p.name().equals(name));
                if (placed.isPresent()) return placed.map(p -> value(p.place(), v.box()));
            }
        for (Phrase p : region.loose()) {
            Optional<PlacedName> placed =
                    Titles.nameIn(p.text()).filter(name::equals).flatMap(n -> PlacedName.of(from(n, p.text())));
            if (placed.isPresent()) return placed.map(n -> value(n.place(), p.box()));
        }
        return Optional.empty();
    }

    /** What of a title begins with the name. */
    private static String from(String name, String title) {
        return title.substring(Math.max(0, title.indexOf(name)));
    }

    /** What a region of a header says of the place without a label; empty where nothing does. */
    static Optional<Value> in(LabelReader.Labelled region) {
        for (Value v : region.values()) {
            if (v.field() != Field.DESIGNATION) continue;
            String[] pieces = PIECES.split(v.text());
            if (pieces.length > 1 && PlaceWords.isPlace(pieces[1])) return Optional.of(value(pieces[1], v.box()));
        }
        for (Phrase p : region.loose()) {
            String[] pieces = PIECES.split(p.text());
            boolean titled = pieces.length > 1
                    && PlaceWords.isNamed(pieces[1])
                    && Titles.nameIn(p.text()).isPresent();
            if (titled) return Optional.of(value(pieces[1], p.box()));
            Matcher in = PANEL_IN.matcher(p.text());
            if (in.find() && PlaceWords.isPlace(in.group(1))) return Optional.of(value(in.group(1), p.box()));
        }
        return region.loose().stream()
                .filter(p ->
                        PlaceWords.isPlace(p.text()) && (isAmongRatings(p, region.loose()) || isBesideName(p, region)))
                .findFirst()
                .map(p -> value(p.text(), p.box()));
    }

    private static Value value(String text, Box box) {
        return new Value(Field.LOCATION, PlaceWords.within(text), box, 1);
    }

    /** {@code PNL N-1   APT 1}. */
    private static boolean isBesideName(Phrase place, LabelReader.Labelled region) {
        return Texts.hasFigure(place.text())
                && region.values().stream()
                        .anyMatch(v -> v.field() == Field.DESIGNATION
                                && Math.abs(v.box().y() + v.box().h() / 2 - place.centreY()) < 0.3 * place.size()
                                && v.box().right() < place.left());
    }

    /** On its line the panel's voltage or rating is said as well. */
    private static boolean isAmongRatings(Phrase place, List<Phrase> loose) {
        return loose.stream()
                .filter(p -> p != place && Math.abs(p.centreY() - place.centreY()) < 0.3 * place.size())
                .anyMatch(p -> SystemText.voltageOf(p.text()).isPresent()
                        || RatingText.mainOf(p.text()).isPresent()
                        || RatingText.busOf(p.text()).isPresent());
    }
}
