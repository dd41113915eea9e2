package asfound.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** No pattern of a description is passed over where it would match: 100,000 random descriptions. */
class MayHoldTest {

    private static final List<String> PIECES = List.of(
            "RM",
            "204",
            "2",
            "20",
            "1",
            "ND",
            "ST",
            "TH",
            "FLOOR",
            "FLR",
            "FL",
            "LEVEL",
            "LVL",
            "SECOND",
            "GROUND",
            "B",
            "G",
            "(2)",
            "(",
            ")",
            "QTY",
            "EA",
            "X",
            "X2",
            "208Y/120",
            "V",
            "VAC",
            "VOLTS",
            "KVA",
            "KW",
            "VA",
            "W",
            "A",
            "AMPS",
            "PHASE",
            "PH",
            "POLE",
            "P",
            "HP",
            "HZ",
            "BTU",
            "GAL",
            "1.5",
            "101",
            "105",
            "1010",
            "-",
            "THRU",
            "TO",
            "THROUGH",
            ".",
            ",",
            "#",
            "/",
            "RECEPT",
            "EF-1",
            "LTG",
            "BOX",
            " ",
            " ",
            " ");

    private static void check(Pattern pattern, Predicate<String> may, String text, long seed) {
        if (pattern.matcher(text).find())
            assertThat(may).as("seed %d: %s in '%s'", seed, pattern, text).accepts(text);
    }

    @Test
    void what_a_pattern_finds_was_not_passed_over() {
        for (long seed = 0; seed < 100_000; seed++) {
            Random random = new Random(seed);
            StringBuilder text = new StringBuilder();
            int pieces = 1 + random.nextInt(8);
            for (int i = 0; i < pieces; i++) {
                text.append(PIECES.get(random.nextInt(PIECES.size())));
                if (random.nextInt(3) > 0) text.append(' ');
            }
            String description = text.toString();
            check(FixedForms.FLOOR, MayHold::floor, description, seed);
            check(FixedForms.QUANTITY, t -> MayHold.digit(t) && MayHold.quantity(t), description, seed);
            check(FixedForms.RATING, t -> MayHold.digit(t) && MayHold.rating(t), description, seed);
            check(FixedForms.ROOMS_THROUGH, t -> MayHold.digit(t) && MayHold.range(t), description, seed);
        }
    }
}
