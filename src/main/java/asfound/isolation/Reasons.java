package asfound.isolation;

import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.Standing;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The reasons of one verdict, each a sentence that an electrician can act on, the gravest first. */
final class Reasons {

    private static final int NAMED = 6;

    private final String name;
    private final List<String> sentences = new ArrayList<>();
    private final Set<Device> spokenOf = new HashSet<>();

    Reasons(String name) {
        this.name = name;
    }

    boolean isEmpty() {
        return sentences.isEmpty();
    }

    String inWords() {
        return String.join(" ", sentences);
    }

    boolean speaksOf(Device device) {
        return spokenOf.contains(device);
    }

    boolean speaksOfNone(List<Device> devices) {
        return devices.stream().noneMatch(spokenOf::contains);
    }

    private void say(String sentence) {
        sentences.add(sentence);
    }

    void notDrawn() {
        say(name + " was found and no drawing shows it.");
    }

    void noSupplyDrawn() {
        say("The drawings give " + name + " no supply: what feeds it is not known.");
    }

    void pointContradicted(Device point, List<String> tracedTo) {
        spokenOf.add(point);
        say(
                tracedTo.isEmpty()
                        ? point + " is drawn as the point for " + name + " and was found not to feed it."
                        : point + " is drawn as the point for " + name + " and was traced to " + and(tracedTo)
                                + " instead.");
    }

    void seenNotToFeed(Device point) {
        spokenOf.add(point);
        say("It was seen that " + point + " does not feed " + name + ".");
    }

    void allSuppliesContradicted() {
        say("Every supply drawn for " + name + " was traced to something else or to nothing.");
    }

    void tracedOutside(Connection found, List<Device> points) {
        String devices = and(found.devices().stream().map(Device::label).toList());
        boolean backfed = found.devices().stream().anyMatch(d -> d.in().equals(name));
        String other = found.from().equals(name) ? found.to() : found.from();
        say((backfed ? "Supply from " + other + " was traced into " + name + " through " : name + " was traced to ")
                + devices + ", and "
                + (points.isEmpty()
                        ? "no drawing shows that."
                        : "opening " + these(points) + (backfed ? " does not part it." : " does not open it.")));
    }

    void live(Case c, PathWords paths) {
        say(opened(c) + name + " stays live " + origin(c, paths) + ".");
    }

    void couldBeLive(Case c, PathWords paths) {
        say((c.drawnPoints.isEmpty() ? "S" : opened(c) + "s") + "upply could still reach " + name + " "
                + origin(c, paths) + "; this way was not fully traced.");
    }

    private static String opened(Case c) {
        return c.drawnPoints.isEmpty() ? "" : "With " + these(c.drawnPoints) + " open, ";
    }

    private static String origin(Case c, PathWords paths) {
        List<String> way = paths.of(c.path);
        String from = "from " + paths.beginning(c.path)
                + (paths.beginsAtSource(c.path) ? "" : ", whose own supply is not known,");
        return way.isEmpty() ? from : from + " through " + String.join(", ", way);
    }

    void nothingParts(List<String> sources) {
        say("Nothing drawn parts " + name + " from " + (sources.isEmpty() ? "its supply" : and(sources))
                + ": on the way there is a connection without a device.");
    }

    void storesEnergy() {
        say(name + " stores energy and is itself a source: no device parts it from that.");
    }

    void notTraced(Device point, Standing standing) {
        say(
                switch (standing) {
                    case STALE ->
                        point + " was traced to " + name + " only before " + point.in() + " was last modified.";
                    case IN_CONFLICT -> "Observations of " + point + " cannot all be true.";
                    default -> point + " was not traced to " + name + ".";
                });
    }

    void ringOnly() {
        say("As found, the supply of " + name + " leads round in a ring and to no source: what feeds it is not known.");
    }

    void disputed(List<Connection> into) {
        List<String> supplies = into.stream()
                .filter(Connection::disputed)
                .map(c -> c.devices().isEmpty() ? c.from() : c.devices().get(0).label())
                .distinct()
                .toList();
        say(
                supplies.size() < 2
                        ? "Drawings disagree on the supply of " + name + "."
                        : "Drawings name different supplies for " + name + ": " + and(supplies) + ".");
    }

    void doubtful(String equipment) {
        say("The drawing or survey of " + equipment + " could not be read without doubt; look at it.");
    }

    void controlled(NamedElsewhere.Circuit circuit) {
        say("Its controls are fed from elsewhere: " + circuit.inWords() + " is none of the points drawn.");
    }

    void agree(List<Device> points) {
        say(
                and(labels(points)) + (points.size() == 1 ? " was" : " were") + " traced to " + name
                        + " as drawn, and no other way for supply into it was drawn or found under its name. That does not mean that it is dead.");
    }

    /** By name, or by their number where naming many in each sentence would hide what it says: they are listed beside it. */
    private static String these(List<Device> points) {
        return points.size() > NAMED ? "the " + points.size() + " drawn points" : and(labels(points));
    }

    private static List<String> labels(List<Device> devices) {
        return devices.stream().map(Device::label).toList();
    }

    private static String and(List<String> words) {
        return words.size() < 2
                ? String.join("", words)
                : String.join(", ", words.subList(0, words.size() - 1)) + " and " + words.get(words.size() - 1);
    }
}
