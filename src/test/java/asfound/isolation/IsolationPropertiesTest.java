package asfound.isolation;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.Network;
import asfound.network.Standing;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Verdicts of random buildings, drawings and survey read from end to end, against brute force over every set of devices.
 * The seed stands in each message.
 */
class IsolationPropertiesTest {

    private static final int USUAL = 500;
    private static final int LONG = 20_000;

    @Test
    void points_are_least_and_nearest_and_verdicts_are_what_brute_force_says() {
        compare(0, USUAL);
    }

    @Test
    @Tag("long")
    void points_are_least_and_nearest_and_verdicts_are_what_brute_force_says_at_length() {
        compare(1_000_000, LONG);
    }

    private static void compare(long first, int cases) {
        Map<Verdict.Standing, Integer> count = new EnumMap<>(Verdict.Standing.class);
        for (long seed = first; seed < first + cases; seed++) {
            Network network = new RandomBuilding(seed).build().network();
            Oracle oracle = new Oracle(network);
            for (Verdict v : Isolation.verdicts(network)) {
                String at = "seed " + seed + ", " + v.equipment() + ": " + v.reason();
                Set<Device> points = new TreeSet<>(v.drawnPoints());
                checkPoints(oracle, v, points, at);
                v.foundPoints()
                        .ifPresent(found -> assertThat(oracle.foundSets(v.equipment()))
                                .as("found points, " + at)
                                .contains(new TreeSet<>(found)));
                assertThat(v.alsoDark())
                        .as("also dark, " + at)
                        .containsExactlyInAnyOrderElementsOf(oracle.alsoDark(points, v.equipment()));
                if (v.standing() == Verdict.Standing.AGREES)
                    assertThat(oracle.couldBeLive(v.equipment(), points))
                            .as("agrees while live, " + at)
                            .isFalse();
                assertThat(v.standing()).as(at).isEqualTo(oracle.standing(v.equipment(), points));
                count.merge(v.standing(), 1, Integer::sum);
            }
        }
        // a property that never meets the case it is about holds of nothing
        for (Verdict.Standing s : Verdict.Standing.values())
            assertThat(count.getOrDefault(s, 0)).as(s.word() + " of " + count).isGreaterThan(cases / 4);
    }

    private static void checkPoints(Oracle oracle, Verdict v, Set<Device> points, String at) {
        List<Set<Device>> least = oracle.drawnSets(v.equipment());
        if (least.isEmpty()) {
            assertThat(points).as("nothing parts it, " + at).isEmpty();
            return;
        }
        assertThat(least).as("least, " + at).contains(points);
        assertThat(v.otherSets()).as("others, " + at).isEqualTo(least.size() > 1);
        Set<String> near = oracle.nearSide(v.equipment(), points);
        for (Set<Device> other : least)
            assertThat(oracle.nearSide(v.equipment(), other))
                    .as("nearest, " + at + " against " + other)
                    .containsAll(near);
    }

    @Test
    void a_trace_that_confirms_the_drawing_never_makes_a_verdict_worse() {
        confirm(0, USUAL);
    }

    @Test
    @Tag("long")
    void a_trace_that_confirms_the_drawing_never_makes_a_verdict_worse_at_length() {
        confirm(2_000_000, LONG);
    }

    /**
     * Every drawn connection that nobody traced or spoke against, and that drawings do not dispute, is traced as drawn, one at
     * a time. Two things are no mere confirmation: the trace of a way over which supply comes back, since the equipment at
     * its far end is fed from elsewhere; and the trace of a source joined without a device.
     */
    private static void confirm(long first, int cases) {
        int confirmed = 0, better = 0, provenLive = 0;
        for (long seed = first; seed < first + cases; seed++) {
            RandomBuilding plain = unmodified(seed);
            Network before = plain.build().network();
            List<Verdict> was = Isolation.verdicts(before);
            for (Connection c : before.connections()) {
                if (!c.drawn()
                        || c.disputed()
                        || c.standing() != Standing.UNTRACED
                        || c.devices().size() > 1) continue;
                String circuit = c.devices().isEmpty() ? "" : c.devices().get(0).key();
                RandomBuilding more = unmodified(seed);
                more.survey.add(RandomBuilding.opened(c.from(), circuit, "feeds", c.to()));
                List<Verdict> now = Isolation.verdicts(more.build().network());
                confirmed++;
                for (int i = 0; i < now.size(); i++) {
                    int change = now.get(i).standing().compareTo(was.get(i).standing());
                    if (change > 0) better++;
                    if (change >= 0) continue;
                    provenLive++;
                    if (was.get(i).drawnPoints().isEmpty()) continue; // nothing parts it from a source, traced now
                    assertThat(String.join(", ", now.get(i).path()))
                            .as("seed %d, traced %s: was %s, now %s", seed, c, was.get(i), now.get(i))
                            .contains(
                                    circuit.isEmpty()
                                            ? c.from() + " to " + c.to() + " without a device"
                                            : c.devices().get(0).label());
                }
            }
        }
        assertThat(confirmed).isGreaterThan(cases / 4);
        assertThat(better).isGreaterThan(cases / 10);
        assertThat(provenLive).isLessThan(confirmed / 10);
    }

    private static RandomBuilding unmodified(long seed) {
        RandomBuilding b = new RandomBuilding(seed);
        b.modified.clear();
        return b;
    }

