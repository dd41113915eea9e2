package asfound.sample;

import static asfound.sample.Planted.expect;

import asfound.model.Directory.Use;
import asfound.model.EquipmentKind;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Plants one event of a given kind in a random building; no two events touch one device. */
final class Plants {

    final Campus campus;
    final Random random;

    Plants(Campus campus) {
        this.campus = campus;
        this.random = campus.random;
    }

    /** How each kind of finding is planted. Empty where the building has no room for it. */
    Map<String, Supplier<Optional<Planted>>> byKind() {
        Map<String, Supplier<Optional<Planted>>> ways = new LinkedHashMap<>();
        ways.put("feeds-other", this::feedsOther);
        ways.put("crossed-feeds", () -> random.nextBoolean() ? crossedBranches() : crossedFeeders());
        ways.put("shifted-directory", () -> new Shifts(this).plant());
        ways.put("duplicate-feed", this::duplicateFeed);
        ways.put("undocumented-source", this::undocumentedSource);
        ways.put("undocumented-feed", this::undocumentedFeed);
        ways.put("nothing-connected", this::nothingConnected);
        ways.put("equipment-not-drawn", this::equipmentNotDrawn);
        ways.put("equipment-not-found", this::equipmentNotFound);
        ways.put("feed-loop", this::feedLoop);
        ways.put("drawings-disagree", this::drawingsDisagree);
        ways.put("device-differs", this::deviceDiffers);
        ways.put("position-clash", this::positionClash);
        ways.put("vague-entry", this::vagueEntry);
        ways.put("totals-differ", this::totalsDiffer);
        ways.put("survey-conflict", this::surveyConflict);
        ways.put("stale-observation", this::staleObservation);
        ways.put("entry-blank", this::entryBlank);
        return ways;
    }

