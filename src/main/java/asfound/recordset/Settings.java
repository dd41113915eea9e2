package asfound.recordset;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What {@code record.yaml} says; every key is optional.
 *
 * @param building the building's name
 * @param columns their column name to ours
 * @param same groups of names that mean one thing
 * @param distinct groups of names that never mean one thing
 * @param abbreviations a short form to its long form, for descriptions
 * @param modified the latest modification of an equipment, by its name as written
 * @param numbering how positions run where a drawing cannot tell
 * @param lifeSafety equipment named first wherever supply is lost
 * @param chosen how the traced circuits were chosen
 */
public record Settings(
        Optional<String> building,
        Map<String, String> columns,
        List<List<String>> same,
        List<List<String>> distinct,
        Map<String, String> abbreviations,
        Map<String, LocalDate> modified,
        Optional<Numbering> numbering,
        List<String> lifeSafety,
        Optional<Chosen> chosen) {

    /** Whether positions run across the two sides (odd left, even right) or down one side and then the other. */
    public enum Numbering {
        ACROSS,
        DOWN
    }

    /** Only a random choice says something about what was not traced. */
    public enum Chosen {
        RANDOM,
        TARGETED
    }

    public static Settings none() {
        return new Settings(
                Optional.empty(),
                Map.of(),
                List.of(),
                List.of(),
                Map.of(),
                Map.of(),
                Optional.empty(),
                List.of(),
                Optional.empty());
    }
}
