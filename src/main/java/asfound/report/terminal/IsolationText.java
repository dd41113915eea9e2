package asfound.report.terminal;

import asfound.audit.Audit;
import asfound.isolation.DrawingVerdict;
import asfound.isolation.NamedElsewhere;
import asfound.isolation.Verdict;
import asfound.isolation.Verdict.Standing;
import asfound.model.Observation;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.network.DeviceRecord.Sighting;
import asfound.network.Equipment;
import asfound.report.Cautions;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** One equipment's isolation as a person reads it in a terminal: the verdict first, then each point with its evidence. */
public final class IsolationText {

    private static final int LABEL = 15;

    private final Audit audit;
    private final Verdict verdict;
    private final Shown shown;
    private final List<String> lines = new ArrayList<>();

    private IsolationText(Audit audit, Verdict verdict, Shown shown) {
        this.audit = audit;
        this.verdict = verdict;
        this.shown = shown;
    }

    /**
     * The lines, without line ends.
     *
     * @param verdict of the equipment asked for
     * @param charset what the terminal can show
     */
    public static List<String> of(Audit audit, Verdict verdict, Charset charset) {
        IsolationText text = new IsolationText(audit, verdict, Shown.in(charset));
        text.write();
        return List.copyOf(text.lines);
    }

    private void write() {
        wrap(headline());
        wrap(verdict.reason());
        lines.add("");
        say("Drawn points", points(verdict.drawnPoints(), "none"));
        say("Found points", verdict.foundPoints().map(p -> points(p, "none")).orElse("not known"));
        if (verdict.otherSets()) say("", "Other sets as small exist further up; these are the nearest.");
        if (!verdict.liveFrom().isEmpty()) {
            boolean proven = verdict.standing() == Standing.FAILS;
            say(proven ? "Live from" : "May be live", String.join(", ", verdict.liveFrom()));
            say("by way of", String.join(" > ", verdict.path()));
        }
        String named = NamedElsewhere.inWords(new NamedElsewhere(audit.network()).of(verdict));
        if (!named.isEmpty()) say("Names it too", named + ": see whether it brings supply into it");
        dark("Also dark", "with the drawn points open", verdict.alsoDark());
        if (!verdict.alsoDarkAsFound().equals(verdict.alsoDark()))
            dark("Also dark", "with the found points open", verdict.alsoDarkAsFound());
        evidence();
        drawings();
        lines.add("");
        wrap(Cautions.AGREES);
        Cautions.ALL.forEach(this::wrap);
        wrap(Cautions.WORK_AID);
    }

    private String headline() {
        String name = verdict.equipment();
        return switch (verdict.standing()) {
            case FAILS -> name + ": FAILS. DO NOT ISOLATE BY THE DRAWING.";
            case UNPROVEN -> name + ": UNPROVEN. The drawing may not be used for isolation before it is traced.";
            case AGREES -> name + ": agrees. Drawing and survey agree; test before touch.";
        };
    }

    private static String points(List<Device> devices, String none) {
        return devices.isEmpty()
                ? none
                : String.join(", ", devices.stream().map(Device::label).toList());
    }

    private void dark(String label, String when, List<String> names) {
        if (names.isEmpty()) return;
        say(
                label,
                String.join(", ", names.stream().map(this::withLifeSafety).toList()) + " (" + when
                        + "; the drawings do not say so)");
    }

    private String withLifeSafety(String name) {
        return name + (equipment(name).map(Equipment::lifeSafety).orElse(false) ? " [life safety]" : "");
    }

    private Optional<Equipment> equipment(String name) {
        return audit.network().equipment().stream()
                .filter(e -> e.name().equals(name))
                .findFirst();
    }

    /** Each point with who saw what there, when and how. */
    private void evidence() {
        Set<Device> points = new LinkedHashSet<>(verdict.drawnPoints());
        verdict.foundPoints().ifPresent(points::addAll);
        for (Device d : points) {
            List<Sighting> seen = audit.network().devices().stream()
                    .filter(r -> r.device().equals(d))
                    .map(DeviceRecord::sightings)
                    .findFirst()
                    .orElse(List.of());
            if (seen.isEmpty()) say(d.label(), "no observation");
            for (Sighting s : seen) say(d.label(), inWords(s));
        }
    }

    private static String inWords(Sighting s) {
        Observation o = s.observation();
        String what = o.relation().word()
                + (o.found().isBlank() ? "" : " " + o.found().raw().strip());
        String how =
                o.method().word().isEmpty() ? "method not said" : o.method().word();
        String day = o.date().value().map(Object::toString).orElse("no date");
        return what + "; " + how + ", " + day + ", " + (o.by().isBlank() ? "by: not said" : o.by())
                + (s.stale() ? "; older than the last modification" : "") + " ("
                + o.place().inWords() + ")";
    }

    private void drawings() {
        for (DrawingVerdict d : audit.drawingVerdicts())
            if (d.equipment().contains(verdict.equipment()))
                say("Drawing", d.file() + ": " + d.standing().word().toUpperCase(Locale.ROOT));
    }

    private void wrap(String text) {
        lines.addAll(shown.wrapped(text, Shown.WIDTH));
    }

    private void say(String label, String text) {
        String name = shown.cut(label, LABEL - 2);
        List<String> rest = shown.wrapped(text, Shown.WIDTH - LABEL);
        for (int i = 0; i < rest.size(); i++) {
            String head = i == 0 ? name : "";
            lines.add(head + " ".repeat(LABEL - Shown.columns(head)) + rest.get(i));
        }
    }
}
