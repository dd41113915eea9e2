package asfound.drawing.schedule.header;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.header.HeaderAreas.Where;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.text.Field;
import asfound.drawing.schedule.text.Value;
import asfound.model.Box;
import asfound.model.Directory;
import asfound.model.Stated;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds what stands around each directory about its panel. Offices put headers above, beside or below: the side on which
 * most is said for all the directories of the sheet together is believed first, so that of two panels one above the other
 * neither gets the other's header.
 */
public final class Headers {

    private static final double GOES_ON = 12;
    private static final double BAR = 16;
    /** So many lines of blank at the most stand between a title and headings. */
    private static final double BLANK = 12;

    private final Sheet sheet;
    private final Phrases phrases;
    private final List<Box> tables;
    private final List<Map<Where, Box>> areas = new ArrayList<>();
    private final Map<Box, LabelReader.Labelled> regions = new HashMap<>();

    private Headers(Sheet sheet, Phrases phrases, List<Box> tables) {
        this.sheet = sheet;
        this.phrases = phrases;
        this.tables = tables;
        HeaderAreas around = new HeaderAreas(sheet, phrases, tables);
        for (int t = 0; t < tables.size(); t++) areas.add(around.of(t));
    }

    /** @param tables the directories' areas, their column headings with them */
    public static Headers of(Sheet sheet, Phrases phrases, List<Box> tables) {
        return new Headers(sheet, phrases, tables);
    }

    /** What columns of a list say of one of its panels, beside each of whose rows they say the same. */
    public static Directory.Header ofList(Sheet sheet, Phrases phrases, Stated<String> name, List<Value> said) {
        HeaderBuilder builder = new HeaderBuilder(sheet, phrases.meanings());
        builder.add(new LabelReader.Labelled(said, List.of(), List.of(), List.of(), List.of()), false);
        return Directory.Header.of(name).completed(builder.header());
    }

    /** One for each directory, in their order. */
    public List<HeaderText> read() {
        Where main = Where.ABOVE;
        double most = -1;
        for (Where where : Where.values()) {
            double told = 0;
            for (int t = 0; t < tables.size(); t++) {
                HeaderBuilder builder = new HeaderBuilder(sheet, phrases.meanings());
                builder.add(region(t, where), true);
                if (where == Where.ABOVE) builder.titleLine(region(t, where));
                builder.ownLines();
                // a directory whose header is all there counts for more than one with much of another's
                told += builder.known() >= 4 ? 10 + builder.known() : builder.known();
            }
            if (most < 0 || told > most + tables.size()) {
                most = told;
                main = where;
            }
        }
        List<HeaderText> out = new ArrayList<>();
        for (int t = 0; t < tables.size(); t++) out.add(header(t, main));
        return out;
    }

    private HeaderText header(int t, Where main) {
        HeaderBuilder builder = new HeaderBuilder(sheet, phrases.meanings());
        // of tables one above the other, the title that stands between two belongs to the same side of all
        if (main == Where.BELOW && titled(Where.ABOVE) >= titled(Where.BELOW)) builder.titleAbove(region(title(t)));
        builder.add(region(t, main), true);
        List<Where> others = new ArrayList<>(Arrays.asList(Where.values()));
        others.remove(main);
        HeaderBuilder sums = new HeaderBuilder(sheet, phrases.meanings());
        sums.add(region(t, Where.BELOW), false);
        if (main != Where.ABOVE) further(builder, region(title(t)));
        for (Where where : others) if (!isAnothers(t, where, main)) further(builder, region(t, where));
        builder.titleLine(region(t, Where.ABOVE));
        if (!builder.isNamed()) TurnedTitles.of(phrases.turned(), tables.get(t)).ifPresent(builder::title);
        builder.loneName(region(t, main));
        if (main != Where.ABOVE) builder.nameBesideTitle(region(title(t)));
        if (!builder.isNamed())
            LoneHeading.over(phrases, tables.get(t), lineHeight(t)).ifPresent(builder::heading);
        if (!builder.isNamed() && main == Where.ABOVE) nameAlike(t).ifPresent(builder::heading);
        builder.ownLines();
        Set<Box> labelled = new HashSet<>();
        for (Where where : Where.values()) {
            LabelReader.Labelled region = region(t, where);
            region.values().forEach(v -> labelled.add(v.box()));
            region.labels().forEach(p -> labelled.add(p.box()));
            region.lines().forEach(line -> line.phrases().forEach(p -> labelled.add(p.box())));
        }
        List<Value> unread = builder.unread();
        return new HeaderText(builder.header(), sums.totals(), builder.positions(), unread, labelled);
    }

