package asfound.names;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which forms are one thing. Forms that the user named distinct are never joined, not even by way of a third. */
final class FormGroups {

    private final Map<String, String> parent = new HashMap<>();
    private final Map<String, Set<String>> members = new HashMap<>();
    private final Map<String, Set<String>> distinct = new HashMap<>();

    FormGroups(NameIndex index, List<List<String>> distinctNames) {
        for (List<String> group : distinctNames) {
            List<String> forms =
                    group.stream().map(n -> index.form(Designation.of(n))).toList();
            for (String a : forms)
                for (String b : forms)
                    if (!a.equals(b))
                        distinct.computeIfAbsent(a, x -> new HashSet<>()).add(b);
        }
    }

    /** Texts of one structure that the user named distinct: only as written do they mean what they mean. */
    static Set<String> textsApart(List<List<String>> distinctNames) {
        Set<String> apart = new HashSet<>();
        for (List<String> group : distinctNames)
            for (String a : group)
                for (String b : group) {
                    Designation da = Designation.of(a), db = Designation.of(b);
                    boolean oneForm = da.identity().equals(db.identity()) && NameIndex.kindsAgree(da, db);
                    if (oneForm && !NameIndex.exact(a).equals(NameIndex.exact(b))) apart.add(NameIndex.exact(a));
                }
        return Set.copyOf(apart);
    }

    String root(String form) {
        String at = form;
        while (!parent.getOrDefault(at, at).equals(at)) at = parent.get(at);
        return at;
    }

    boolean mayJoin(String a, String b) {
        Set<String> ofB = members(root(b));
        for (String x : members(root(a)))
            for (String y : distinct.getOrDefault(x, Set.of())) if (ofB.contains(y)) return false;
        return true;
    }

    /** Joins two forms; false where the user named them distinct. The lower root in order becomes the group's. */
    boolean join(String a, String b) {
        String ra = root(a), rb = root(b);
        if (ra.equals(rb)) return true;
        if (!mayJoin(a, b)) return false;
        String low = ra.compareTo(rb) < 0 ? ra : rb, high = low.equals(ra) ? rb : ra;
        Set<String> all = new HashSet<>(members(low));
        all.addAll(members(high));
        parent.put(high, low);
        members.put(low, all);
        return true;
    }

    private Set<String> members(String root) {
        return members.getOrDefault(root, Set.of(root));
    }
}
