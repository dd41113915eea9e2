package asfound.drawing.schedule.header;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.phrase.Gutter;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.text.Field;
import asfound.drawing.schedule.text.Value;
import asfound.model.Box;
import asfound.model.Directory;
import asfound.model.Stated;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
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

    private enum Where {
        ABOVE,
        BELOW,
        LEFT,
        RIGHT
    }

    private static final double GOES_ON = 12;
    private static final double BAR = 16;
    /** Two tables one above the other overlap by no more of the shorter one's height. */
    private static final double SLACK = 0.1;
    /** So many lines of blank at the most stand between a title and headings. */
    private static final double BLANK = 12;

    private final Sheet sheet;
    private final Phrases phrases;
    private final List<Box> tables;
    /** Whether all directories have their titles over them, and none below. */
    private final boolean titledAbove;

    private final List<Map<Where, Box>> areas = new ArrayList<>();
    private final Map<Box, LabelReader.Labelled> regions = new HashMap<>();

    private Headers(Sheet sheet, Phrases phrases, List<Box> tables) {
        this.sheet = sheet;
        this.phrases = phrases;
        this.tables = tables;
        titledAbove = tables.size() > 1 && !sheet.hasCells() && FootLines.areTitledAbove(phrases, tables);
        for (int t = 0; t < tables.size(); t++) areas.add(areas(t));
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

    /** How far a header over the one directory of a sheet may reach: to a long rule of the sheet, or to its edge. */
    private double bar(Box b, int side) {
        double edge = side < 0 ? 0 : sheet.width();
        for (Rule r : sheet.down().all()) {
            if (r.length() < 0.4 * sheet.height()) continue;
            if (side < 0 && r.at() < b.x() - 1) edge = Math.max(edge, r.at());
            if (side > 0 && r.at() > b.right() + 1) edge = Math.min(edge, r.at());
        }
        return edge;
    }

    private Box area(int t, Where where) {
        return areas.get(t).get(where);
    }

    /** Where a directory's header may stand on each side: up to the next directory, or to the sheet's edge. */
    private Map<Where, Box> areas(int t) {
        Box b = tables.get(t);
        double margin = Math.min(60, 0.12 * b.w() + 12);
        double left = b.x() - margin, right = b.right() + margin, top = 0, bottom = sheet.height();
        double leftEnd = 0, rightEnd = sheet.width();
        for (int o = 0; o < tables.size(); o++) {
            if (o == t) continue;
            Box other = tables.get(o);
            boolean overUnder = other.x() < b.right() && b.x() < other.right();
            boolean beside = other.y() < b.bottom() && b.y() < other.bottom();
            // the last row of a table reaches into the headings of the next
            double slack = 1 + SLACK * Math.min(b.h(), other.h());
            if (overUnder && other.bottom() <= b.y() + slack) top = Math.max(top, Math.min(b.y(), other.bottom()));
            if (overUnder && other.y() >= b.bottom() - slack)
                bottom = Math.min(bottom, Math.max(b.bottom(), other.y()));
            if (other.right() <= b.x() + 1) {
                left = Math.max(
                        left,
                        Math.min(b.x() - 1, beside ? Gutter.between(phrases, other, b) : (other.right() + b.x()) / 2));
                if (beside) leftEnd = Math.max(leftEnd, other.right());
            }
            if (other.x() >= b.right() - 1) {
                right = Math.min(
                        right,
                        Math.max(
                                b.right() + 1,
                                beside ? Gutter.between(phrases, b, other) : (other.x() + b.right()) / 2));
                if (beside) rightEnd = Math.min(rightEnd, other.x());
            }
        }
        if (titledAbove && top > 0) top = FootLines.foot(phrases, new Box(left, top, right - left, b.y() - top));
        if (titledAbove && bottom < sheet.height()) {
            double foot = FootLines.foot(phrases, new Box(left, b.bottom(), right - left, bottom - b.bottom()));
            if (foot > b.bottom()) bottom = foot;
        }
        if (tables.size() == 1) {
            left = Math.min(left, bar(b, -1));
            right = Math.max(right, bar(b, 1));
        }
        Map<Where, Box> out = new EnumMap<>(Where.class);
        out.put(Where.ABOVE, new Box(left, top, right - left, Math.max(0, b.y() - top)));
        out.put(Where.BELOW, new Box(left, b.bottom(), right - left, Math.max(0, bottom - b.bottom())));
        double next = sheet.height();
        for (Box o : tables) if (o.y() >= b.bottom()) next = Math.min(next, o.y());
        out.put(Where.LEFT, beside(leftEnd, b.x() - 1, b, next));
        out.put(Where.RIGHT, beside(b.right() + 1, rightEnd, b, next));
        return out;
    }

    private Box beside(double left, double right, Box table, double next) {
        Box rows = new Box(left, table.y() - 20, Math.max(0, right - left), table.h() + 20);
        return new Box(rows.x(), rows.y(), rows.w(), ColumnBeside.foot(phrases, rows, next) - rows.y());
    }
}
