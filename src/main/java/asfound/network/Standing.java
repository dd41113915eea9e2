package asfound.network;

/** How a connection stands between paper and survey: the one answer to 'is this traced?'. */
public enum Standing {
    /** Drawn and traced as drawn. */
    CONFIRMED,
    /** Traced, and no drawing shows it. */
    FOUND,
    /** Drawn, and nothing traced it or spoke against it. A label does not change that. */
    UNTRACED,
    /** Drawn, and traced evidence speaks against it: its device feeds something else or nothing, or was seen not to feed it. */
    CONTRADICTED,
    /** Observations of it cannot all be true. */
    IN_CONFLICT,
    /** Seen only before the latest modification of the equipment. */
    STALE;

    /** A person traced it, nothing speaks against that, and nothing has changed since. */
    public boolean isTraced() {
        return this == CONFIRMED || this == FOUND;
    }
}
