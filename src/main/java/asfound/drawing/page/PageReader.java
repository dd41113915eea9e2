package asfound.drawing.page;

import asfound.model.Box;
import asfound.model.Place;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Reads pages of one open document. Not for two threads at once: each worker opens the document for itself. */
public final class PageReader {

    /** A direction with fewer letters than this and no more than a tenth of the page's is not read as a sheet. */
    private static final int FEW = 60;

    private final PDDocument document;
    private final String file;
    private final Layers layers;
    private final KnownFonts fonts = new KnownFonts();
    private final int mostObjects;
    private final long mostBytes;

    /**
     * @param mostObjects the most letters, and the most ruled lines, of a page
     * @param mostBytes to which the content of a page may unpack
     */
    public PageReader(PDDocument document, String file, int mostObjects, long mostBytes) {
        this.document = document;
        layers = new Layers(document);
        this.file = file;
        this.mostObjects = mostObjects;
        this.mostBytes = mostBytes;
    }

    /**
     * Reads one page.
     *
     * @param number of the page, from 1
     * @param deadlineNanos as {@link System#nanoTime} tells it
     * @throws TooLongException where the page takes too long
     * @throws TooMuchException where it holds too much
     * @throws ExpandingException where its content unpacks to too much
     * @throws IOException where the page's content is broken
     */
    public Page read(int number, long deadlineNanos) throws IOException {
        PageScan scan = new PageScan(
                document.getPage(number - 1), fonts, new HiddenContent(layers), mostObjects, mostBytes, deadlineNanos);
        List<Glyph> seen;
        try {
            scan.scan();
            seen = scan.glyphs();
        } catch (ContentWalk.PageTimeException e) {
            throw new TooLongException(e);
        } catch (ContentWalk.PageObjectsException e) {
            throw new TooMuchException(e);
        } catch (StreamCheck.TooMuchException e) {
            throw new ExpandingException(e);
        }
        int letters = 0, unknown = 0;
        for (Glyph g : seen) {
            if (g.isSpace()) continue;
            letters++;
            if (g.text().contains(Glyph.UNKNOWN)) unknown++;
        }
        return new Page(
                number,
                scan.width(),
                scan.height(),
                sheets(number, scan, seen),
                letters,
                scan.drawn() - letters,
                scan.undrawn(),
                unknown,
                scan.imageShare(),
                scan.outlines(),
                scan.tooDeep(),
                scan.lost());
    }

    /** A page takes longer than a page may. */
    public static final class TooLongException extends IOException {
        private static final long serialVersionUID = 1L;

        TooLongException(Throwable cause) {
            super("the page takes too long", cause);
        }
    }

    /** A page holds more than a page may. */
    public static final class TooMuchException extends IOException {
        private static final long serialVersionUID = 1L;

        TooMuchException(Throwable cause) {
            super("the page holds too much", cause);
        }
    }

    /** What a page's content unpacks to is more than is let through. */
    public static final class ExpandingException extends IOException {
        private static final long serialVersionUID = 1L;

        ExpandingException(Throwable cause) {
            super("the page's content expands too far", cause);
        }
    }

    private List<Sheet> sheets(int number, PageScan scan, List<Glyph> seen) {
        List<List<Glyph>> running = byDirection(seen);
        return IntStream.range(0, 4)
                .boxed()
                .sorted(Comparator.comparingInt((Integer q) -> -running.get(q).size())
                        .thenComparing(q -> q))
                .filter(q -> isRead(running.get(q).size(), seen.size()))
                .map(q -> sheet(number, scan, running, new Turn(q, scan.width(), scan.height())))
                .toList();
    }

    private static boolean isRead(long letters, long all) {
        return letters > 0 && (letters >= FEW || letters * 10 > all);
    }

    /** The letters that run in each direction, as {@link Turn} numbers them. */
    private static List<List<Glyph>> byDirection(List<Glyph> all) {
        int[] letters = new int[4];
        for (Glyph g : all) letters[g.quarters()]++;
        List<List<Glyph>> running = new ArrayList<>(4);
        for (int n : letters) running.add(new ArrayList<>(n));
        for (Glyph g : all) running.get(g.quarters()).add(g);
        return running;
    }

    private Sheet sheet(int number, PageScan scan, List<List<Glyph>> running, Turn turn) {
        List<Rule> across = new ArrayList<>(), down = new ArrayList<>();
        for (Rule r : scan.across()) add(turn.toFrame(new Box(r.from(), r.at(), r.length(), 0)), across, down);
        for (Rule r : scan.down()) add(turn.toFrame(new Box(r.at(), r.from(), 0, r.length())), across, down);
        TypedRules typed = TypedRules.of(inFrame(running, turn));
        across.addAll(typed.across());
        down.addAll(typed.down());
        Rules downRules = Rules.joined(down);
        List<Word> words = new ArrayList<>(words(typed.letters(), true, turn, turn, downRules));
        for (int q = 0; q < 4; q++) {
            Turn own = new Turn(q, turn.width(), turn.height());
            if (q != turn.quarters()) words.addAll(words(inFrame(running, own), false, own, turn, downRules));
        }
        words.sort(PageReader::fromTopLeft);
        return new Sheet(
                turn.frameWidth(),
                turn.frameHeight(),
                words,
                scan.askew().stream()
                        .map(w -> new Word(w.text(), turn.toFrame(w.box()), w.size(), false))
                        .toList(),
                Rules.joined(across),
                downRules,
                box -> Place.page(file, number, turn.toPage(box)));
    }

    private static int fromTopLeft(Word a, Word b) {
        int line = Double.compare(a.bottom(), b.bottom());
        int place = line != 0 ? line : Double.compare(a.left(), b.left());
        return place != 0 ? place : a.text().compareTo(b.text());
    }

    private static void add(Box b, List<Rule> across, List<Rule> down) {
        if (b.w() >= b.h()) across.add(new Rule(b.centreY(), b.x(), b.right()));
        else down.add(new Rule(b.centreX(), b.y(), b.bottom()));
    }

    /** The letters that run as most of a frame's text, in the frame. */
    private static List<Glyph> inFrame(List<List<Glyph>> running, Turn own) {
        List<Glyph> letters = running.get(own.quarters());
        if (own.quarters() == 0) return letters;
        List<Glyph> turned = new ArrayList<>(letters.size());
        for (Glyph g : letters) turned.add(g.in(own));
        return turned;
    }

    /** The words of letters that run in the direction {@code own}, as they lie in the frame of {@code turn}. */
    private static List<Word> words(List<Glyph> running, boolean upright, Turn own, Turn turn, Rules down) {
        if (running.isEmpty()) return List.of();
        List<Word> words =
                SpacedType.joined(WordBuilder.build(running, upright ? down : Rules.joined(List.of()), upright));
        if (upright) return words;
        return words.stream()
                .map(w -> new Word(w.text(), turn.toFrame(own.toPage(w.box())), w.size(), false))
                .toList();
    }
}
