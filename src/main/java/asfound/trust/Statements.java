package asfound.trust;

import asfound.recordset.Settings.Chosen;
import asfound.trust.Coverage.Share;
import java.util.Locale;
import java.util.Optional;

/** What a coverage says about the entries that were not traced, in words, and what it does not say. */
final class Statements {

    private static final String NO_SUBSTITUTE =
            " No figure replaces a trace: isolate only by devices that were traced, and test for absence of voltage.";

    private Statements() {}

    static String of(Share building, Optional<Chosen> chosen) {
        String counts = building.traced() + " of " + entries(building.drawn(), "drawn") + " traced, " + building.wrong()
                + " of them wrong.";
        return counts + " " + aboutTheRest(building, chosen) + NO_SUBSTITUTE;
    }

    private static String aboutTheRest(Share building, Optional<Chosen> chosen) {
        int untraced = building.drawn() - building.traced();
        if (building.drawn() == 0) return "No circuit entry was read, so nothing can be said.";
        if (building.traced() == 0) return "Nothing was traced, so nothing is known of any entry.";
        if (untraced == 0) return "Every entry was traced.";
        if (building.bound95().isPresent()) {
            double share = building.bound95().getAsDouble();
            return String.format(
                    Locale.ROOT,
                    "The traced circuits were chosen at random: with 95 %% confidence at most %d of the %d untraced"
                            + " entries (%.1f %%) are wrong too. That holds only where none of them was chosen for a reason, as"
                            + " by a plan of traces.",
                    Math.round(share * untraced),
                    untraced,
                    share * 100);
        }
        String why = chosen.isPresent()
                ? "The traced circuits were chosen by someone, not at random"
                : "How the traced circuits were chosen is not recorded (record.yaml, chosen: random or targeted)";
        return why + ", so they say nothing certain about " + entries(untraced, "untraced") + ".";
    }

    private static String entries(int count, String which) {
        return count == 1 ? "the 1 " + which + " entry" : "the " + count + " " + which + " entries";
    }
}
