package asfound.names;

import static java.util.stream.Collectors.groupingBy;

import asfound.model.Natural;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.recordset.Settings;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Makes the {@link NameBook}: forms that are one thing are joined, each joined group gets its one name. */
final class NameBookMaker {

    /** All places of one text in one role. */
    private record Use(Designation designation, boolean names, boolean drawn, List<Place> places) {

        Place first() {
            return places.stream().min(Place.ORDER).orElseThrow();
        }
    }

    private final List<Use> uses = new ArrayList<>();
    private final Settings settings;
    private final NameIndex index;
    private final FormGroups groups;
    private final Map<String, List<Use>> usesOfForm = new TreeMap<>();
    private final Set<Problem> problems = new TreeSet<>();

    NameBookMaker(Collection<Written> all, Settings settings) {
        this.settings = settings;
        Map<String, Designation> designations = all.parallelStream()
                .map(Written::raw)
                .distinct()
                .collect(Collectors.toConcurrentMap(raw -> raw, Designation::of));
        Map<String, Map<Integer, Use>> byText = new TreeMap<>();
        for (Written w : all)
            if (!w.raw().isBlank())
                byText.computeIfAbsent(w.raw(), r -> new TreeMap<>())
                        .computeIfAbsent(
                                (w.names() ? 2 : 0) + (w.drawn() ? 1 : 0),
                                k -> new Use(designations.get(w.raw()), w.names(), w.drawn(), new ArrayList<>()))
                        .places()
                        .add(w.place());
        byText.values().forEach(roles -> uses.addAll(roles.values()));
        this.index = new NameIndex(FormGroups.textsApart(settings.distinct()));
        this.groups = new FormGroups(index, settings.distinct());
    }

    NameBook make() {
        for (Use u : uses)
            if (u.names() && !u.designation().isEmpty()) {
                index.add(u.designation());
                usesOfForm
                        .computeIfAbsent(index.form(u.designation()), f -> new ArrayList<>())
                        .add(u);
            }
        joinAsTheUserSays();
        joinByStructure();
        Map<String, String> names = chooseNames();
        index.name(form -> names.getOrDefault(groups.root(form), form));
        return book(names);
    }

    private void joinAsTheUserSays() {
        for (List<String> group : settings.same()) {
            List<Designation> all = group.stream()
                    .map(Designation::of)
                    .filter(d -> !d.isEmpty())
                    .toList();
            all.forEach(index::add);
            for (Designation d : all)
                if (!groups.join(index.form(all.get(0)), index.form(d)))
                    problems.add(new Problem(
                            Place.file("record.yaml"),
                            "'" + all.get(0).raw() + "' and '" + d.raw()
                                    + "' are named both under 'same' and 'distinct'.",
                            "They are kept apart. Take them out of one of the two."));
        }
    }

    private void joinByStructure() {
        Map<String, Designation> forms = index.forms();
        Set<String> torn = new TreeSet<>();
        forms.forEach((form, d) -> {
            if (isTorn(compatible(d))) torn.add(form);
        });
        forms.forEach((form, d) -> {
            Set<String> others = compatible(d);
            if (!torn.contains(form)) others.removeAll(torn);
            joinOrSay(form, d, others);
        });
        forms.forEach((form, d) -> joinOrSay(form, d, index.expanded(d)));
        forms.forEach((form, d) -> joinOrSay(form, d, index.ofKind(d)));
    }

    private Set<String> compatible(Designation d) {
        return index.compatible(d, index.byCore().getOrDefault(d.core(), Map.of()));
    }

    /** A form that fits two which do not fit one another could be either. */
    private boolean isTorn(Set<String> forms) {
        Map<String, Designation> all = index.forms();
        return forms.stream()
                .anyMatch(a -> forms.stream()
                        .anyMatch(b -> !NameIndex.floorsAgree(all.get(a), all.get(b))
                                || !NameIndex.kindsAgree(all.get(a), all.get(b))));
    }

    /** Joins a form with those that it may mean if these are one thing; two things nobody may choose between. */
    private void joinOrSay(String form, Designation d, Set<String> others) {
        if (form.startsWith("=")) return;
        List<String> meant = others.stream()
                .filter(other -> !other.startsWith("=") && groups.mayJoin(form, other) && !bothListed(form, other))
                .toList();
        Set<String> roots = new TreeSet<>();
        for (String other : meant) roots.add(groups.root(other));
        roots.remove(groups.root(form));
        if (roots.size() == 1) {
            String other = roots.iterator().next();
            if (groups.join(form, other) && d.core().isEmpty()) say(form, Ambiguity.taken(d.raw(), textOf(other)));
        } else if (roots.size() > 1 && areOneThing(meant)) {
            meant.forEach(other -> groups.join(form, other));
        } else if (roots.size() > 1 && usesOfForm.containsKey(form)) {
            say(
                    form,
                    Ambiguity.several(d.raw(), roots.stream().map(this::textOf).toList()));
        }
    }

    /** {@code A}, {@code PANEL A} and {@code Panel A (Rm 337)}: one core, and nothing that sets any two of them apart. */
    private boolean areOneThing(List<String> forms) {
        Map<String, Designation> all = index.forms();
        boolean oneCore = forms.stream().map(f -> all.get(f).core()).distinct().count() == 1;
        return oneCore
                && !isTorn(new TreeSet<>(forms))
                && forms.stream().allMatch(a -> forms.stream().allMatch(b -> groups.mayJoin(a, b)));
    }

