package asfound.drawing.schedule.phrase;

import asfound.drawing.page.Word;
import asfound.drawing.schedule.text.Texts;
import asfound.model.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lists as they are written down by hand or typed without a table: {@code 1 - Kitchen}, {@code 2. Furnace}. Under a panel's name
 * the number is parted from what it feeds; anywhere else such lines are notes, and stay as they are.
 */
final class WrittenNumbers {

    private static final int ROWS = 4;
    /** From line to line, in sizes of type. */
    private static final double STEP = 4;

    private static final Pattern LEAD =
            Pattern.compile("(?:ckt|circuit|cct|way|no|bkr|breaker|#)\\.?", Pattern.CASE_INSENSITIVE);
    private static final Pattern NUMBER = Pattern.compile("#?(\\d{1,2})[-–—.):=]*");
    private static final Pattern RUN_INTO = Pattern.compile("#?(\\d{1,2})([-–—.):=]+)(\\p{L}.*)");
    private static final Pattern MARK = Pattern.compile("[-–—.):=]+");

    private final List<Phrase> phrases;
    private final Meanings meanings;

    private WrittenNumbers(List<Phrase> phrases, Meanings meanings) {
        this.phrases = phrases;
        this.meanings = meanings;
    }

    /** A line with the number parted from the rest. */
    private record Line(int at, int number, Phrase first, Phrase rest) {}

    /** The phrases, with the numbers of such lists parted from their texts; in any order. */
    static List<Phrase> parted(List<Phrase> phrases, Meanings meanings) {
        List<Phrase> sorted = new ArrayList<>(phrases);
        sorted.sort(Phrase.ORDER);
        return new WrittenNumbers(sorted, meanings).parted();
    }

    private List<Phrase> parted() {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < phrases.size(); i++) line(i).ifPresent(lines::add);
        List<Phrase> out = new ArrayList<>(phrases);
        for (List<Line> list : lists(lines)) {
            if (!isOfPanel(list)) continue;
            double edge = list.stream().mapToDouble(l -> l.rest().left()).min().orElse(0);
            for (Line l : list) {
                out.set(l.at(), before(l.first(), edge));
                out.add(l.rest());
            }
        }
        return out;
    }

    /** No wider than up to where the first of the texts begins: {@code 10} is wider than {@code 1}. */
    private static Phrase before(Phrase number, double edge) {
        Word w = number.words().get(0);
        Box b = w.box();
        double width = Math.max(1, Math.min(b.w(), edge - 0.3 * w.size() - b.x()));
        return Phrase.of(List.of(new Word(w.text(), new Box(b.x(), b.y(), width, b.h()), w.size(), w.upright())));
    }

    private Optional<Line> line(int at) {
        Phrase p = phrases.get(at);
        if (!Texts.hasFigure(p.text())) return Optional.empty();
        if (p.words().size() > 1 && LEAD.matcher(p.words().get(0).text()).matches())
            p = Phrase.of(p.words().subList(1, p.words().size()));
        Word first = p.words().get(0);
        if (!mayBegin(first.text()) || p.words().size() == 1 && Texts.isFigures(first.text())) return Optional.empty();
        Matcher whole = NUMBER.matcher(first.text()), run = RUN_INTO.matcher(first.text());
        List<Word> rest = new ArrayList<>(p.words().subList(1, p.words().size()));
        String number;
        Word head = first;
        if (whole.matches()) {
            number = whole.group(1);
            if (!rest.isEmpty() && MARK.matcher(rest.get(0).text()).matches()) rest.remove(0);
        } else if (run.matches()) {
            number = run.group(1);
            Box b = first.box();
            double cut = b.w() * run.start(3) / first.text().length();
            head = new Word(first.text(), new Box(b.x(), b.y(), cut, b.h()), first.size(), first.upright());
            rest.add(
                    0,
                    new Word(
                            run.group(3),
                            new Box(b.x() + cut, b.y(), b.w() - cut, b.h()),
                            first.size(),
                            first.upright()));
        } else return Optional.empty();
        if (rest.isEmpty() || !Character.isLetter(rest.get(0).text().charAt(0))) return Optional.empty();
        Word plain = new Word(number, head.box(), head.size(), head.upright());
        return Optional.of(new Line(at, Integer.parseInt(number), Phrase.of(List.of(plain)), Phrase.of(rest)));
    }

    private static boolean mayBegin(String text) {
        return text.charAt(0) >= '0' && text.charAt(0) <= '9' || text.charAt(0) == '#';
    }

    /** Lines below each other whose numbers go up by one from 1. */
    private static List<List<Line>> lists(List<Line> lines) {
        List<List<Line>> out = new ArrayList<>();
        for (Line first : lines) {
            if (first.number() != 1) continue;
            List<Line> list = new ArrayList<>(List.of(first));
            for (Line l : lines) {
                Line last = list.get(list.size() - 1);
                double down = l.first().centreY() - last.first().centreY(),
                        size = last.first().size();
                boolean under = Math.abs(l.first().left() - last.first().left()) < size
                        && down > 0.8 * size
                        && down < STEP * size;
                if (under && l.number() == last.number() + 1) list.add(l);
            }
            if (list.size() >= ROWS) out.add(list);
        }
        return out;
    }

    private boolean isOfPanel(List<Line> list) {
        Phrase first = list.get(0).first(), last = list.get(list.size() - 1).first();
        double right = list.stream().mapToDouble(l -> l.rest().right()).max().orElse(first.right());
        Box box = new Box(
                first.left(),
                first.box().y(),
                right - first.left(),
                last.box().bottom() - first.box().y());
        return PanelAbove.of(Phrases.of(phrases, meanings), box, first.size()).isPresent();
    }
}
