package asfound.network;

import asfound.drawing.Drawings;
import asfound.model.CircuitRef;
import asfound.model.Directory;
import asfound.model.Natural;
import asfound.model.Observation;
import asfound.model.OneLine;
import asfound.model.Stated;
import asfound.names.SupplyText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which device a reference means. A device of several poles goes by its lowest position as drawn; whoever writes any of
 * its positions, or the position's printed label, means it.
 */
final class DeviceKeys {

    private static final class Board {
        final Set<Integer> lowest = new HashSet<>();
        final Map<Integer, Integer> lowestOf = new HashMap<>();
        final Map<String, Integer> byLabel = new HashMap<>();
        boolean hasWays;
        /** The highest position drawn. */
        int last;
        /** A named device by its key: as the drawings write it, or as the survey does where they do not. */
        final Map<String, String> written = new HashMap<>();
        /** Keys of the named devices that a drawing shows. */
        final Set<String> drawnNames = new HashSet<>();
    }

    private static final Pattern BREAKER = Pattern.compile("(?i)C/?B[\\s.:#-]*(\\d{1,3})");

    private record Named(String panel, CircuitRef ref) {}

    private final Map<String, Board> boards = new HashMap<>();
    private final Names names;

    DeviceKeys(Names names, Drawings drawings, List<Observation> survey) {
        this.names = names;
        for (Directory d : drawings.directories())
            for (Directory.Circuit c : d.circuits())
                board(names.orItself(d.panel())).lowest.add(c.position());
        for (Directory d : drawings.directories())
            for (Directory.Circuit c : d.circuits()) {
                Board board = board(names.orItself(d.panel()));
                c.positions().forEach(p -> {
                    board.lowestOf.putIfAbsent(p, c.position());
                    board.last = Math.max(board.last, p);
                });
                board.hasWays |= isWay(c.label());
                if (!c.label().isEmpty())
                    board.byLabel.putIfAbsent(CircuitRef.named(c.label()).key(), c.position());
            }
        List<Named> drawn = onOneLines(drawings), seen = inSurvey(survey);
        for (Named n : drawn)
            if (!n.ref().isNumbered()) board(n.panel()).drawnNames.add(n.ref().key());
        nameAll(drawn);
        nameAll(seen);
        registerAll(drawn);
        registerAll(seen);
    }

    /** A way with its phase begins with its number or a phase; the name of a device is neither. */
    private static boolean isWay(String label) {
        return !label.isEmpty()
                && (Character.isDigit(label.charAt(0))
                        || !WayNames.positions(label).isEmpty());
    }

    /** One name for each device, whatever the order of rows; a name that an earlier list gave stays. */
    private void nameAll(List<Named> all) {
        all.stream()
                .filter(n -> !n.ref().isNumbered())
                .sorted(Comparator.comparing((Named n) -> n.ref().name(), Natural.ORDER))
                .forEach(n -> board(n.panel())
                        .written
                        .putIfAbsent(n.ref().key(), n.ref().name()));
    }

    private Board board(String panel) {
        return boards.computeIfAbsent(panel, p -> new Board());
    }

    private List<Named> onOneLines(Drawings drawings) {
        List<Named> all = new ArrayList<>();
        for (OneLine.Feeder f : drawings.oneLine().feeders())
            if (f.from().isStated() && f.device().isStated())
                all.add(new Named(
                        names.orItself(f.from().value().get()),
                        f.device().value().get()));
        drawings.directories().forEach(d -> names.supply(d.header().fedFrom()).forEach(s -> add(s, all)));
        drawings.oneLine().equipment().forEach(e -> names.supply(e.fedFrom()).forEach(s -> add(s, all)));
        return all;
    }

    private void add(SupplyText.Step step, List<Named> all) {
        step.device().ifPresent(d -> all.add(new Named(names.orItself(step.text()), d)));
    }

    private List<Named> inSurvey(List<Observation> survey) {
        List<Named> all = new ArrayList<>();
        for (Observation o : survey)
            if (o.panel().isStated()
                    && o.circuit()
                            .value()
                            .filter(c -> c.positions().size() != 1)
                            .isPresent())
                all.add(new Named(
                        names.orItself(o.panel().value().get()),
                        o.circuit().value().get()));
        return all;
    }

