package asfound.network;

import asfound.model.Problem;
import java.util.List;

/**
 * The building's supply, as drawn and as found in one.
 *
 * @param equipment every equipment in natural order of its name, sources included; branch-circuit loads that are mere
 *     descriptions are not equipment
 * @param connections every connection, drawn or found, in natural order of from, device, to
 * @param devices every device, drawn or found, in natural order: the join of paper and survey that findings and coverage read
 * @param problems names that could not be told apart or could mean two things
 */
public record Network(
        List<Equipment> equipment, List<Connection> connections, List<DeviceRecord> devices, List<Problem> problems) {

    public Network {
        equipment = List.copyOf(equipment);
        connections = List.copyOf(connections);
        devices = List.copyOf(devices);
        problems = List.copyOf(problems);
    }
}
