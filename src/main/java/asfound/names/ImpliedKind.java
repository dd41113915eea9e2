package asfound.names;

import asfound.model.EquipmentKind;
import java.util.regex.Pattern;

/** What a name alone says of the kind of its equipment; for use only where no record states it. */
public final class ImpliedKind {

    private static final Pattern SWITCHBOARD =
            Pattern.compile("\\b(SWITCHBOARD|SWBD|SWBRD|SWITCHGEAR|SWGR|MSB|MSWBD|MCC)(?![A-Z])");
    private static final Pattern PHOTOVOLTAIC = Pattern.compile("\\b(PV|SOLAR|PHOTOVOLTAIC)(?![A-Z])");
    private static final Pattern SERVICE = Pattern.compile("(UTILITY|ELECTRIC|INCOMING|POWER)? ?SERVICE( ?[0-9A-Z])?");

    private ImpliedKind() {}

    /** The kind that the word or the letter mark of a name says; {@link EquipmentKind#UNKNOWN} where it says none. */
    public static EquipmentKind of(String name) {
        String plain = PlainText.of(name);
        if (SERVICE.matcher(plain.replaceAll("[^\\p{Alnum}]+", " ").strip()).matches()) return EquipmentKind.UTILITY;
        return Designation.of(name)
                .kind()
                .map(family -> of(family, plain))
                .orElse(PHOTOVOLTAIC.matcher(plain).find() ? EquipmentKind.INVERTER : EquipmentKind.UNKNOWN);
    }

    private static EquipmentKind of(Family family, String plain) {
        return switch (family) {
            case BOARD -> SWITCHBOARD.matcher(plain).find() ? EquipmentKind.SWITCHBOARD : EquipmentKind.PANEL;
            case TRANSFORMER -> EquipmentKind.TRANSFORMER;
            case TRANSFER_SWITCH -> EquipmentKind.TRANSFER_SWITCH;
            case DISCONNECT -> EquipmentKind.DISCONNECT;
            case GENERATOR -> EquipmentKind.GENERATOR;
            case UTILITY -> EquipmentKind.UTILITY;
            case INVERTER -> EquipmentKind.INVERTER;
            case UPS -> EquipmentKind.UPS;
            case BATTERY -> EquipmentKind.BATTERY;
        };
    }
}
