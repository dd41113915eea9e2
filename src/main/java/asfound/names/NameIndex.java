package asfound.names;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/**
 * Finds which known name a designation means. A known name is a <em>form</em>: a core, its floor where that counts, and
 * the kind that a word says.
 */
final class NameIndex {

    /** What was found: nothing, one thing, or several among which nobody may guess. */
    record Found(List<String> candidates) {

        Optional<String> name() {
            return candidates.size() == 1 ? Optional.of(candidates.get(0)) : Optional.empty();
        }

        boolean isAmbiguous() {
            return candidates.size() > 1;
        }
    }

    private static final Set<Family> COMMONLY_SINGLE = EnumSet.of(Family.GENERATOR, Family.UTILITY);
    private static final Found NOTHING = new Found(List.of());

    /** core -> form -> designation that made the form. */
    private final Map<String, Map<String, Designation>> byCore = new TreeMap<>();

    private final Map<String, Designation> forms = new TreeMap<>();
    private final Map<String, Map<String, Designation>> byExpansion = new TreeMap<>();
    private final Map<Family, Set<String>> byKind = new EnumMap<>(Family.class);
    /** Texts that the user has set apart: they count only as written. */
    private final Set<String> apart;

    private UnaryOperator<String> nameOfForm = f -> f;

    NameIndex(Set<String> apart) {
        this.apart = apart;
    }

    /** From now on the one name is given instead of the form. */
    void name(UnaryOperator<String> nameOfForm) {
        this.nameOfForm = nameOfForm;
    }

    String form(Designation d) {
        String exact = exact(d.raw());
        if (apart.contains(exact)) return "=" + exact;
        String kind = d.isBare() && d.saysSwitchboard()
                ? "SWITCHBOARD"
                : d.family().map(Enum::name).orElse("");
        return d.identity() + "|" + kind;
    }

    static String exact(String raw) {
        return PlainText.of(raw).replaceAll("\\s+", " ");
    }

    void add(Designation d) {
        String form = form(d);
        forms.putIfAbsent(form, d);
        byCore.computeIfAbsent(form.startsWith("=") ? form : d.core(), c -> new TreeMap<>())
                .putIfAbsent(form, d);
        for (String core : d.expansions())
            byExpansion.computeIfAbsent(core, c -> new TreeMap<>()).putIfAbsent(form, d);
        if (!d.core().isEmpty())
            d.kind()
                    .ifPresent(
                            k -> byKind.computeIfAbsent(k, x -> new TreeSet<>()).add(form));
    }

    Map<String, Map<String, Designation>> byCore() {
        return byCore;
    }

    /** Every form with the designation that made it, in order. */
    Map<String, Designation> forms() {
        return forms;
    }

    Found find(Designation d) {
        if (d.isEmpty()) return NOTHING;
        String form = form(d);
        if (form.startsWith("=")) return byCore.containsKey(form) ? named(Set.of(form)) : NOTHING;
        Map<String, Designation> forms = byCore.getOrDefault(d.core(), Map.of());
        if (forms.containsKey(form)) return named(Set.of(form));
        Found byKind = named(compatible(d, forms));
        if (!byKind.candidates().isEmpty()) return byKind;
        Set<String> expanded = expanded(d);
        return named(expanded.isEmpty() ? ofKind(d) : expanded);
    }

    private Found named(Set<String> forms) {
        return new Found(forms.stream().map(nameOfForm).distinct().sorted().toList());
    }

    /** The forms of the same core which neither kind nor floor sets apart. */
    Set<String> compatible(Designation d, Map<String, Designation> forms) {
        Set<String> fit = new LinkedHashSet<>();
        forms.forEach((form, other) -> {
            if (floorsAgree(d, other) && kindsAgree(d, other)) fit.add(form);
        });
        return fit;
    }

    static boolean floorsAgree(Designation a, Designation b) {
        return a.hasDigits()
                || a.floor().isEmpty()
                || b.floor().isEmpty()
                || a.floor().equals(b.floor());
    }

    /**
     * Kinds agree where both say the same, or one says nothing: the mark speaks where no word does. A panel word says little:
     * it agrees with whatever mark implies nothing. {@code SWBD-A} and {@code PANEL A} are two, {@code SWBD DP-1} and
     * {@code PANEL DP-1} one.
     */
    static boolean kindsAgree(Designation a, Designation b) {
        boolean boards = a.family().isPresent() && a.family().equals(b.family());
        if (boards && a.isBare() && b.isBare() && a.saysSwitchboard() != b.saysSwitchboard()) return false;
        if (a.family().isPresent() && b.family().isPresent()) return a.family().equals(b.family());
        return a.kind().isEmpty() || b.kind().isEmpty() || a.kind().equals(b.kind());
    }

    /** Forms whose mark the words stand for: {@code XFMR 1} for {@code T-1}; also the other way round. */
    Set<String> expanded(Designation d) {
        Set<String> fit = new LinkedHashSet<>();
        for (String core : d.expansions()) addKindred(d, byCore.getOrDefault(core, Map.of()), fit);
        addKindred(d, byExpansion.getOrDefault(d.core(), Map.of()), fit);
        return fit;
    }

    private static void addKindred(Designation d, Map<String, Designation> forms, Set<String> fit) {
        forms.forEach((form, other) -> {
            if (kindsAgree(d, other)) fit.add(form);
        });
    }

    /** {@code GENERATOR} alone: every generator that has a name. Only for what a building has few of. */
    Set<String> ofKind(Designation d) {
        if (!d.core().isEmpty() || d.family().filter(COMMONLY_SINGLE::contains).isEmpty()) return Set.of();
        return byKind.getOrDefault(d.family().get(), Set.of());
    }
}
