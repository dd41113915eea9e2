package asfound.finding;

import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.model.Stated;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * The phases of positions, as letters in order: three-phase A, B, C by rows from the top, single-phase A, B. Convention,
 * not code text: some gear differs.
 */
final class Phases {

    private static final Pattern OF_WAY = Pattern.compile("\\dL[123]", Pattern.CASE_INSENSITIVE);

    private Phases() {}

    /** The phases in whose load columns the drawing states a load; empty where it states none by phase. */
    static Optional<String> drawn(Circuit c) {
        if (c.loadVA().size() < 2) return Optional.empty();
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < c.loadVA().size() && i < 3; i++) {
            Stated<Double> load = c.loadVA().get(i);
            if (load.isUnreadable()) return Optional.empty();
            if (load.value().filter(v -> v > 0).isPresent()) letters.append((char) ('A' + i));
        }
        return letters.length() == c.poles() ? Optional.of(letters.toString()) : Optional.empty();
    }

    /** The phases that an entry's own positions name, {@code 3L1}, as A, B and C; empty where they name none. */
    static Optional<String> named(Circuit c) {
        if (!OF_WAY.matcher(c.label()).find()) return Optional.empty();
        TreeSet<Character> letters = new TreeSet<>();
        for (int p : c.positions()) letters.add((char) ('A' + (p - 1) % 3));
        StringBuilder text = new StringBuilder();
        letters.forEach(text::append);
        return Optional.of(text.toString());
    }

    /** By convention, for a directory whose header states its phases or a wye voltage; empty for boards numbered otherwise. */
    static Optional<String> byPosition(Directory directory, Circuit c, boolean down) {
        if (down || !c.label().isEmpty()) return Optional.empty();
        Optional<Integer> phases = phases(directory);
        if (phases.isEmpty()) return Optional.empty();
        TreeSet<Character> letters = new TreeSet<>();
        for (int p : c.positions()) letters.add(letter(p, phases.get()));
        StringBuilder text = new StringBuilder();
        letters.forEach(text::append);
        return Optional.of(text.toString());
    }

    static Optional<Integer> phases(Directory directory) {
        var header = directory.header();
        if (header.phases().value().isPresent()) return header.phases().value().filter(p -> p == 1 || p == 3);
        return header.voltage()
                .value()
                .flatMap(v -> v.lineToNeutral()
                        .map(n -> Math.abs(v.lineToLine() / (double) n - Math.sqrt(3)) < 0.05 ? 3 : 1));
    }

    /** Position 17 of a three-phase panel is on C, position 3 of a single-phase panel on B. */
    static char letter(int position, int phases) {
        int row = (position - 1) / 2;
        return (char) ('A' + row % (phases == 3 ? 3 : 2));
    }
}
