package asfound.drawing.schedule.column;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.phrase.SectionRows;
import asfound.drawing.schedule.phrase.Span;
import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.text.FrameAndTrip;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds the columns of the rows that hang on neighbouring spines: where the rows lie, how far they reach to both sides,
 * where they are cut, and what heads each piece.
 */
public final class ColumnFinder {

    /** So many type sizes beyond the outermost entries a heading of theirs may stand. */
    private static final double OUTER = 6;

    private final Sheet sheet;
    private final Phrases phrases;
    private final ColumnWeights weights;
    private final List<Spine> spines;
    private final Span limits;
    private final Body body;
    private double headTop;

    private ColumnFinder(Sheet sheet, Phrases phrases, ColumnWeights weights, List<Spine> spines, Span limits) {
        this.sheet = sheet;
        this.phrases = phrases;
        this.weights = weights;
        this.spines = spines;
        this.limits = limits;
        body = Body.of(sheet, phrases, spines);
        headTop = body.top();
    }

    /** @param limits where the neighbouring tables begin */
    public static Columns find(Sheet sheet, Phrases phrases, ColumnWeights weights, List<Spine> spines, Span limits) {
        return new ColumnFinder(sheet, phrases, weights, spines, limits).find();
    }

    private Columns find() {
        HeadCuts heads = new HeadCuts(phrases, body);
        Reach reach = new Reach(sheet, phrases, spines, body, heads);
        Span span = reach.span().within(limits);
        List<Phrase> entries = phrases.between(body.top(), body.bottom()).stream()
                .filter(p -> body.holds(p) && !SectionRows.isOne(p, phrases))
                .filter(span::meets)
                .toList();
        ColumnHeadings headings = new ColumnHeadings(phrases, body, span);
        List<Double> cuts = new ColumnCuts(sheet, spines, body, entries, heads, headings, span).all();
        List<Column> columns = columns(cuts, entries, headings);
        List<Phrase> all = phrases.between(headTop - 0.1, body.bottom()).stream()
                .filter(p -> p.centreY() >= headTop - 0.1 && p.centreY() <= body.bottom())
                .toList();
        return new Columns(columns, ColumnBlanks.before(columns, all), headTop, body.top(), reach.isRuled());
    }

    private List<Column> columns(List<Double> cuts, List<Phrase> entries, ColumnHeadings headings) {
        Margin margin = new Margin(sheet, phrases, spines, entries);
        List<List<String>> pieces = Phrase.pieces(entries, cuts);
        List<Column> columns = new ArrayList<>();
        for (int i = 1; i < cuts.size(); i++) {
            double left = cuts.get(i - 1), right = cuts.get(i);
            boolean first = i == 1, last = i == cuts.size() - 1;
            List<String> texts = pieces.get(i - 1);
            ColumnHeadings.Heading heading = headings.of(left, right);
            // what stands further out may as well be a header beside the table: only where nothing heads the column
            // itself
            if ((first || last)
                    && !texts.isEmpty()
                    && phrases.meanings().weigh(heading.text()).isEmpty())
                heading = headings.of(first ? outer(left, -1) : left, last ? outer(right, 1) : right);
            // over a blank column anything may stand: a label of the header beside the headings
            if (!texts.isEmpty()) headTop = Math.min(headTop, heading.top());
            Column column = column(left, right, heading.text(), texts);
            boolean belongs = texts.isEmpty() ? !heading.text().isEmpty() : !margin.holds(column);
            if (belongs) columns.add(column);
        }
        return columns;
    }

    /** Under a heading that names frame and trip its entries are as good as the trips alone. */
    private Column column(double left, double right, String heading, List<String> texts) {
        List<String> said = phrases.meanings().isFrameAndTrip(heading)
                ? texts.stream().map(t -> FrameAndTrip.trip(heading, t)).toList()
                : texts;
        return new Column(left, right, heading, said, weights.of(heading, said));
    }

    /** Without a rule at the table's edge a heading may stand further out than the entries of the outermost column. */
    private double outer(double edge, int side) {
        boolean ruled =
                sheet.down().between(edge - 2, edge + 2).stream().anyMatch(r -> r.passes(body.top() + body.size()));
        double open = edge + side * OUTER * body.size();
        return ruled ? edge : Math.max(limits.left(), Math.min(limits.right(), open));
    }
}
