package asfound.drawing.schedule.sheet;

import asfound.drawing.schedule.device.JoinedRows;
import asfound.drawing.schedule.doubt.EntryDoubts;
import asfound.drawing.schedule.doubt.Reliability;
import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.model.Directory.Header;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.model.Stated;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Puts a directory that goes on on the next page, or beside itself, together again. */
public final class Continuations {

    private Continuations() {}

    public static List<Part> join(List<Part> read) {
        List<Part> out = new ArrayList<>();
        for (Part next : read) {
            int last = out.size() - 1;
            if (last >= 0 && continues(out.get(last).directory(), next.directory()))
                out.set(last, out.get(last).joined(joined(out.get(last).directory(), next.directory()), next));
            else out.add(next);
        }
        return out;
    }

    /** Directories of one name on pages that follow each other, which yet do not go on from each other. */
    public static List<Problem> apart(List<Directory> joined) {
        List<Problem> out = new ArrayList<>();
        for (int i = 1; i < joined.size(); i++) {
            Directory a = joined.get(i - 1), b = joined.get(i);
            boolean next = b.place().pageNumber() == lastPage(a) + 1;
            if (next && goesOnUnderAnotherName(a, b))
                out.add(new Problem(
                        b.place(),
                        "The directory '" + b.panel() + "' begins at position " + lowest(b) + ", behind the last of '"
                                + a.panel() + "' on the page before, and nothing but its name is said of it.",
                        "Look whether it is the end of '" + a.panel() + "'."));
            if (next && key(a.panel()).equals(key(b.panel())))
                out.add(new Problem(
                        b.place(),
                        "The directory '" + b.panel() + "' stands on two pages that do not continue each other.",
                        "Look which of the pages is valid, or read the positions at the page break by hand."));
        }
        return out;
    }

    private static boolean continues(Directory a, Directory b) {
        int between = lastPage(a) - b.place().pageNumber();
        if (between < -1 || !a.place().file().equals(b.place().file())) return false;
        if (a.place() instanceof Place.InRow || b.place() instanceof Place.InRow) return false;
        boolean named = b.header().designation().isStated();
        if (named && !key(a.panel()).equals(key(b.panel()))) return false;
        if (!named && (between == 0 || lowest(b) == 1)) return false;
        Set<Integer> own = positions(a);
        long again = b.circuits().stream()
                .filter(c -> !PageBreak.isRest(c))
                .filter(c -> c.positions().stream().anyMatch(own::contains))
                .count();
        return named ? again <= 1 : again == 0 && lowest(b) > 1;
    }

    /** Its positions follow those of the page before, and its header has no more than a name: perhaps a word of the sheet was taken for it. */
    private static boolean goesOnUnderAnotherName(Directory a, Directory b) {
        Header h = b.header();
        int last = positions(a).stream().mapToInt(p -> p).max().orElse(0);
        return !key(a.panel()).equals(key(b.panel()))
                && h.fedFrom().isBlank()
                && h.voltage().isBlank()
                && h.busA().isBlank()
                && h.mains().isBlank()
                && last > 0
                && (lowest(b) == last + 1 || lowest(b) == last + 2);
    }

    private static int lastPage(Directory d) {
        return d.circuits().stream()
                .mapToInt(c -> c.place().pageNumber())
                .max()
                .orElse(d.place().pageNumber());
    }

    private static int lowest(Directory d) {
        return d.circuits().stream().mapToInt(Circuit::position).min().orElse(0);
    }

    private static String key(String name) {
        return name.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "");
    }

    private static Set<Integer> positions(Directory d) {
        Set<Integer> out = new HashSet<>();
        d.circuits().forEach(c -> out.addAll(c.positions()));
        return out;
    }

    private static Directory joined(Directory a, Directory b) {
        PageBreak over = PageBreak.join(a.circuits(), b.circuits());
        List<Circuit> circuits = over.circuits();
        List<Integer> unread = new ArrayList<>(a.unread());
        b.unread().stream().filter(p -> !isCleared(b, over, p)).forEach(unread::add);
        unread.addAll(over.twice());
        List<Problem> problems = new ArrayList<>(a.problems());
        b.problems().stream().filter(p -> !isCleared(p, over)).forEach(problems::add);
        for (int p : over.twice())
            problems.add(new Problem(
                    b.place(),
                    "Position " + p + " belongs to two entries, one on each side of the page break.",
                    "Look at the drawing at this place."));
        return new Directory(
                a.panel(),
                header(a.header(), b.header()),
                circuits,
                b.totals().totalVA().isBlank() && b.totals().byPhaseVA().isEmpty() ? a.totals() : b.totals(),
                a.place(),
                Math.min(a.confidence(), b.confidence()),
                unread,
                problems);
    }

    /** It was said of a row that what it carries on stands elsewhere: that was found on the page before. */
    private static boolean isCleared(Problem problem, PageBreak over) {
        String said = problem.message();
        if (said.equals(Reliability.UNNAMED)) return true;
        return over.found().stream().anyMatch(p -> isOf(said, p))
                && (said.endsWith(": " + JoinedRows.CARRIED_ON + ".")
                        || said.endsWith(": " + EntryDoubts.OF_DEVICE_BEFORE + "."));
    }

    private static boolean isCleared(Directory read, PageBreak over, int position) {
        List<Problem> own = read.problems().stream()
                .filter(p -> isOf(p.message(), position))
                .toList();
        return !own.isEmpty() && own.stream().allMatch(p -> isCleared(p, over));
    }

    private static boolean isOf(String message, int position) {
        return message.startsWith("Position " + position + " ");
    }

    private static Header header(Header a, Header b) {
        return new Header(
                first(a.designation(), b.designation()),
                first(a.location(), b.location()),
                first(a.fedFrom(), b.fedFrom()),
                first(a.voltage(), b.voltage()),
                first(a.phases(), b.phases()),
                first(a.wires(), b.wires()),
                first(a.busA(), b.busA()),
                first(a.mainA(), b.mainA()),
                first(a.mains(), b.mains()),
                first(a.interruptingKA(), b.interruptingKA()),
                first(a.mounting(), b.mounting()));
    }

    private static <T> Stated<T> first(Stated<T> a, Stated<T> b) {
        return a.isBlank() ? b : a;
    }
}
