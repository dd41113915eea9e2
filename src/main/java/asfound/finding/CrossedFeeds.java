package asfound.finding;

import asfound.finding.Comparison.Answer;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Two or more devices were each traced to what another of them is drawn to feed. However many devices change
 * places in a ring, it is one event.
 */
public record CrossedFeeds(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "crossed-feeds",
            "Two or more devices were each traced to what another of them is drawn to feed.",
            "Opening either device by the drawing isolates the wrong equipment and leaves the intended one live.",
            "Do not isolate by any of these entries; exchange them on the drawings as listed, at the device and at the headers of the equipment fed.",
            List.of(
                    "NFPA 70E-2021 120.5: find all sources of supply from up-to-date drawings and tags",
                    "29 CFR 1910.333(b)(2)(ii) and 1910.147(d): isolate from every source"),
            new Guide.Example(
                    List.of("MDP/7 PANEL LP-1", "MDP/9 PANEL LP-2"), List.of("MDP/7 feeds LP-2", "MDP/9 feeds LP-1")),
            new Guide.NearMiss(
                    "Other ways of writing one name are not a crossing.",
                    new Guide.Example(
                            List.of("MDP/7 PANEL LP-1", "MDP/9 PANEL LP-2"),
                            List.of("MDP/7 feeds Panel LP1", "MDP/9 feeds LP 2"))));

    static final Rule RULE = new Rule(GUIDE, CrossedFeeds::find);

    @Override
    public Guide guide() {
        return GUIDE;
    }

    private static List<CrossedFeeds> find(Facts facts) {
        List<Comparison> exchanged = facts.open().stream()
                .filter(c ->
                        c.answer() == Answer.OTHER && !c.backfed() && c.seen().size() == 1)
                .toList();
        Abroad abroad = new Abroad(exchanged, facts.sames());
        return Rings.among(exchanged, c -> origins(facts, c, abroad)).stream()
                .map(ring -> of(facts, ring))
                .toList();
    }

    private static List<Comparison> origins(Facts facts, Comparison c, Abroad abroad) {
        List<Comparison> near = Origins.of(facts, c);
        return near.isEmpty() ? abroad.of(c) : near;
    }

    private static CrossedFeeds of(Facts facts, Rings.Ring ring) {
        List<Comparison> devices = ring.devices();
        String labels = Words.list(devices.stream().map(c -> c.device().label()).toList());
        String each = devices.stream()
                .map(c -> c.device().label() + " " + c.seenInWords() + " (drawn: " + c.drawnInWords() + ")")
                .collect(Collectors.joining("; "));
        String message = (devices.size() == 2 ? labels + " are crossed: " : labels + " have changed places in a ring: ")
                + each + "." + (ring.only() ? "" : " Some of these entries read alike; another pairing is as likely.");
        String correction = "Exchange what is drawn at " + labels + ".";
        return new CrossedFeeds(Events.at(facts, devices)
                .severity(Severity.DANGER)
                .says(message, correction)
                .corrections(Redraw.corrections(facts, devices, correction))
                .build());
    }
}
