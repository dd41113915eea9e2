package asfound.finding;

import asfound.drawing.Drawings;
import asfound.isolation.Verdict;
import asfound.model.EquipmentKind;
import asfound.model.Observation;
import asfound.names.Descriptions;
import asfound.network.Device;
import asfound.network.Network;
import asfound.recordset.Settings;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the rules read: paper, survey, the network that joins them, the verdicts, the comparison at each device, and which
 * differences are still to be explained. Never changed; {@link #explainedBy} gives the facts for the rules that follow.
 *
 * @param comparisons one for each device, in the network's order
 * @param index the same facts by name
 * @param explained devices whose difference a finding has told
 */
public record Facts(
        Drawings drawings,
        List<Observation> survey,
        Network network,
        Settings settings,
        Sames sames,
        Through through,
        List<Comparison> comparisons,
        Index index,
        Set<Device> explained) {

    static Facts of(
            Drawings drawings, List<Observation> survey, Network network, List<Verdict> verdicts, Settings settings) {
        Through through = new Through(network.equipment(), network.connections());
        Sames sames = new Sames(Descriptions.of(settings), through);
        List<Comparison> comparisons = new Comparisons(sames, through).of(network.devices());
        Index index = new Index(drawings, network, verdicts, comparisons);
        return new Facts(drawings, survey, network, settings, sames, through, comparisons, index, Set.of());
    }

    /** Devices where paper and survey differ and no finding has said so yet, in the network's order. */
    List<Comparison> open() {
        return comparisons.stream()
                .filter(c -> c.answer().differs() && !explained.contains(c.device()))
                .toList();
    }

    boolean isOpen(Comparison c) {
        return c.answer().differs() && !explained.contains(c.device());
    }

    Optional<Comparison> at(Device device) {
        return index.at(device);
    }

    EquipmentKind kindOf(String equipment) {
        return index.equipment(equipment).map(e -> e.kind()).orElse(EquipmentKind.UNKNOWN);
    }

    /** The same facts for the rules after these findings: what they tell is no longer open. */
    Facts explainedBy(List<? extends Finding> findings) {
        Set<Device> more = new HashSet<>(explained);
        for (Finding f : findings)
            if (f.explainsFeeds())
                for (Finding.Part p : f.event().parts())
                    p.circuit().ifPresent(c -> more.add(new Device(p.equipment(), c)));
        return with(more);
    }

    /** The same facts, with what was seen at these devices told. */
    Facts explainedAt(List<Comparison> devices) {
        Set<Device> more = new HashSet<>(explained);
        for (Comparison c : devices) more.add(c.device());
        return with(more);
    }

    private Facts with(Set<Device> explained) {
        return new Facts(
                drawings, survey, network, settings, sames, through, comparisons, index, Set.copyOf(explained));
    }

    List<Unclear> unclear() {
        return comparisons.stream()
                .filter(c -> c.answer() == Comparison.Answer.UNCLEAR)
                .map(c -> new Unclear(
                        c.device(),
                        Words.list(c.drawn().stream().map(d -> d.text()).toList()),
                        Words.list(c.seen().stream().map(s -> s.text()).toList()),
                        c.places(),
                        c.evidence()))
                .toList();
    }
}
