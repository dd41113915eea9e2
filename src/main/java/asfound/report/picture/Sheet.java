package asfound.report.picture;

import asfound.network.Connection;
import asfound.network.Equipment;
import java.util.List;

/**
 * One sheet of the one-line before it is laid out.
 *
 * @param number its number, from 1
 * @param title what it shows, in words
 * @param equipment the equipment drawn here in full; every equipment stands on exactly one sheet
 * @param connections every connection that touches the sheet's equipment. One that comes from another sheet is drawn in
 *     full where it arrives, and counted in a reference where it leaves
 */
record Sheet(int number, String title, List<Equipment> equipment, List<Connection> connections) {

    Sheet {
        equipment = List.copyOf(equipment);
        connections = List.copyOf(connections);
    }
}