    /** Devices of more poles first, so that the order of rows makes no difference. */
    private void registerAll(List<Named> all) {
        all.sort(Comparator.comparingInt((Named n) -> -n.ref().positions().size())
                .thenComparingInt(
                        n -> n.ref().isNumbered() ? n.ref().positions().get(0) : 0));
        for (Named n : all) {
            if (!n.ref().isNumbered()) continue;
            Board board = board(n.panel());
            int low = n.ref().positions().get(0);
            int key = board.lowest.contains(low) ? low : board.lowestOf.getOrDefault(low, low);
            board.lowest.add(key);
            n.ref().positions().forEach(p -> board.lowestOf.putIfAbsent(p, key));
        }
    }

    /**
     * What a plain number with three poles means: on a board with ways and phases such a device lies on the phases of one way,
     * and no position but a way's first can be its lowest. {@code 8} with three poles is way 8.
     *
     * @param poles that were seen or drawn; blank where none were
     */
    CircuitRef meant(String panel, CircuitRef ref, Stated<Integer> poles) {
        Board board = boards.get(panel);
        boolean plain = board != null && board.hasWays && ref.positions().size() == 1;
        if (!plain || poles.or(0) != 3) return ref;
        int number = ref.positions().get(0);
        return number % 3 != 1 && 3 * number <= board.last ? CircuitRef.named(number + "TP") : ref;
    }

    /** A plain number that could as well be that of a way, whose device is another: it is taken for a position. */
    boolean mayBeWay(String panel, CircuitRef ref) {
        Board board = boards.get(panel);
        if (board == null || !board.hasWays || ref.positions().size() != 1) return false;
        int number = ref.positions().get(0);
        if (3 * number > board.last) return false;
        Integer own = board.lowestOf.get(number);
        return WayNames.positions(number).stream().anyMatch(p -> !Objects.equals(own, board.lowestOf.get(p)));
    }

    /** A number higher than that of the last way is one of positions, and so are the others of whoever wrote it. */
    boolean isPosition(String panel, CircuitRef ref) {
        Board board = boards.get(panel);
        return board != null
                && board.hasWays
                && ref.positions().size() == 1
                && 3 * ref.positions().get(0) > board.last;
    }

    /** The device that a reference in a panel, given by its one name, means. */
    Device device(String panel, CircuitRef ref) {
        Board board = boards.get(panel);
        if (board == null) return new Device(panel, ref.isNumbered() ? ref.key() : ref.name());
        if (!ref.isNumbered()) {
            Integer labelled = board.byLabel.get(ref.key());
            if (labelled == null) labelled = positionOf(board, ref);
            if (labelled != null) return new Device(panel, Integer.toString(labelled));
            return new Device(panel, board.written.getOrDefault(ref.key(), ref.name()));
        }
        int low = ref.positions().get(0);
        int key = board.lowest.contains(low) ? low : board.lowestOf.getOrDefault(low, low);
        return new Device(panel, Integer.toString(key));
    }

    /**
     * The device at the positions that a name stands for: the ways and phases of a board that is drawn with them, or the
     * number of a breaker ({@code CB 7}) that no drawing shows as a name of its own. Null where it stands for none.
     */
    private static Integer positionOf(Board board, CircuitRef ref) {
        List<Integer> positions = board.hasWays ? WayNames.positions(ref.name()) : List.of();
        OptionalInt way = WayNames.way(ref.name());
        if (way.isPresent() && way.getAsInt() > 0)
            positions = board.hasWays ? WayNames.positions(way.getAsInt()) : List.of(way.getAsInt());
        Matcher breaker = BREAKER.matcher(ref.name());
        boolean isNumber = breaker.matches() && !board.drawnNames.contains(ref.key());
        if (positions.isEmpty() && isNumber) positions = List.of(Integer.valueOf(breaker.group(1)));
        if (positions.isEmpty()) return null;
        Set<Integer> devices = new HashSet<>();
        for (int p : positions) devices.add(board.lowestOf.get(p));
        return devices.size() == 1 ? devices.iterator().next() : null;
    }
}
