package asfound.drawing.schedule.column;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.phrase.Span;
import asfound.drawing.schedule.spine.Spine;
import asfound.recordset.Patience;
import java.util.ArrayList;
import java.util.List;

/**
 * How far a table reaches to both sides: as far as the rules across its rows, or without rules outwards from the spines as
 * long as the rows go on.
 */
final class Reach {

    private final Sheet sheet;
    private final Phrases phrases;
    private final List<Spine> spines;
    private final Body body;
    private final HeadCuts heads;
    private final double size;
    private final boolean ruled;
    private final Span span;

    Reach(Sheet sheet, Phrases phrases, List<Spine> spines, Body body, HeadCuts heads) {
        this.sheet = sheet;
        this.phrases = phrases;
        this.spines = spines;
        this.body = body;
        this.heads = heads;
        size = body.size();
        Span own = new Span(
                spines.stream().mapToDouble(Spine::left).min().orElse(0),
                spines.stream().mapToDouble(Spine::right).max().orElse(0));
        Span rules = rules(own);
        ruled = rules.width() > Math.max(14 * size, own.width() + 0.5 * size);
        span = ruled ? shown(rules.wider(1), own) : open(own);
    }

    /** From the left edge of the table to its right edge. */
    Span span() {
        return span;
    }

    /** Rules across the rows show it. */
    boolean isRuled() {
        return ruled;
    }

    private Span rules(Span own) {
        double left = own.left(), right = own.right();
        for (Rule r : sheet.across().between(body.top() - size, body.bottom() + size))
            if ((r.from() < left || r.to() > right)
                    && spines.stream().anyMatch(s -> r.passes(s.centreX()))
                    && holdsEntries(r)) {
                left = Math.min(left, r.from());
                right = Math.max(right, r.to());
            }
        return new Span(left, right);
    }

    /** On a side whose outermost positions have no such rule the rules of a neighbour show nothing. */
    private Span shown(Span rules, Span own) {
        boolean left = isRuled(spines.get(0)), right = isRuled(spines.get(spines.size() - 1));
        if (left && right) return rules;
        Span open = open(own);
        return new Span(left ? rules.left() : open.left(), right ? rules.right() : open.right());
    }

    private boolean isRuled(Spine spine) {
        return sheet.across().between(body.top() - size, body.bottom() + size).stream()
                .anyMatch(r -> r.passes(spine.centreX()) && holdsEntries(r));
    }

    /** It passes under more than the positions: a shade behind these alone does not show how far the rows reach. */
    private boolean holdsEntries(Rule r) {
        return phrases.between(body.top(), body.bottom()).stream()
                .anyMatch(p -> body.holds(p)
                        && r.passes(p.centreX())
                        && spines.stream().noneMatch(s -> p.centreX() > s.left() - 1 && p.centreX() < s.right() + 1));
    }

    /** Outwards from the spines, up to a long upright rule of the sheet. */
    private Span open(Span own) {
        Span bars = bars(own);
        List<Phrase> near = near(bars);
        Span rows = rows(own, near);
        Span headed = heads.widened(rows, bars);
        return (headed.equals(rows) ? rows : under(headed, near)).wider(0.5 * size);
    }

    private Span bars(Span own) {
        double left = 0, right = sheet.width();
        for (Rule r : sheet.down().all()) {
            if (r.length() < 1.3 * body.height() + 4 * size
                    || r.covers(body.top(), body.bottom()) < 0.9 * body.height()) continue;
            if (r.at() < own.left()) left = Math.max(left, r.at());
            if (r.at() > own.right()) right = Math.min(right, r.at());
        }
        return new Span(left, right);
    }

    /** What stands in the rows or their headings, between the bars. */
    private List<Phrase> near(Span bars) {
        List<Phrase> near = new ArrayList<>();
        double head = body.top() - 4.5 * size;
        for (Phrase p : phrases.between(head, body.bottom()))
            if (p.centreY() > head
                    && p.centreY() < body.bottom()
                    && p.left() >= bars.left() - 1
                    && p.right() <= bars.right() + 1) near.add(p);
        return near;
    }

    private Span rows(Span own, List<Phrase> near) {
        double left = own.left(), right = own.right();
        boolean grown = true;
        while (grown) {
            Patience.check();
            grown = false;
            for (Phrase p : near) {
                if (p.right() < left && goesOn(near, p, left - p.right())) {
                    left = p.left();
                    grown = true;
                } else if (p.left() > right && goesOn(near, p, p.left() - right)) {
                    right = p.right();
                    grown = true;
                } else if (p.left() < left && p.right() >= left) {
                    left = p.left();
                    grown = true;
                } else if (p.right() > right && p.left() <= right) {
                    right = p.right();
                    grown = true;
                }
            }
        }
        return new Span(left, right);
    }

    /** It is part of a column that belongs to the rows, not a remark beside the table: the more rows, the further away. */
    private boolean goesOn(List<Phrase> near, Phrase p, double gap) {
        if (gap > 34 * size) return false;
        Patience.check();
        List<Phrase> column = new ArrayList<>();
        for (Phrase o : near) if (o.right() > p.left() && o.left() < p.right()) column.add(o);
        double share = 0;
        for (Spine s : spines)
            share = Math.max(share, beside(s, column) / (double) s.tokens().size());
        return gap < 4 * size ? share > 0.1 : share > (gap < 16 * size ? 0.16 : 0.35);
    }

    /** How many of its positions have something of a column in their row. */
    private int beside(Spine spine, List<Phrase> column) {
        int rows = 0;
        for (Spine.Token t : spine.tokens())
            for (Phrase o : column)
                if (Math.abs(t.y() - o.centreY()) < 0.3 * size) {
                    rows++;
                    break;
                }
        return rows;
    }

    /** The entries under a heading at the edge reach further out than the heading does. */
    private Span under(Span headed, List<Phrase> near) {
        double left = headed.left(), right = headed.right();
        boolean grown = true;
        while (grown) {
            grown = false;
            for (Phrase p : near) {
                if (p.centreY() < body.top()) continue;
                if (p.right() > right && p.left() < right + 1.5 * size) {
                    right = p.right();
                    grown = true;
                } else if (p.left() < left && p.right() > left - 1.5 * size) {
                    left = p.left();
                    grown = true;
                }
            }
        }
        return new Span(left, right);
    }
}
