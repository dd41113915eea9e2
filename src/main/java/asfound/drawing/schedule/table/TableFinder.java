package asfound.drawing.schedule.table;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.column.ColumnFinder;
import asfound.drawing.schedule.column.ColumnWeights;
import asfound.drawing.schedule.column.Columns;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.phrase.Span;
import asfound.drawing.schedule.spine.BandParts;
import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.spine.SpineFinder;
import asfound.model.Box;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Finds the directories on a sheet: spines in bands of rows, their columns, and which sides make one panel. */
public final class TableFinder {

    /** So many rows without headings are no chance. */
    static final int PLAIN_ROWS = 5;

    private final Sheet sheet;
    private final Phrases phrases;
    private final ColumnWeights weights;
    private final SideCheck check;
    private final List<Table> tables = new ArrayList<>();
    private final List<Spine> all = new ArrayList<>();
    private final List<Spine> unexplained = new ArrayList<>();

    public TableFinder(Sheet sheet, Phrases phrases) {
        this.sheet = sheet;
        this.phrases = phrases;
        weights = new ColumnWeights(phrases.meanings());
        check = new SideCheck(phrases.meanings());
    }

    public List<Table> find() {
        boolean cells = sheet.hasCells();
        SpineFinder spines = new SpineFinder(sheet, phrases);
        all.addAll(spines.find());
        Bands parter = new Bands(sheet, phrases);
        for (List<Spine> band : Bands.of(all)) {
            // between cells a blank parts two tables; on a drawing the widest blank may lie within one
            List<BandParts.Part> parts = cells ? parter.parted(band) : BandParts.of(band, spines.others());
            for (BandParts.Part part : parts) read(part.spines(), part.limits());
        }
        tables.sort(Comparator.comparingDouble((Table t) -> Math.round(t.box().y() / 20))
                .thenComparingDouble(t -> t.box().x()));
        return tables;
    }

    /** Places with headed columns of positions that could not be explained as a directory. */
    public List<Box> unexplained() {
        return unexplained.stream()
                .filter(s -> tables.stream().noneMatch(t -> WaysOfRows.areOf(t, s)))
                .map(Spine::box)
                .toList();
    }

    private void read(List<Spine> band, Span limits) {
        List<Spine> spines = new ArrayList<>(band);
        while (!spines.isEmpty()) {
            Columns columns = ColumnFinder.find(sheet, phrases, weights, spines, limits);
            List<Side> sides = Sides.of(spines, columns);
            List<Spine> poor = new ArrayList<>();
            for (Side side : sides) if (!check.isSide(side)) poor.add(side.spine());
            if (poor.isEmpty() || SideCheck.arePlainHalves(sides)) {
                join(sides, columns, limits);
                return;
            }
            Optional<List<Side>> plain = PlainSides.of(spines, columns, phrases);
            if (plain.isPresent()) {
                join(plain.get(), columns, limits);
                return;
            }
            Optional<List<TypedLists.Found>> typed = new TypedLists(sheet, phrases, weights, all).of(spines, limits);
            if (typed.isPresent()) {
                typed.get().forEach(found -> add(found.sides(), found.columns()));
                return;
            }
            // what is no side may have stood in the way of one: the rest is tried without the worst
            Spine worst = sides.stream()
                    .filter(s -> poor.contains(s.spine()))
                    .min(Comparator.comparing((Side s) -> s.spine().headed()).thenComparingDouble(Side::quality))
                    .orElseThrow()
                    .spine();
            if (isNoChance(worst)) unexplained.add(worst);
            spines.remove(worst);
        }
    }

    /** Headed as positions, or counted on with several to one row, {@code 2, 4}: no other list is written so. */
    private static boolean isNoChance(Spine s) {
        if (s.headed()) return s.tokens().size() > 2;
        return s.tokens().size() >= PLAIN_ROWS
                && s.tokens().stream()
                        .anyMatch(
                                t -> t.text().numbers().size() > 1 && !t.text().isWay());
    }

