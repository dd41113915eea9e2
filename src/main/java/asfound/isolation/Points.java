package asfound.isolation;

import java.util.List;

/**
 * The least set of devices, nearest to one equipment, that parts it from every source in one view.
 *
 * @param devices the devices' nodes, sorted; empty where there is no supply or nothing parts it
 * @param supplied some source other than the equipment itself reaches it
 * @param parted opening the devices leaves no way from any source; false where a source is joined without a device
 * @param others other sets as small exist, further from the equipment
 * @param ways for each device, how supply passes it on its way to the equipment
 */
record Points(List<Integer> devices, boolean supplied, boolean parted, boolean others, List<Way> ways) {

    /**
     * A connection through one of the devices.
     *
     * @param end the bus at the equipment's end of the connection
     */
    record Way(int device, int connection, int end) {}

    static Points none(boolean supplied) {
        return new Points(List.of(), supplied, !supplied, false, List.of());
    }
}