    /** Two ways of writing that one drawing lists side by side, with a word of kind between them, are two things. */
    private boolean bothListed(String a, String b) {
        Designation da = index.forms().get(a), db = index.forms().get(b);
        boolean panels = Family.BOARD == da.family().or(db::family).orElse(Family.BOARD);
        boolean bareBesideSwitchboard = da.isBare() && da.saysSwitchboard() != db.saysSwitchboard();
        if (da.core().equals(db.core())
                && !bareBesideSwitchboard
                && (panels || da.kind().equals(db.kind()))) return false;
        Set<String> files = new HashSet<>();
        drawn(a).forEach(u -> u.places().forEach(p -> files.add(p.file())));
        return drawn(b).stream().flatMap(u -> u.places().stream()).anyMatch(p -> files.contains(p.file()));
    }

    private List<Use> drawn(String form) {
        return usesOfForm.getOrDefault(form, List.of()).stream()
                .filter(Use::drawn)
                .toList();
    }

    private void say(String form, String[] messageAndRemedy) {
        Place place = usesOfForm.getOrDefault(form, List.of()).stream()
                .map(Use::first)
                .min(Place.ORDER)
                .orElse(Place.file("record.yaml"));
        problems.add(new Problem(place, messageAndRemedy[0], messageAndRemedy[1]));
    }

    private String textOf(String form) {
        return usesOfForm.getOrDefault(form, List.of()).stream()
                .map(u -> u.designation().plain())
                .min(Natural.ORDER)
                .orElse(form);
    }

    private Map<String, String> chooseNames() {
        Map<String, List<Use>> byRoot = new TreeMap<>();
        usesOfForm.forEach((form, all) -> byRoot.computeIfAbsent(groups.root(form), r -> new ArrayList<>())
                .addAll(all));
        Map<String, String> names = new TreeMap<>();
        Set<String> taken = new HashSet<>();
        byRoot.forEach((root, all) -> {
            List<Use> drawn = all.stream().filter(Use::drawn).toList();
            String name = usersWay(drawn.isEmpty() ? all : drawn)
                    .orElseGet(() -> mostWritten(drawn.isEmpty() ? all : drawn, taken));
            taken.add(name);
            names.put(root, name);
        });
        return names;
    }

    /** The first way of a group under {@code same}, where it is written so. */
    private Optional<String> usersWay(List<Use> all) {
        Set<String> ways = new HashSet<>();
        all.forEach(u -> ways.add(u.designation().plain()));
        return settings.same().stream()
                .filter(g -> !g.isEmpty())
                .map(g -> g.get(0))
                .filter(ways::contains)
                .findFirst();
    }

    private static String mostWritten(List<Use> all, Set<String> taken) {
        Map<String, Integer> count = new TreeMap<>();
        for (Use u : all) count.merge(u.designation().plain(), u.places().size(), Integer::sum);
        return count.keySet().stream()
                .filter(p -> !taken.contains(p))
                .min(Comparator.comparing((String p) -> -count.get(p))
                        .thenComparing(String::length)
                        .thenComparing(Natural.ORDER))
                .orElseGet(() -> NameIndex.exact(all.get(0).designation().raw()));
    }

    private NameBook book(Map<String, String> names) {
        Map<String, Optional<String>> known = new HashMap<>();
        Map<String, SortedSet<String>> written = new TreeMap<>();
        names.values().forEach(n -> written.put(n, new TreeSet<>(Natural.ORDER)));
        for (Use u : uses) {
            NameIndex.Found found = index.find(u.designation());
            known.put(u.designation().raw(), found.name());
            String tidy = u.designation().raw().strip().replaceAll("\\s+", " ");
            found.name().map(written::get).ifPresent(w -> w.add(tidy));
            if (found.isAmbiguous())
                problems.add(new Problem(
                        u.first(),
                        Ambiguity.several(tidy, found.candidates())[0],
                        Ambiguity.several(tidy, found.candidates())[1]));
            Ambiguity.lookAlike(u.designation(), u.names(), index)
                    .ifPresent(m -> problems.add(new Problem(u.first(), m[0], m[1])));
        }
        addLeadingZeros();
        return new NameBook(index, known, written, List.copyOf(problems));
    }

    /** {@code LP-02} beside {@code LP-2}: digits count exactly, so these are two; it is said, for it may be a slip. */
    private void addLeadingZeros() {
        index.forms().entrySet().stream()
                .filter(e -> usesOfForm.containsKey(e.getKey()))
                .collect(groupingBy(
                        e -> e.getValue().core().replaceAll("(?<![0-9])0+(?=[0-9])", ""),
                        TreeMap::new,
                        java.util.stream.Collectors.mapping(Map.Entry::getKey, java.util.stream.Collectors.toList())))
                .values()
                .forEach(forms -> forms.stream()
                        .filter(f -> !groups.root(f).equals(groups.root(forms.get(0))))
                        .filter(f -> groups.mayJoin(f, forms.get(0)))
                        .filter(f -> !index.forms()
                                .get(f)
                                .core()
                                .equals(index.forms().get(forms.get(0)).core()))
                        .findFirst()
                        .ifPresent(f -> say(f, Ambiguity.zeros(textOf(forms.get(0)), textOf(f)))));
    }
}
