package asfound.trust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Checked against figures that others published or that were computed apart from this code. */
class FiniteBoundTest {

    /** Exact hypergeometric tails, recomputed independently of this code with integer binomial coefficients. */
    @ParameterizedTest(name = "{0} entries, {1} traced, {2} wrong: at most {3} wrong in all")
    @CsvSource({
        "42,  5, 0, 17",
        "42,  8, 0, 11",
        "42, 10, 0,  9",
        "42, 20, 0,  4",
        "42, 30, 0,  2",
        "42, 39, 0,  1",
        "42, 40, 0,  0",
        "84, 20, 0, 10",
        "84, 40, 0,  4",
        "100, 20, 0, 12",
        "100, 45, 0, 4",
        "100, 59, 0, 3",
        "100, 95, 0, 0",
        "200, 50, 0, 10",
        "42, 20, 1,  7",
        "42,  0, 0, 42",
        "42, 42, 3,  3",
    })
    void bounds_wrong_entries_of_a_panel_at_95_percent(int population, int sampled, int wrong, int most) {
        assertThat(FiniteBound.mostWrong(population, sampled, wrong, 0.95)).isEqualTo(most);
    }

    /**
     * Sample sizes that detect at least one wrong entry with 95 % confidence: Cannon and Roe, Livestock Disease Surveys
     * (1982), table of sample sizes, as far as memory goes; recomputed independently.
     */
    @ParameterizedTest(name = "{0} entries of which {1} are wrong: {2} traces show it")
    @CsvSource({
        "100,   5, 45",
        "200,  10, 51",
        "500,  25, 56",
        "1000, 50, 57",
        "100,   1, 95",
        "200,   2, 155",
        "500,   5, 225",
        "1000, 10, 258",
        "5000, 50, 290",
    })
    void the_published_sample_sizes_detect_one_wrong_entry(int population, int wrong, int sample) {
        assertThat(FiniteBound.mostWrong(population, sample, 0, 0.95)).isLessThan(wrong);
        assertThat(FiniteBound.mostWrong(population, sample - 1, 0, 0.95)).isGreaterThanOrEqualTo(wrong);
    }

    /**
     * In a population without end the bound is the binomial's: none wrong in 300 gives about 1 in 100 (the rule of three,
     * Jovanovic and Levy, The American Statistician 51 (1997); exactly .00994, none in 59 .04951).
     */
    @ParameterizedTest
    @CsvSource({"20, .13911", "59, .04951", "300, .00994"})
    void a_very_large_population_comes_to_the_binomial_bound(int sampled, double share) {
        assertThat(FiniteBound.shareOfUntraced(10_000_000, sampled, 0, 0.95)).isCloseTo(share, within(1e-5));
    }

    /**
     * The upper ends of Clopper and Pearson's exact intervals (Biometrika 26 (1934)), which are bounds of one side at half the
     * doubt: two-sided 95 % for 0 and 3 in 10 (published with the test data of Apache Commons Math), two-sided 90 % for 4 in 20 (NIST/SEMATECH e-Handbook 7.2.4.1, from memory).
     */
    @ParameterizedTest(name = "{0} traced, {1} wrong, {2} sure on one side: {3}")
    @CsvSource({
        "10, 0, .975, .3084971078187608",
        "10, 3, .975, .6524528500599972",
        "20, 4, .95,  .401029",
    })
    void a_very_large_population_comes_to_the_published_clopper_pearson_bounds(
            int sampled, int wrong, double confidence, double share) {
        int population = 10_000_000;
        assertThat(FiniteBound.mostWrong(population, sampled, wrong, confidence) / (double) population)
                .isCloseTo(share, within(2e-6));
    }

    @Test
    void the_bound_is_a_share_of_what_was_not_traced() {
        assertThat(FiniteBound.shareOfUntraced(42, 20, 1, 0.95)).isEqualTo(6 / 22.0);
        assertThat(FiniteBound.shareOfUntraced(42, 42, 3, 0.95)).isZero();
        assertThat(FiniteBound.shareOfUntraced(42, 0, 0, 0.95)).isEqualTo(1);
    }

    /** The definition itself, with exact integer arithmetic, on every small case. */
    @Test
    void agrees_with_counting_every_sample_of_every_small_population() {
        for (int population = 1; population <= 12; population++)
            for (int sampled = 0; sampled <= population; sampled++)
                for (int wrong = 0; wrong <= sampled; wrong++)
                    assertThat(FiniteBound.mostWrong(population, sampled, wrong, 0.95))
                            .as("%d wrong of %d traced of %d", wrong, sampled, population)
                            .isEqualTo(byCounting(population, sampled, wrong));
    }

    private static int byCounting(int population, int sampled, int wrong) {
        int most = wrong;
        for (int all = wrong; all <= population - (sampled - wrong); all++) {
            long asFew = 0;
            for (int seen = 0; seen <= wrong; seen++)
                asFew += choose(all, seen) * choose(population - all, sampled - seen);
            if (asFew * 20 > choose(population, sampled)) most = all;
        }
        return most;
    }

    private static long choose(int n, int k) {
        if (k < 0 || k > n) return 0;
        long ways = 1;
        for (int i = 1; i <= k; i++) ways = ways * (n - k + i) / i;
        return ways;
    }

    @Test
    void impossible_counts_are_refused() {
        assertThatThrownBy(() -> FiniteBound.mostWrong(10, 11, 0, 0.95)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FiniteBound.mostWrong(10, 5, 6, 0.95)).isInstanceOf(IllegalArgumentException.class);
    }
}
