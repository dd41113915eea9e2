package asfound.drawing.schedule.column;

import asfound.drawing.page.Word;
import asfound.drawing.schedule.phrase.Meanings;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.phrase.Span;
import asfound.drawing.schedule.text.Role;
import asfound.model.Box;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the headings of a table without rules say of its columns, where too few entries stand in them to show blank space:
 * that a column goes on beside the last, or that two stand where one was seen.
 */
final class HeadCuts {

    private static final double SURE = 0.8;

    /** A heading, upright or turned. */
    private record Head(Box box, boolean turned, boolean load) {}

    /**
     * Where the columns under two neighbouring headings, of a load and of another or of anything, are to be parted.
     *
     * @param left the middle of the left heading
     * @param right the middle of the right one
     */
    record Between(double left, double right, double cut) {}

    private final Meanings meanings;
    private final List<Head> heads = new ArrayList<>();
    /** All that stands where headings do. */
    private final List<Box> others = new ArrayList<>();

    private final double size;

    HeadCuts(Phrases phrases, Body body) {
        meanings = phrases.meanings();
        size = body.size();
        double top = body.top(), reach = top - 4.5 * size;
        for (Phrase p : phrases.between(reach, top)) {
            if (p.centreY() >= top || p.centreY() <= reach) continue;
            others.add(p.box());
            Map<Role, Double> weights = meanings.weigh(p);
            if (isSure(weights)) heads.add(new Head(p.box(), false, isLoad(weights)));
        }
        List<Word> turned = phrases.turned().stream()
                .filter(w -> w.bottom() <= top + size && w.bottom() > reach - 2 * size)
                .sorted(Comparator.comparingDouble((Word w) -> Math.round(w.centreX() / (0.5 * w.size())))
                        .thenComparingDouble(w -> -w.bottom()))
                .toList();
        for (int i = 0; i < turned.size(); ) {
            int j = i;
            StringBuilder text = new StringBuilder();
            Box box = turned.get(i).box();
            while (j < turned.size()
                    && Math.abs(turned.get(j).centreX() - turned.get(i).centreX()) < 0.4 * size) {
                text.append(' ').append(turned.get(j).text());
                box = box.union(turned.get(j++).box());
            }
            others.add(box);
            Map<Role, Double> weights = meanings.weigh(text.toString());
            if (isSure(weights)) heads.add(new Head(box, true, isLoad(weights)));
            i = j;
        }
    }

    private static boolean isSure(Map<Role, Double> heading) {
        return heading.entrySet().stream()
                .anyMatch(e -> e.getKey() != Role.POSITION && e.getKey() != Role.PANEL && e.getValue() >= SURE);
    }

    private static boolean isLoad(Map<Role, Double> heading) {
        double described = heading.getOrDefault(Role.DESCRIPTION, 0.0);
        return heading.entrySet().stream()
                .anyMatch(e -> e.getKey().isLoad() && e.getValue() >= SURE && e.getValue() > described);
    }

    /**
     * The columns of loads are all of one width, and often nearly empty: their headings part them better than blanks, from
     * each other and from a narrow column beside them.
     */
    List<Between> betweenLoads(List<Phrase> body) {
        List<Head> own = heads.stream()
                .sorted(Comparator.comparingDouble(h -> h.box().centreX()))
                .toList();
        List<Between> out = new ArrayList<>();
        for (int i = 1; i < own.size(); i++) {
            Head a = own.get(i - 1), b = own.get(i);
            if (!a.load() && !b.load() || b.box().centreX() - a.box().centreX() > 9 * size) continue;
            boolean loads = a.load() && b.load();
            if (!loads && isBetween(a.box(), b.box())) continue;
            if (b.box().x() <= a.box().right()
                    || Math.abs(a.box().bottom() - b.box().bottom()) > size) continue;
            double half = (b.box().centreX() - a.box().centreX()) / 2,
                    middle = a.box().centreX() + half;
            double low = a.box().right(), high = b.box().x();
            for (Phrase p : body) {
                if (Math.abs(p.centreX() - middle) > 2 * half) continue;
                if (p.centreX() < middle) low = Math.max(low, p.right());
                else high = Math.min(high, p.left());
            }
            double cut = (low + high) / 2;
            if (low < high && (loads || body.stream().noneMatch(p -> p.left() < cut && p.right() > cut)))
                out.add(new Between(a.box().centreX(), b.box().centreX(), cut));
        }
        return out;
    }

    /** The heading of a further column stands between two. */
    private boolean isBetween(Box a, Box b) {
        return others.stream().anyMatch(o -> o.x() < b.x() && o.right() > a.right() && !o.equals(a) && !o.equals(b));
    }

    /** A table with the headings that follow each other on beyond its edges, up to the bars on both sides of it. */
    Span widened(Span table, Span bars) {
        double left = table.left(), right = table.right();
        boolean grown = true;
        while (grown) {
            grown = false;
            for (Head h : heads) {
                double reach = (h.turned() ? 6.5 : 5) * size;
                if (h.box().x() >= right
                        && h.box().x() - right < reach
                        && h.box().right() <= bars.right() + 1) {
                    right = h.box().right() + 0.1;
                    grown = true;
                } else if (h.box().right() <= left
                        && left - h.box().right() < reach
                        && h.box().x() >= bars.left() - 1) {
                    left = h.box().x() - 0.1;
                    grown = true;
                }
            }
        }
        return new Span(left, right);
    }

    /** Where one column is to be parted, because two headings stand over it and the entries under each keep apart. */
    Optional<Double> within(double left, double right, List<Phrase> body) {
        List<Head> own = heads.stream()
                .filter(h -> h.box().centreX() > left && h.box().centreX() < right)
                .sorted(Comparator.comparingDouble(h -> h.box().centreX()))
                .toList();
        for (int i = 1; i < own.size(); i++) {
            Box a = own.get(i - 1).box(), b = own.get(i).box();
            if (b.x() - a.right() < 0.5 * size || Math.abs(a.bottom() - b.bottom()) > size) continue;
            double middle = (a.centreX() + b.centreX()) / 2, low = left, high = right;
            int before = 0, after = 0;
            for (Phrase p : body) {
                if (p.centreX() <= left || p.centreX() >= right) continue;
                if (p.centreX() < middle) {
                    low = Math.max(low, p.right());
                    before++;
                } else {
                    high = Math.min(high, p.left());
                    after++;
                }
            }
            boolean both = before > 0 && after > 0;
            if (both && low < high) return Optional.of((low + high) / 2);
            if (before + after > 0 && !both && isUnderOne(a, b, left, right, body))
                return Optional.of((a.right() + b.x()) / 2);
        }
        return Optional.empty();
    }

    /** Nothing stands under the one heading, and under the other each entry keeps clear of it: that column is blank so far. */
    private static boolean isUnderOne(Box a, Box b, double left, double right, List<Phrase> body) {
        double cut = (a.right() + b.x()) / 2;
        for (Phrase p : body) {
            if (p.centreX() <= left || p.centreX() >= right) continue;
            Box head = p.centreX() < cut ? a : b;
            boolean below = p.right() > head.x() && p.left() < head.right();
            if (!below || p.left() < cut && p.right() > cut) return false;
        }
        return true;
    }
}
