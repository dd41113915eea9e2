package asfound.network;

import asfound.model.Place;
import java.util.Optional;

/**
 * One statement of a drawing that one equipment is supplied from another.
 *
 * @param fromDevice the device in {@code from}, where the drawing gives one
 * @param toDevice the device in {@code to} through which its supply comes in, where the drawing gives one
 * @param account who says it: claims of one account complete one another, claims of two may disagree
 */
record Claim(
        String from,
        Optional<Device> fromDevice,
        Optional<Device> toDevice,
        String to,
        String account,
        boolean tie,
        boolean normallyOpen,
        Place place) {

    /** The account of all directories' entries together. */
    static final String DIRECTORIES = "directories";
    /** The account of all feeder rows together. */
    static final String ONE_LINE = "one-line";

    /** The claims can both be true of one supply. */
    boolean agreesWith(Claim other) {
        return from.equals(other.from) && agree(fromDevice, other.fromDevice) && agree(toDevice, other.toDevice);
    }

    private static boolean agree(Optional<Device> a, Optional<Device> b) {
        return a.isEmpty() || b.isEmpty() || a.equals(b);
    }
}
