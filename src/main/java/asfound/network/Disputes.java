package asfound.network;

import asfound.model.Directory;
import asfound.model.EquipmentKind;
import asfound.network.DeviceRecord.Showing;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which claims drawings dispute: two accounts of one equipment's supply of which neither contains the other, or two
 * drawings that show different equipment at one device.
 */
final class Disputes {

    private final Kinds kinds;
    private final Set<Claim> disputed = new HashSet<>();

    Disputes(List<Claim> claims, Map<Device, List<Showing>> showings, Kinds kinds) {
        this.kinds = kinds;
        Map<String, Map<String, List<Claim>>> bySupplied = new HashMap<>();
        Map<Device, Map<String, Set<String>>> byDevice = new HashMap<>();
        for (Claim c : claims) {
            bySupplied
                    .computeIfAbsent(c.to(), t -> new HashMap<>(2))
                    .computeIfAbsent(c.account(), a -> new ArrayList<>(1))
                    .add(c);
            String drawing = c.account().equals(Claim.DIRECTORIES)
                    ? c.place().file() + c.place().pageNumber()
                    : c.account();
            if (c.account().equals(Claim.DIRECTORIES) || c.account().equals(Claim.ONE_LINE))
                c.fromDevice()
                        .ifPresent(d -> byDevice.computeIfAbsent(d, x -> new HashMap<>(2))
                                .computeIfAbsent(drawing, a -> new HashSet<>(2))
                                .add(c.to()));
        }
        bySupplied
                .values()
                .forEach(accounts -> compareAll(accounts.values(), accounts.getOrDefault(Claim.ONE_LINE, List.of())));
        for (Claim c : claims)
            c.fromDevice().ifPresent(d -> {
                if (byDevice.containsKey(d) && isContested(byDevice.get(d), showings.getOrDefault(d, List.of())))
                    disputed.add(c);
            });
    }

    boolean disputes(Claim claim) {
        return disputed.contains(claim);
    }

    /** What the one-line itself shows side by side, a header and an entry that name one each do not dispute. */
    private void compareAll(Collection<List<Claim>> accounts, List<Claim> oneLine) {
        List<List<Claim>> all = List.copyOf(accounts);
        for (int i = 0; i < all.size(); i++)
            for (int j = i + 1; j < all.size(); j++)
                if (!isWithin(all.get(i), all.get(j))
                        && !isWithin(all.get(j), all.get(i))
                        && !(isWithin(all.get(i), oneLine) && isWithin(all.get(j), oneLine))) {
                    disputed.addAll(all.get(i));
                    disputed.addAll(all.get(j));
                }
    }

    private boolean isWithin(List<Claim> account, List<Claim> other) {
        return account.stream().allMatch(c -> isFurther(c) || other.stream().anyMatch(c::agreesWith));
    }

    /** A tie, a generator, inverter or battery stands beside the ordinary supply; who leaves it out does not deny it. */
    private boolean isFurther(Claim c) {
        return c.tie() || (kinds.of(c.from()).isPureSource() && kinds.of(c.from()) != EquipmentKind.UTILITY);
    }

    private static boolean isContested(Map<String, Set<String>> byDrawing, List<Showing> shown) {
        List<Set<String>> all = List.copyOf(byDrawing.values());
        for (int i = 0; i < all.size(); i++)
            for (int j = i + 1; j < all.size(); j++)
                if (!all.get(i).containsAll(all.get(j)) && !all.get(j).containsAll(all.get(i))) return true;
        return shown.stream().anyMatch(s -> s.use() != Directory.Use.LOAD);
    }
}