    @Test
    void a_trace_that_contradicts_the_drawing_never_makes_a_verdict_better() {
        contradict(0, USUAL);
    }

    @Test
    @Tag("long")
    void a_trace_that_contradicts_the_drawing_never_makes_a_verdict_better_at_length() {
        contradict(3_000_000, LONG);
    }

    /**
     * Of what is drawn to feed an equipment, one device after the other is found to feed nothing, or seen not to feed it. The
     * verdict of that equipment, and of every equipment that the device is a point for, gets no better. Others may: where
     * supply was thought to come over that device, it does not.
     */
    private static void contradict(long first, int cases) {
        int contradicted = 0, worse = 0;
        for (long seed = first; seed < first + cases; seed++) {
            Network before = new RandomBuilding(seed).build().network();
            List<Verdict> was = Isolation.verdicts(before);
            for (Connection c : before.connections()) {
                if (!c.drawn() || c.devices().size() != 1 || isTracedAlready(before, c)) continue;
                Device device = c.devices().get(0);
                RandomBuilding more = new RandomBuilding(seed);
                more.survey.add(
                        seed % 2 == 0
                                ? RandomBuilding.opened(device.in(), device.key(), "does not feed", c.to())
                                : RandomBuilding.opened(device.in(), device.key(), "nothing", ""));
                List<Verdict> now = Isolation.verdicts(more.build().network());
                contradicted++;
                for (int i = 0; i < now.size(); i++) {
                    Verdict old = was.get(i);
                    int change = now.get(i).standing().compareTo(old.standing());
                    if (change < 0) worse++;
                    if (change <= 0) continue;
                    String at = String.format("seed %d, contradicted %s: was %s, now %s", seed, c, old, now.get(i));
                    assertThat(old.drawnPoints()).as(at).doesNotContain(device);
                    if (isOfARing(old, was)) continue; // the ring of unknown supply is open at that device
                    if (old.drawnPoints().isEmpty()) continue; // nothing parted it: live by one way or another
                    assertThat(String.join(", ", old.path())).as(at).contains(device.label());
                }
            }
        }
        assertThat(contradicted).isGreaterThan(cases / 2);
        assertThat(worse).isGreaterThan(cases / 10);
    }

    /** The equipment, or what keeps it live, is fed in a ring only, so that each member had to be taken for a source. */
    private static boolean isOfARing(Verdict verdict, List<Verdict> all) {
        return all.stream()
                .filter(v -> v == verdict || verdict.liveFrom().contains(v.equipment()))
                .anyMatch(v -> v.reason().contains("in a ring"));
    }

    /** What was traced there already would come into conflict, and a conflict proves nothing. */
    private static boolean isTracedAlready(Network network, Connection c) {
        return network.devices().stream()
                .filter(d -> d.device().equals(c.devices().get(0)))
                .anyMatch(d -> !d.tracedTo().isEmpty());
    }

    @Test
    void new_names_another_order_and_other_files_change_nothing() {
        rename(0, USUAL);
    }

    @Test
    @Tag("long")
    void new_names_another_order_and_other_files_change_nothing_at_length() {
        rename(4_000_000, LONG);
    }

    private static void rename(long first, int cases) {
        for (long seed = first; seed < first + cases; seed++) {
            RandomBuilding building = new RandomBuilding(seed);
            List<Verdict> was = Isolation.verdicts(building.build().network());
            Map<String, String> newName = newNames(building, seed);
            building.shuffle(seed);
            List<Verdict> now = Isolation.verdicts(
                    building.build(n -> newName.getOrDefault(n, n)).network());
            Map<String, Verdict> byName = new TreeMap<>();
            now.forEach(v -> byName.put(v.equipment(), v));
            assertThat(now).as("seed %d", seed).hasSameSizeAs(was);
            for (Verdict old : was) {
                Verdict other = byName.get(newName.getOrDefault(old.equipment(), old.equipment()));
                assertThat(facts(other, Map.of())).as("seed %d: %s", seed, old).isEqualTo(facts(old, newName));
            }
        }
    }

    /** The same names, given round by one of each kind's sort of name. */
    private static Map<String, String> newNames(RandomBuilding building, long seed) {
        List<String> names = building.equipment.stream()
                .map(RandomBuilding.Named::name)
                .filter(n -> n.startsWith("BD-"))
                .toList();
        List<String> shuffled = new ArrayList<>(names);
        Collections.shuffle(shuffled, new Random(seed));
        Map<String, String> newName = new TreeMap<>();
        for (int i = 0; i < names.size(); i++) newName.put(names.get(i), "Q" + shuffled.get(i) + "A");
        return newName;
    }

    private static List<Object> facts(Verdict v, Map<String, String> newName) {
        return List.of(
                v.standing(),
                renamed(v.drawnPoints(), newName),
                v.foundPoints().map(f -> renamed(f, newName)).orElse(Set.of("not known")),
                v.otherSets(),
                v.liveFrom().stream().map(n -> newName.getOrDefault(n, n)).collect(Collectors.toSet()),
                v.alsoDark().stream().map(n -> newName.getOrDefault(n, n)).collect(Collectors.toSet()));
    }

    private static Set<String> renamed(List<Device> devices, Map<String, String> newName) {
        return devices.stream()
                .map(d -> newName.getOrDefault(d.in(), d.in()) + "/" + d.key())
                .collect(Collectors.toSet());
    }
}
