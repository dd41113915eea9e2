package asfound.isolation;

import asfound.network.Connection;
import asfound.network.Connection.Flow;
import asfound.network.Equipment;
import asfound.network.Standing;

/**
 * Which connections a question takes as there, and which way supply can pass over them.
 *
 * <p>Conductors conduct both ways: a feeder lets supply pass back where its far end is held live by another source. Inputs
 * of transfer switches and UPSs never pass back. Where drawings dispute a supply, the drawn ones are alternatives: by the
 * paper, supply is not led back through one of them into another. But one that was traced is there and conducts both ways,
 * and any of them may be there, so that what is live behind it may come back through it.
 */
enum View {
    /** What the drawings show, whatever the survey says. */
    DRAWN {
        @Override
        boolean has(Connection c) {
            return c.drawn();
        }

        @Override
        boolean has(Equipment e) {
            return e.drawn();
        }

        @Override
        boolean passesBack(Connection c) {
            return c.flow() != Flow.ONE_WAY && !(c.disputed() && c.drawn());
        }
    },
    /** Every connection that could be there: all but drawn ones that traced evidence speaks against. */
    POSSIBLE {
        @Override
        boolean has(Connection c) {
            return c.standing() != Standing.CONTRADICTED;
        }
    },
    /** The building as found: traced connections, and drawn ones that nothing disproves. */
    FOUND {
        @Override
        boolean has(Connection c) {
            return c.standing().isTraced() || (c.drawn() && c.standing() != Standing.CONTRADICTED);
        }

        @Override
        boolean passesBack(Connection c) {
            return c.flow() != Flow.ONE_WAY && !isAlternative(c);
        }
    };

    /** An arc's mark: the connection was traced. */
    static final int TRACED = 1;
    /**
     * An arc's mark: enough to say that the drawing fails. Traced; or drawn and not disproved, and passed in the direction
     * drawn. Supply led back over a connection that nobody traced is a possibility only.
     */
    static final int STRONG = 2;

    abstract boolean has(Connection c);

    boolean has(Equipment e) {
        return true;
    }

    boolean passesBack(Connection c) {
        return c.flow() != Flow.ONE_WAY;
    }

    /** One of several supplies that drawings name for one thing, and nobody traced it: it proves nothing. */
    private static boolean isAlternative(Connection c) {
        return c.disputed() && c.drawn() && !c.standing().isTraced();
    }

    static int marksForward(Connection c) {
        return (c.standing().isTraced() ? TRACED : 0) | (c.standing().isTraced() || isUndisputed(c) ? STRONG : 0);
    }

    static int marksBack(Connection c) {
        boolean asDrawn = c.flow() == Flow.TIE && isUndisputed(c);
        return c.standing().isTraced() ? TRACED | STRONG : asDrawn ? STRONG : 0;
    }

    private static boolean isUndisputed(Connection c) {
        return c.drawn() && c.standing() != Standing.CONTRADICTED && !isAlternative(c);
    }
}
