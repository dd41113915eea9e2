package asfound.network;

import java.util.Optional;

/**
 * What a drawing or an observation says is at the other end of a device.
 *
 * @param text as written, tidied
 * @param equipment the equipment's one name; empty where the text describes a load that is not named equipment
 */
public record Served(String text, Optional<String> equipment) {

    /** The one name where there is one, else the text. */
    public String inWords() {
        return equipment.orElse(text);
    }
}
