package asfound.network;

import asfound.model.EquipmentKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Joins the claims of all drawings: what two drawings say of one connection becomes one connection with both places. */
final class DrawnConnections {

    private final Kinds kinds;
    private final List<Draft> drafts = new ArrayList<>();

    DrawnConnections(Paper paper, Kinds kinds) {
        this.kinds = kinds;
        List<Claim> claims = throughTransformers(paper.claims);
        Disputes disputes = new Disputes(claims, paper.showings, kinds);
        Map<String, List<Claim>> byEnds = new TreeMap<>();
        for (Claim c : claims)
            byEnds.computeIfAbsent(c.from() + "\n" + c.to(), k -> new ArrayList<>(2))
                    .add(c);
        byEnds.values().forEach(same -> join(same, disputes));
    }

    List<Draft> drafts() {
        return drafts;
    }

    /** A drawing that names the feeder's panel beyond a transformer drawn between them speaks of the transformer's supply. */
    private List<Claim> throughTransformers(List<Claim> claims) {
        Map<String, List<Claim>> supplying = new HashMap<>();
        for (Claim c : claims)
            supplying.computeIfAbsent(c.to(), t -> new ArrayList<>(1)).add(c);
        List<Claim> through = new ArrayList<>();
        for (Claim c : claims) {
            Optional<Claim> transformer = c.tie() || c.toDevice().isPresent()
                    ? Optional.empty()
                    : supplying.get(c.to()).stream()
                            .filter(s -> kinds.of(s.from()) == EquipmentKind.TRANSFORMER)
                            .filter(s -> supplying.getOrDefault(s.from(), List.of()).stream()
                                    .anyMatch(t -> t.from().equals(c.from()) && t != c))
                            .findFirst();
            through.add(transformer
                    .map(t -> new Claim(
                            c.from(),
                            c.fromDevice(),
                            Optional.empty(),
                            t.from(),
                            c.account(),
                            false,
                            c.normallyOpen(),
                            c.place()))
                    .orElse(c));
        }
        return through;
    }

    /**
     * Claims between the same two ends. One that gives no device says the same as one that does. A source's own device and
     * the panel's backfed device are in series, unless there are several of the source's and it is not known which.
     */
    private void join(List<Claim> same, Disputes disputes) {
        Set<Device> ofSource = new LinkedHashSet<>(), ofPanel = new LinkedHashSet<>();
        same.forEach(c -> c.fromDevice().ifPresent(ofSource::add));
        same.forEach(c -> c.toDevice().ifPresent(ofPanel::add));
        Map<List<Device>, Draft> made = new LinkedHashMap<>();
        if (ofSource.size() > 1 || ofPanel.isEmpty()) ofSource.forEach(d -> make(List.of(d), same, made));
        if (ofSource.size() != 1) ofPanel.forEach(d -> make(List.of(d), same, made));
        else ofPanel.forEach(d -> make(List.of(ofSource.iterator().next(), d), same, made));
        if (made.isEmpty()) make(List.of(), same, made);
        for (Claim c : same)
            made.forEach((devices, draft) -> {
                if (!speaksOf(c, devices)) return;
                draft.drawings.add(c.place());
                draft.disputed |= disputes.disputes(c);
                draft.normallyOpen |= c.normallyOpen();
            });
        drafts.addAll(made.values());
    }

    private static boolean speaksOf(Claim c, List<Device> devices) {
        return c.fromDevice().map(devices::contains).orElse(true)
                && c.toDevice().map(devices::contains).orElse(true);
    }

    private void make(List<Device> devices, List<Claim> same, Map<List<Device>, Draft> made) {
        Claim first = same.get(0);
        boolean tie = same.stream().anyMatch(c -> c.tie() && speaksOf(c, devices));
        made.put(devices, new Draft(first.from(), devices, first.to(), flow(first.to(), tie), true));
    }

    private Connection.Flow flow(String to, boolean tie) {
        return tie ? Connection.Flow.TIE : flowInto(kinds.of(to));
    }

    static Connection.Flow flowInto(EquipmentKind kind) {
        return kind == EquipmentKind.TRANSFER_SWITCH || kind == EquipmentKind.UPS
                ? Connection.Flow.ONE_WAY
                : Connection.Flow.FEEDER;
    }
}
