package asfound.network;

import asfound.model.Natural;

/**
 * Something that can be opened: a breaker, switch or fuse in a piece of equipment.
 *
 * @param in the equipment that holds it, by its one name
 * @param key its lowest position, or its name as the drawings write it (as the survey does where they do not)
 */
public record Device(String in, String key) implements Comparable<Device> {

    /** As reports and people write it: {@code MDP/7}. */
    public String label() {
        return in + "/" + key;
    }

    @Override
    public int compareTo(Device other) {
        int byEquipment = Natural.ORDER.compare(in, other.in);
        return byEquipment != 0 ? byEquipment : Natural.ORDER.compare(key, other.key);
    }

    @Override
    public String toString() {
        return label();
    }
}
