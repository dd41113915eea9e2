package asfound.network;

import asfound.drawing.Drawings;
import asfound.model.Directory;
import asfound.model.EquipmentKind;
import asfound.model.OneLine;
import asfound.model.Place;
import asfound.model.Stated;
import asfound.names.SupplyText;
import asfound.network.DeviceRecord.Showing;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** What the drawings say, gathered: claims of supply, what each device is drawn to serve, and where equipment is shown. */
final class Paper {

    private static final Pattern SAYS_FROM =
            Pattern.compile("(?i)\\b(FED|FEED|FEEDER|SUPPLY|SUPPLIED|MAIN|INCOMING)?\\s*\\b(FROM|FED BY)\\b.*");

    final List<Claim> claims = new ArrayList<>();
    final Map<Device, List<Showing>> showings = new HashMap<>();
    /** Where an equipment is shown as itself: its directory, its row, either end of a feeder, an entry. */
    final Map<String, TreeSet<Place>> shownAt = new TreeMap<>();
    /** Where it is only mentioned as another's supply. */
    final Map<String, TreeSet<Place>> mentionedAt = new TreeMap<>();

    final Set<String> doubtful = new HashSet<>();

    private final Names names;
    private final DeviceKeys keys;
    private final Kinds kinds;
    private final Set<String> met;
    private final Set<String> supplies = new HashSet<>();

    /** @param met equipment that the survey met, so that an entry may name it */
    Paper(Names names, DeviceKeys keys, Kinds kinds, Set<String> met, Drawings drawings) {
        this.names = names;
        this.keys = keys;
        this.kinds = kinds;
        this.met = met;
        drawings.oneLine().feeders().forEach(this::readFeeder);
        drawings.oneLine().equipment().forEach(this::readListed);
        drawings.directories().forEach(this::readHeader);
        for (Claim c : claims) supplies.add(c.from() + "\n" + c.to());
        for (Directory d : drawings.directories()) for (Directory.Circuit c : d.circuits()) readEntry(d, c);
    }

    boolean isDrawn(String name) {
        return shownAt.containsKey(name) || mentionedAt.containsKey(name);
    }

    private static void at(Map<String, TreeSet<Place>> places, String name, Place place) {
        places.computeIfAbsent(name, n -> new TreeSet<>(Place.ORDER)).add(place);
    }

    private void readFeeder(OneLine.Feeder f) {
        if (f.to().isStated()) at(shownAt, names.orItself(f.to().value().get()), f.place());
        if (f.from().isStated()) at(shownAt, names.orItself(f.from().value().get()), f.place());
        if (!f.from().isStated() || !f.to().isStated()) {
            f.to().value().map(names::orItself).ifPresent(doubtful::add);
            return;
        }
        String from = names.orItself(f.from().value().get()),
                to = names.orItself(f.to().value().get());
        if (f.device().isUnreadable()) doubtful.add(to);
        Optional<Device> device = f.device().value().map(ref -> keys.device(from, keys.meant(from, ref, f.poles())));
        device.ifPresent(d -> show(
                d,
                new Showing(
                        Optional.of(new Served(f.to().or(to), Optional.of(to))),
                        Directory.Use.LOAD,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(f),
                        f.place())));
        boolean boards = kinds.of(from) == EquipmentKind.SWITCHBOARD && kinds.of(to) == EquipmentKind.SWITCHBOARD;
        claim(from, device, to, Claim.ONE_LINE, f.tie() || (f.normallyOpen() && boards), f.normallyOpen(), f.place());
    }

    private void show(Device device, Showing showing) {
        showings.computeIfAbsent(device, d -> new ArrayList<>(1)).add(showing);
    }

    /** A source is never supplied: a device drawn towards one is a backfed device. */
    private void claim(
            String from, Optional<Device> device, String to, String account, boolean tie, boolean open, Place place) {
        if (from.equals(to)) return;
        if (kinds.of(to).isPureSource() && !kinds.of(from).isPureSource())
            claims.add(new Claim(to, Optional.empty(), device, from, account, false, open, place));
        else claims.add(new Claim(from, device, Optional.empty(), to, account, tie, open, place));
    }

    private void readListed(OneLine.Listed e) {
        if (!e.name().isStated()) return;
        String name = names.orItself(e.name().value().get());
        at(shownAt, name, e.place());
        readSupply(e.fedFrom(), name, "listed " + e.place(), e.place());
    }

    private void readHeader(Directory d) {
        String panel = names.orItself(d.panel());
        at(shownAt, panel, d.place());
        if (d.isDoubtful()) doubtful.add(panel);
        readSupply(d.header().fedFrom(), panel, "header " + d.place(), d.place());
    }

    private void readSupply(Stated<String> text, String supplied, String account, Place place) {
        if (text.isUnreadable()) doubtful.add(supplied);
        String to = supplied;
        for (SupplyText.Step step : names.supply(text)) {
            String from = names.orItself(step.text());
            at(mentionedAt, from, place);
            claim(from, step.device().map(ref -> keys.device(from, ref)), to, account, false, false, place);
            to = from;
        }
    }

    private void readEntry(Directory directory, Directory.Circuit entry) {
        String panel = names.orItself(directory.panel());
        Device device = keys.device(panel, entry.ref());
        if (entry.description().isUnreadable()) doubtful.add(panel);
        Optional<Served> serves =
                entry.use() == Directory.Use.LOAD ? entry.description().value().map(this::served) : Optional.empty();
        show(
                device,
                new Showing(
                        serves,
                        entry.use(),
                        Optional.of(entry),
                        Optional.of(directory),
                        Optional.empty(),
                        entry.place()));
        Optional<String> named = serves.flatMap(Served::equipment).filter(n -> !n.equals(panel));
        if (named.isEmpty()) return;
        String other = named.get();
        at(shownAt, other, entry.place());
        boolean incoming = SAYS_FROM.matcher(serves.get().text()).find()
                || (supplies.contains(other + "\n" + panel) && !supplies.contains(panel + "\n" + other));
        if (incoming)
            claims.add(new Claim(
                    other,
                    Optional.empty(),
                    Optional.of(device),
                    panel,
                    Claim.DIRECTORIES,
                    false,
                    false,
                    entry.place()));
        else claim(panel, Optional.of(device), other, Claim.DIRECTORIES, false, false, entry.place());
    }

    private Served served(String text) {
        return new Served(text, names.of(text).filter(n -> met.contains(n) || isDrawn(n)));
    }
}
