package asfound.model;

import java.util.List;

/**
 * What one-line exports state.
 *
 * @param feeders one for each row of a feeder table
 * @param equipment one for each row of an equipment table
 */
public record OneLine(List<Feeder> feeders, List<Listed> equipment) {

    public OneLine {
        feeders = List.copyOf(feeders);
        equipment = List.copyOf(equipment);
    }

    /**
     * A connection drawn from one piece of equipment to another.
     *
     * @param from the supplying equipment
     * @param device the device in {@code from}; blank where the connection cannot be opened
     * @param to the equipment supplied
     * @param normallyOpen drawn open; it can be closed
     * @param tie between two buses, either of which may feed the other
     * @param sheet the drawing's sheet as written; empty where none is given
     */
    public record Feeder(
            Stated<String> from,
            Stated<CircuitRef> device,
            Stated<String> to,
            Stated<Integer> ratingA,
            Stated<Integer> poles,
            Stated<Voltage> voltage,
            Stated<String> wire,
            Stated<Double> lengthFt,
            boolean normallyOpen,
            boolean tie,
            String sheet,
            String note,
            Place place) {}

    /**
     * A piece of equipment as listed.
     *
     * @param mainA rating of its main device; blank for main lugs only
     * @param fedFrom its supply as written, equipment and where given device
     */
    public record Listed(
            Stated<String> name,
            EquipmentKind kind,
            Stated<Voltage> voltage,
            Stated<Integer> busA,
            Stated<Integer> mainA,
            Stated<String> fedFrom,
            Stated<String> location,
            String sheet,
            String note,
            Place place) {}
}
