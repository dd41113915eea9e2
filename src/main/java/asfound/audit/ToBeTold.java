package asfound.audit;

import java.util.List;

/**
 * What people may rely on that the correction of one finding touches, so that they can be told.
 *
 * @param equipment equipment whose lockout records it touches: one of its points, drawn or found, is a device of the finding,
 *     a device of the finding supplies it, or it is named by the finding or held live from what the finding names
 * @param devices devices of the finding: whatever lockout record names one of them, of a machine or another load too
 * @param cards panels whose directory on the door reads otherwise when corrected
 * @param drawings files that show what is to be corrected
 */
public record ToBeTold(List<String> equipment, List<String> devices, List<String> cards, List<String> drawings) {

    public ToBeTold {
        equipment = List.copyOf(equipment);
        devices = List.copyOf(devices);
        cards = List.copyOf(cards);
        drawings = List.copyOf(drawings);
    }

    /** The finding is about untidy paper alone: no point changes that a lockout record may name. */
    public boolean leavesLockout() {
        return equipment.isEmpty() && devices.isEmpty();
    }
}