    /** Puts neighbouring sides together where they continue each other's numbers. */
    private void join(List<Side> sides, Columns columns, Span limits) {
        int i = 0, first = tables.size();
        while (i < sides.size()) {
            List<Side> panel = new ArrayList<>(List.of(sides.get(i)));
            while (i + panel.size() < sides.size() && Neighbours.belongs(panel, sides.get(i + panel.size())))
                panel.add(sides.get(i + panel.size()));
            int end = i + panel.size();
            double left = i == 0 ? limits.left() : sides.get(i - 1).right();
            double right = end == sides.size() ? limits.right() : sides.get(end).left();
            if (panel.size() == sides.size()) add(panel, columns);
            else closer(panel, columns, new Span(left, right), tables.subList(first, tables.size()));
            i = end;
        }
    }

    /**
     * Looks once more at one of several panels side by side: by all its own rows, and not by those of the shortest.
     *
     * @param before the panels to its left
     */
    private void closer(List<Side> panel, Columns band, Span limits, List<Table> before) {
        List<Spine> spines = panel.stream().map(Side::spine).toList();
        Columns own = ColumnFinder.find(sheet, phrases, weights, spines, limits);
        List<Side> sides = Sides.of(spines, own);
        OptionalDouble edge = LoadsOfNeighbour.edge(before, sides);
        if (edge.isPresent()) {
            own = ColumnFinder.find(sheet, phrases, weights, spines, new Span(edge.getAsDouble(), limits.right()));
            sides = Sides.of(spines, own);
        }
        if (sides.stream().allMatch(check::isSide)) add(sides, own);
        else add(panel, band);
    }

    private void add(List<Side> panel, Columns columns) {
        Optional<List<Side>> across = panel.size() == 1 ? AcrossWays.of(panel.get(0), phrases) : Optional.empty();
        List<Side> shared =
                across.isPresent() ? across.get() : panel.size() == 2 ? shared(panel.get(0), panel.get(1)) : panel;
        List<Side> summed = shared.stream().map(LoadsByKind::summed).toList();
        tables.add(table(across.isPresent() ? summed : OpenHalves.leftOut(summed), columns));
    }

    private List<Side> shared(Side left, Side right) {
        Optional<List<Side>> inTurn = LoadsInTurn.shared(left, right);
        if (inTurn.isPresent()) return inTurn.get();
        List<Side> split = SharedLoads.split(left, right);
        split = LoadsByKind.parted(split.get(0), split.get(1));
        return LoadsInHalves.split(split.get(0), split.get(1), phrases).orElse(split);
    }

    /** Around the texts alone: a column may reach far into the blank beside a table, where another's header begins. */
    private double[] edges(List<Side> panel, Columns columns, double top, double bottom) {
        double left = panel.stream().mapToDouble(Side::left).min().orElse(0);
        double right = panel.stream().mapToDouble(Side::right).max().orElse(0);
        if (columns.ruled()) return new double[] {left, right};
        double first = right, last = left;
        for (Phrase p : phrases.between(top, bottom)) {
            if (p.centreY() < top || p.centreY() > bottom || p.centreX() < left || p.centreX() > right) continue;
            first = Math.min(first, p.left());
            last = Math.max(last, p.right());
        }
        return first < last
                ? new double[] {Math.max(left, first - 1), Math.min(right, last + 1)}
                : new double[] {left, right};
    }

    private Table table(List<Side> panel, Columns columns) {
        double first = panel.stream().mapToDouble(s -> s.spine().firstY()).min().orElse(0);
        double last = panel.stream().mapToDouble(s -> s.spine().lastY()).max().orElse(0);
        double pitch = panel.get(0).spine().pitch();
        double top = Math.min(columns.top(), first - 0.5 * panel.get(0).spine().size());
        double head = Math.min(top, columns.headTop()), foot = last + 0.5 * pitch;
        double[] edges = edges(panel, columns, head, foot);
        return new Table(panel, top, new Box(edges[0], head, edges[1] - edges[0], foot - head));
    }
}