    /** Where the name of another panel stands over its directory by itself. */
    private Optional<Phrase> nameAlike(int t) {
        NameAlike alike = new NameAlike(phrases);
        for (int o = 0; o < tables.size(); o++) {
            Box other = tables.get(o);
            Optional<Phrase> found = o == t
                    ? Optional.empty()
                    : LoneName.in(region(o, Where.ABOVE)).flatMap(name -> alike.over(tables.get(t), name, other));
            if (found.isPresent()) return found;
        }
        return Optional.empty();
    }

    /** On a side where the panel's name stands, running text tells of it too. */
    private static void further(HeaderBuilder builder, LabelReader.Labelled region) {
        boolean named = builder.isNamed();
        builder.add(region, false);
        if (!named && builder.isNamed()) builder.add(region, true);
    }

    /** The space on that side is where another directory has its header. */
    private boolean isAnothers(int t, Where where, Where main) {
        Box area = area(t, where);
        for (int o = 0; o < tables.size(); o++) if (o != t && area.overlaps(area(o, main))) return true;
        return false;
    }

    private LabelReader.Labelled region(int t, Where where) {
        return region(area(t, where));
    }

    /**
     * The strip above a directory where its title stands, whoever owns the space further up: a few lines from the lowest
     * text upwards, for over short turned headings their cells are blank.
     */
    private Box title(int t) {
        Box above = area(t, Where.ABOVE);
        double line = lineHeight(t);
        double foot = phrases.between(above.y(), above.bottom()).stream()
                .filter(p -> above.contains(p.centreX(), p.centreY())
                        && above.bottom() - p.box().bottom() < BLANK * line)
                .mapToDouble(p -> p.box().bottom())
                .max()
                .orElse(above.bottom());
        double strip = Math.min(above.h(), above.bottom() - Math.min(foot, above.bottom()) + 4 * line + 12);
        return new Box(above.x(), above.bottom() - strip, above.w(), strip);
    }

    /** How many directories have a title near them on that side. */
    private long titled(Where where) {
        long n = 0;
        for (int t = 0; t < tables.size(); t++) {
            Box below = area(t, Where.BELOW);
            double strip = Math.min(below.h(), 4 * lineHeight(t) + 12);
            LabelReader.Labelled near =
                    region(where == Where.ABOVE ? title(t) : new Box(below.x(), below.y(), below.w(), strip));
            if (near.values().stream().anyMatch(v -> v.field() == Field.DESIGNATION)
                    || near.loose().stream()
                            .anyMatch(p -> phrases.meanings().name(p).isPresent())) n++;
        }
        return n;
    }

    private double lineHeight(int t) {
        Box b = tables.get(t);
        return phrases.between(b.y(), b.bottom()).stream()
                .filter(p -> b.contains(p.centreX(), p.centreY()))
                .mapToDouble(Phrase::size)
                .average()
                .orElse(8);
    }

    /** What stands in an area; asked for again and again, and read once. */
    private LabelReader.Labelled region(Box area) {
        return regions.computeIfAbsent(area, this::read);
    }

    private LabelReader.Labelled read(Box area) {
        List<Phrase> own = new ArrayList<>();
        List<Phrase> beyond = new ArrayList<>();
        for (Phrase p : phrases.between(area.y(), area.bottom()))
            if (area.contains(p.centreX(), p.centreY())) own.add(p);
            else if (p.centreY() > area.y() && p.centreY() < area.bottom() && p.centreX() >= area.right())
                beyond.add(p);
        beyond.sort(Phrase.ACROSS);
        for (Phrase p : beyond) if (goesOn(own, p)) own.add(p);
        LetterHead.removeFrom(own);
        own.sort(Phrase.ORDER);
        return LabelReader.read(sheet, own, phrases.meanings(), area.right());
    }

    /** A header wider than its directory: the line goes on without a rule of the sheet or a wide blank between. */
    private boolean goesOn(List<Phrase> own, Phrase p) {
        for (Box t : tables) if (p.left() < t.right() && p.right() > t.x()) return false;
        return own.stream()
                .anyMatch(o -> Math.abs(o.centreY() - p.centreY()) < 0.4 * p.size()
                        && o.right() <= p.left()
                        && p.left() - o.right() < GOES_ON * p.size()
                        && !isBarred(o, p));
    }

    /** A rule of the sheet stands between them: longer than the cells of a header are high. */
    private boolean isBarred(Phrase a, Phrase b) {
        return sheet.down().between(a.right(), b.left()).stream()
                .anyMatch(r -> r.passes(a.centreY()) && r.length() > BAR * a.size());
    }

    private Box area(int t, Where where) {
        return areas.get(t).get(where);
    }
}
