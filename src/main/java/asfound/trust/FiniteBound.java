package asfound.trust;

import org.apache.commons.statistics.distribution.HypergeometricDistribution;

/**
 * The upper bound on wrong entries in a finite population of which some were drawn at random without replacement: an
 * exact one-sided bound from the hypergeometric distribution.
 *
 * @see <a href="https://www.itl.nist.gov/div898/handbook/">NIST/SEMATECH e-Handbook of Statistical Methods</a>, for
 *     acceptance sampling from a finite lot
 */
final class FiniteBound {

    private FiniteBound() {}

    /**
     * The most wrong entries among all {@code population} that the sample does not rule out.
     *
     * @param population how many entries there are
     * @param sampled how many of them were traced, chosen at random
     * @param wrong how many of the traced were wrong
     * @param confidence between 0 and 1, such as 0.95
     * @return the largest D for which {@code wrong} or fewer wrong ones in such a sample are likelier than 1 - confidence
     */
    static int mostWrong(int population, int sampled, int wrong, double confidence) {
        if (sampled < 0 || sampled > population || wrong < 0 || wrong > sampled)
            throw new IllegalArgumentException(wrong + " wrong of " + sampled + " traced of " + population);
        // The chance falls as D grows, so the bound is found by halving.
        int possible = wrong, impossible = population - (sampled - wrong) + 1;
        while (impossible - possible > 1) {
            int middle = (possible + impossible) >>> 1;
            double chance =
                    HypergeometricDistribution.of(population, middle, sampled).cumulativeProbability(wrong);
            if (chance > 1 - confidence) possible = middle;
            else impossible = middle;
        }
        return possible;
    }

    /** The bound as a share of the entries that were not traced; 0 where none is left. */
    static double shareOfUntraced(int population, int sampled, int wrong, double confidence) {
        int untraced = population - sampled;
        if (untraced == 0) return 0;
        return (mostWrong(population, sampled, wrong, confidence) - wrong) / (double) untraced;
    }
}
