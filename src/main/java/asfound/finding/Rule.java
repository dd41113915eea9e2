package asfound.finding;

import java.util.List;

/**
 * One kind of finding: what it means, and how it is found.
 *
 * @param guide what it means
 * @param finder how it is found
 */
public record Rule(Guide guide, Finder finder) {

    /** Reads the facts, leaves them as they are, and gives the findings in the order of the facts. */
    @FunctionalInterface
    public interface Finder {
        List<? extends Finding> find(Facts facts);
    }

    public String kind() {
        return guide.kind();
    }
}
