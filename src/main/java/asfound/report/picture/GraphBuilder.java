package asfound.report.picture;

import asfound.isolation.Verdict;
import asfound.model.EquipmentKind;
import asfound.model.Natural;
import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.Equipment;
import asfound.network.Standing;
import asfound.report.picture.Picture.Form;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Turns one sheet into nodes and edges: shared devices share a port, ties hang between their buses, far ends are flags. */
final class GraphBuilder {

    private final Map<String, Verdict.Standing> verdicts;
    private final Map<String, Integer> sheetOf;
    private final Function<Equipment, String> details;

    GraphBuilder(
            Map<String, Verdict.Standing> verdicts, Map<String, Integer> sheetOf, Function<Equipment, String> details) {
        this.verdicts = verdicts;
        this.sheetOf = sheetOf;
        this.details = details;
    }

    Graph build(Sheet sheet) {
        Graph graph = new Graph();
        Map<String, Long> taps = sheet.connections().stream()
                .flatMap(c -> c.devices().stream())
                .distinct()
                .collect(Collectors.groupingBy(Device::in, Collectors.counting()));
        Map<String, Long> arriving =
                sheet.connections().stream().collect(Collectors.groupingBy(Connection::to, Collectors.counting()));
        sheet.equipment().forEach(e -> {
            boolean several = taps.getOrDefault(e.name(), 0L) > 1 || arriving.getOrDefault(e.name(), 0L) > 1;
            graph.add(node(e, several));
        });
        Map<String, List<Connection>> away = new TreeMap<>();
        int n = 0;
        for (Connection c : sheet.connections()) {
            boolean fromHere = isHere(c.from(), sheet), toHere = isHere(c.to(), sheet);
            if (fromHere
                    && toHere
                    && c.flow() == Connection.Flow.TIE
                    && !c.from().equals(c.to())) tie(graph, c, n++);
            else if (toHere) {
                if (!fromHere) graph.add(reference(c.from()));
                graph.add(edge(c, key(c.from(), fromHere), key(c.to(), true), n++));
            } else
                away.computeIfAbsent(
                                String.format(Locale.ROOT, "%06d %s", sheetOf.get(c.to()), c.from()),
                                k -> new ArrayList<>())
                        .add(c);
        }
        for (List<Connection> together : away.values()) leave(graph, together, n++);
        return graph;
    }

    private boolean isHere(String name, Sheet sheet) {
        return sheetOf.get(name) == sheet.number();
    }

    private static String key(String name, boolean here) {
        return (here ? "here " : "away ") + name;
    }

    /**
     * A symbol in the line has one place for a line with its mark at one side and for a device at the other; equipment
     * with more of them gets a box and a bus.
     */
    private static Form form(EquipmentKind kind, boolean several) {
        return switch (kind) {
            case UTILITY, GENERATOR, TRANSFORMER, MOTOR, LOAD, BATTERY -> several ? Form.BOX : Form.IN_LINE;
            default -> Form.BOX;
        };
    }

    private Graph.Node node(Equipment e, boolean several) {
        Form form = form(e.kind(), several);
        String detail = details.apply(e);
        Optional<Verdict.Standing> verdict = Optional.ofNullable(verdicts.get(e.name()));
        boolean icon = form == Form.BOX && hasIcon(e.kind());
        return new Graph.Node(
                key(e.name(), true),
                form,
                e.name(),
                e.kind(),
                detail,
                e.drawn(),
                e.found(),
                verdict,
                sheetOf.get(e.name()),
                Sizes.width(form, e.name(), detail, icon, verdict.isPresent()),
                form == Form.BOX ? Sizes.BOX_HEIGHT : Sizes.SYMBOL + 36);
    }

    static boolean hasIcon(EquipmentKind kind) {
        return kind != EquipmentKind.PANEL && kind != EquipmentKind.SWITCHBOARD;
    }

    private Graph.Node reference(String name) {
        int sheet = sheetOf.get(name);
        return flag(key(name, false), name, "on sheet " + sheet, sheet, verdicts.get(name));
    }

    private static Graph.Node flag(String key, String name, String detail, int sheet, Verdict.Standing verdict) {
        return new Graph.Node(
                key,
                Form.REFERENCE,
                name,
                EquipmentKind.UNKNOWN,
                detail,
                true,
                true,
                Optional.ofNullable(verdict),
                sheet,
                Sizes.width(Form.REFERENCE, name, detail, false, false),
                40);
    }

    private static Graph.Edge edge(Connection c, String from, String to, int n) {
        List<Device> devices = c.devices();
        Optional<Device> first = devices.stream().findFirst();
        Optional<Device> last = devices.size() > 1
                ? Optional.of(devices.get(devices.size() - 1))
                : first.filter(d -> d.in().equals(c.to()) && !c.to().equals(c.from()));
        Optional<Device> atFrom = devices.size() > 1 || last.isEmpty() ? first : Optional.empty();
        return new Graph.Edge(
                from,
                atFrom.map(Device::label).orElse("wire " + n),
                to,
                last.map(Device::label).orElse("wire " + n),
                atFrom,
                last,
                c.standing(),
                c.normallyOpen(),
                Standings.sentence(c),
                1,
                true);
    }

    private static void tie(Graph graph, Connection c, int n) {
        String key = "tie " + n;
        String name = c.devices().stream().map(Device::label).collect(Collectors.joining(", "));
        graph.add(new Graph.Node(
                key,
                Form.TIE,
                name.isEmpty() ? "tie" : name,
                EquipmentKind.UNKNOWN,
                c.normallyOpen() ? "tie, drawn open" : "tie",
                c.drawn(),
                c.standing().isTraced(),
                Optional.empty(),
                0,
                Sizes.width(
                        Form.TIE,
                        name.isEmpty() ? "tie" : name,
                        c.normallyOpen() ? "tie, drawn open" : "tie",
                        false,
                        false),
                Sizes.SYMBOL));
        for (String side : List.of(c.from(), c.to()))
            graph.add(new Graph.Edge(
                    key(side, true),
                    "wire " + n,
                    key,
                    side,
                    Optional.empty(),
                    Optional.empty(),
                    c.standing(),
                    c.normallyOpen(),
                    Standings.sentence(c),
                    1,
                    side.equals(c.from())));
    }

    /** Connections from one equipment to one other sheet: the connection itself where there is one, else their count. */
    private void leave(Graph graph, List<Connection> together, int n) {
        Connection one = together.get(0);
        if (together.size() == 1) {
            graph.add(reference(one.to()));
            graph.add(edge(one, key(one.from(), true), key(one.to(), false), n));
            return;
        }
        int sheet = sheetOf.get(one.to());
        String key = "bundle " + sheet + " " + one.from();
        String words = Standings.counts(together);
        List<String> ends = together.stream()
                .map(Connection::to)
                .distinct()
                .sorted(Natural.ORDER)
                .toList();
        String detail = together.size() + " connections, on sheet " + sheet;
        graph.add(flag(key, Sheeting.range(ends), detail, sheet, null));
        Standing worst = together.stream()
                .map(Connection::standing)
                .min(Standings.ATTENTION)
                .orElseThrow();
        graph.add(new Graph.Edge(
                key(one.from(), true),
                "wire " + n,
                key,
                "wire " + n,
                Optional.empty(),
                Optional.empty(),
                worst,
                false,
                one.from() + " to sheet " + sheet + ": " + words,
                together.size(),
                true));
    }
}