    Optional<Slot> slot(Predicate<Slot> fits) {
        List<Slot> all = campus.scheduled().stream()
                .filter(b -> !b.taken)
                .flatMap(b -> b.slots.stream())
                .filter(fits)
                .toList();
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(random.nextInt(all.size())));
    }

    Optional<Board> board(Predicate<Board> fits) {
        List<Board> all = campus.scheduled().stream()
                .filter(b -> !b.taken && fits.test(b))
                .toList();
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(random.nextInt(all.size())));
    }

    static String label(Slot s) {
        return s.device().label();
    }

    /** One finding at one device, once that device is traced. */
    private static Planted whenTraced(String kind, Slot s, String... further) {
        List<String> parts = new ArrayList<>(List.of(further));
        parts.add(label(s));
        return new Planted(
                kind,
                traced ->
                        traced.contains(s.device()) ? List.of(expect(kind, parts.toArray(String[]::new))) : List.of());
    }

    private static Planted always(String kind, String... parts) {
        return new Planted(kind, traced -> List.of(expect(kind, parts)));
    }

    private Optional<Planted> feedsOther() {
        return slot(Slot::isBranch).map(s -> {
            s.take().load = campus.newLoad();
            return whenTraced("feeds-other", s);
        });
    }

    private Optional<Planted> undocumentedFeed() {
        return slot(Slot::isFreeSpare).map(s -> {
            s.take().load = campus.newLoad();
            return whenTraced("undocumented-feed", s);
        });
    }

    private Optional<Planted> nothingConnected() {
        return slot(Slot::isBranch).map(s -> {
            s.take().load = null;
            s.nothing = random.nextBoolean();
            s.noDevice = !s.nothing;
            return whenTraced("nothing-connected", s);
        });
    }

    private Optional<Planted> crossedBranches() {
        int n = 2 + random.nextInt(2);
        return board(b ->
                        !b.rearranged && b.slots.stream().filter(Slot::isBranch).count() >= n)
                .map(b -> {
                    b.rearranged = true;
                    List<Slot> all = new ArrayList<>(
                            b.slots.stream().filter(Slot::isBranch).toList());
                    Collections.shuffle(all, random);
                    List<Slot> ring = all.subList(0, n);
                    List<Load> loads = ring.stream().map(s -> s.load).toList();
                    for (int i = 0; i < n; i++) ring.get(i).take().load = loads.get((i + 1) % n);
                    return ring(ring);
                });
    }

    private Optional<Planted> crossedFeeders() {
        int n = 2 + random.nextInt(3);
        Predicate<Slot> feeder = s -> s.isOrdinary() && s.drawnTo != null && !s.drawnTo.taken;
        return board(b -> !b.rearranged && b.slots.stream().filter(feeder).count() >= n)
                .map(b -> {
                    b.rearranged = true;
                    List<Slot> all =
                            new ArrayList<>(b.slots.stream().filter(feeder).toList());
                    do Collections.shuffle(all, random);
                    while (isAlsoARun(b, all.subList(0, n)));
                    List<Slot> ring = all.subList(0, n);
                    for (int i = 0; i < n; i++) ring.get(i).take().to = ring.get((i + 1) % n).drawnTo;
                    return ring(ring);
                });
    }

    /** Three of the ring stand equally far from what they are drawn with: half traced it may be a shifted card as well. */
    private static boolean isAlsoARun(Board b, List<Slot> ring) {
        if (ring.size() < 4) return false;
        List<ToIntFunction<Slot>> places =
                List.of(s -> s.positions.get(0), s -> b.slots.indexOf(s), s -> (int) b.slots.stream()
                        .filter(o -> (o.positions.get(0) - s.positions.get(0)) % 2 == 0)
                        .filter(o -> o.positions.get(0) < s.positions.get(0))
                        .count());
        return places.stream()
                .anyMatch(place -> IntStream.range(0, ring.size())
                        .map(i -> place.applyAsInt(ring.get((i + 1) % ring.size())) - place.applyAsInt(ring.get(i)))
                        .boxed()
                        .collect(Collectors.groupingBy(step -> step, Collectors.counting()))
                        .values()
                        .stream()
                        .anyMatch(times -> times >= 3));
    }

    private static Planted ring(List<Slot> ring) {
        String[] labels = ring.stream().map(Plants::label).toArray(String[]::new);
        return new Planted("crossed-feeds", traced -> {
            List<Slot> seen =
                    ring.stream().filter(s -> traced.contains(s.device())).toList();
            if (seen.size() == ring.size()) return List.of(expect("crossed-feeds", labels));
            return seen.stream().map(s -> expect("feeds-other", label(s))).toList();
        });
    }

    /** A panel fed straight from a device, with nothing planted on the way to it. */
    private static boolean isFedPlainly(Board b) {
        return b.kind == EquipmentKind.PANEL && b.parent != null && b.parent.isOrdinary();
    }

    private Optional<Planted> duplicateFeed() {
        return board(Plants::isFedPlainly)
                .flatMap(x -> notBelow(x).map(s -> {
                    Slot first = x.parent.take();
                    s.take().to = x;
                    return new Planted("duplicate-feed", traced -> {
                        if (!traced.contains(s.device())) return List.of();
                        return traced.contains(first.device())
                                ? List.of(expect("duplicate-feed", label(s), label(first)))
                                : List.of(expect("undocumented-feed", label(s)));
                    });
                }));
    }

    private Optional<Slot> notBelow(Board top) {
        Set<Board> below = below(top);
        return slot(s -> s.isFreeSpare() && !below.contains(s.in));
    }

    /** The board itself and all that is fed from it by whatever way, drawn or planted. */
    private Set<Board> below(Board top) {
        Map<Board, List<Board>> feeds = new IdentityHashMap<>();
        for (Board b : campus.boards) {
            if (b.parent != null) feed(feeds, b.parent.in, b);
            if (b.behind != null) feed(feeds, b.behind, b);
            for (Slot s : b.slots) if (s.to != null) feed(feeds, b, s.to);
        }
        Deque<Board> left = new ArrayDeque<>(List.of(top));
        Set<Board> met = new HashSet<>(left);
        while (!left.isEmpty())
            feeds.getOrDefault(left.poll(), List.of()).stream().filter(met::add).forEach(left::add);
        return met;
    }

    private static void feed(Map<Board, List<Board>> feeds, Board from, Board to) {
        feeds.computeIfAbsent(from, k -> new ArrayList<>()).add(to);
    }

    private Optional<Planted> undocumentedSource() {
        return slot(Slot::isFreeSpare).map(s -> {
            boolean solar = random.nextBoolean();
            Board source = new Board(
                    campus.newName(solar ? "INV" : "GEN"),
                    solar ? EquipmentKind.INVERTER : EquipmentKind.GENERATOR,
                    s.in.voltage);
            source.drawn = false;
            campus.add(source);
            s.take().backfedBy = source;
            return whenTraced("undocumented-source", s, source.name);
        });
    }

    private Optional<Planted> equipmentNotDrawn() {
        return slot(Slot::isFreeSpare).map(s -> {
            Board added = new Board(campus.newName("LP"), EquipmentKind.PANEL, s.in.voltage);
            added.drawn = false;
            campus.add(added);
            s.take().to = added;
            for (int p = 1; p <= 5; p++) {
                Slot own = new Slot(added, List.of(p), 20).take();
                own.load = campus.newLoad();
                added.slots.add(own);
            }
            return new Planted("equipment-not-drawn", traced -> {
                List<String> parts = new ArrayList<>(List.of(added.name));
                if (traced.contains(s.device())) parts.add(label(s));
                for (Slot own : added.slots) if (traced.contains(own.device())) parts.add(label(own));
                return parts.size() == 1
                        ? List.of()
                        : List.of(expect("equipment-not-drawn", parts.toArray(String[]::new)));
            });
        });
    }

    private Optional<Planted> equipmentNotFound() {
        Predicate<Board> leaf = b -> isFedPlainly(b) && b.slots.stream().noneMatch(s -> s.drawnTo != null || s.taken);
        return board(leaf).map(b -> {
            b.there = false;
            b.taken = true;
            Slot feeding = b.parent.take();
            feeding.to = null;
            feeding.nothing = true;
            return whenTraced("equipment-not-found", feeding, b.name);
        });
    }

    private Optional<Planted> feedLoop() {
        Predicate<Board> below = b -> isFedPlainly(b)
                && b.slots.stream().anyMatch(Slot::isFreeSpare)
                && !b.parent.in.looped
                && (b.parent.in.parent == null || b.parent.in.parent.isOrdinary());
        return board(below).map(b -> {
            Slot down = b.parent.take();
            Board above = down.in;
            above.looped = true;
            if (above.parent != null) above.parent.take();
            Slot up = b.slots.stream()
                    .filter(Slot::isFreeSpare)
                    .findFirst()
                    .orElseThrow()
                    .take();
            up.to = above;
            return new Planted("feed-loop", traced -> {
                if (!traced.contains(up.device())) return List.of();
                if (traced.contains(down.device())) return List.of(expect("feed-loop", label(up), label(down)));
                boolean twice = above.parent != null && traced.contains(above.parent.device());
                return List.of(
                        twice
                                ? expect("duplicate-feed", label(up), label(above.parent))
                                : expect("undocumented-feed", label(up)));
            });
        });
    }

    private Optional<Planted> drawingsDisagree() {
        return switch (random.nextInt(3)) {
            case 0 ->
                board(b -> isFedPlainly(b) && b.headerSays == null)
                        .flatMap(b -> b.parent.in.slots.stream()
                                .filter(Slot::isFreeSpare)
                                .findFirst()
                                .map(other -> {
                                    b.parent.take();
                                    b.headerSays = b.parent.in.name + " CKT "
                                            + other.take().key();
                                    return always("drawings-disagree", b.name);
                                }));
            case 1 ->
                slot(s -> s.isOrdinary() && s.drawnTo != null).map(s -> {
                    s.take().oneLineRating = s.rating + 25;
                    return always("drawings-disagree", label(s));
                });
            default ->
                board(b -> b.listedBus == null).map(b -> {
                    b.listedBus = b.bus + 200;
                    return always("drawings-disagree", b.name);
                });
        };
    }

    private Optional<Planted> deviceDiffers() {
        return slot(Slot::isBranch).map(s -> {
            s.take();
            switch (random.nextInt(3)) {
                case 0 -> s.trueRating = s.rating + 10;
                case 1 -> s.trueVoltage = s.in.voltage.equals(Campus.HIGH) ? "120" : "277";
                default -> s.truePhase = String.valueOf((char) ('A' + (SurveyWriter.phaseIndex(s) + 1) % 3));
            }
            return whenTraced("device-differs", s);
        });
    }

    private Optional<Planted> positionClash() {
        return slot(Slot::isBranch).map(s -> {
            Slot second = new Slot(s.in, s.take().positions, 20);
            second.use = Use.LOAD;
            second.drawnLoad = campus.newLoad();
            s.in.clashing.add(second);
            return always("position-clash", label(s));
        });
    }

    private Optional<Planted> vagueEntry() {
        List<String> words = List.of("MISC", "EQUIPMENT", "GENERAL LOADS", "EXISTING LOAD", "POWER");
        return slot(Slot::isBranch).map(s -> {
            s.take().drawnText = words.get(random.nextInt(words.size()));
            return always("vague-entry", label(s));
        });
    }

    private Optional<Planted> entryBlank() {
        return slot(Slot::isBranch).map(s -> {
            s.take().drawnText = "";
            return always("entry-blank", label(s));
        });
    }

    private Optional<Planted> totalsDiffer() {
        return board(b -> !b.totalsWrong).map(b -> {
            b.totalsWrong = true;
            return always("totals-differ", b.name);
        });
    }

    private Optional<Planted> surveyConflict() {
        return slot(Slot::isBranch).map(s -> {
            s.take().extraRows.add("nothing");
            return whenTraced("survey-conflict", s);
        });
    }

    private Optional<Planted> staleObservation() {
        return board(b -> isFedPlainly(b) && b.slots.stream().noneMatch(s -> s.taken || s.drawnTo != null))
                .map(b -> {
                    b.stale = true;
                    b.taken = true;
                    return new Planted("stale-observation", traced -> {
                        String[] seen = b.slots.stream()
                                .filter(s -> traced.contains(s.device()))
                                .map(Plants::label)
                                .toArray(String[]::new);
                        return seen.length == 0 ? List.of() : List.of(expect("stale-observation", seen));
                    });
                });
    }
}
