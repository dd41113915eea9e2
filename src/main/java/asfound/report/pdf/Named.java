package asfound.report.pdf;

import asfound.network.Equipment;
import asfound.network.Network;
import java.util.List;
import java.util.NoSuchElementException;

/** Equipment by the name that a person types. */
final class Named {

    private static final int LISTED = 12;

    private Named() {}

    /**
     * By its one name, else by that or another way in which it is written in any case.
     *
     * @throws NoSuchElementException with a message for the user
     */
    static Equipment find(Network network, String typed) {
        String wanted = typed.strip();
        return network.equipment().stream()
                .filter(e -> e.name().equals(wanted))
                .findFirst()
                .or(() ->
                        network.equipment().stream().filter(e -> is(e, wanted)).findFirst())
                .orElseThrow(() -> new NoSuchElementException("No equipment of this record set is named '" + wanted
                        + "'. Its equipment: " + names(network) + "."));
    }

    static boolean is(Equipment equipment, String written) {
        String name = written.strip();
        return equipment.name().equalsIgnoreCase(name)
                || equipment.alsoWritten().stream().anyMatch(name::equalsIgnoreCase);
    }

    private static String names(Network network) {
        List<String> all = network.equipment().stream().map(Equipment::name).toList();
        if (all.isEmpty()) return "none";
        String first = String.join(", ", all.subList(0, Math.min(LISTED, all.size())));
        return all.size() <= LISTED ? first : first + " and " + (all.size() - LISTED) + " more";
    }
}
