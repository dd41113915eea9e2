package asfound.sample;

import asfound.model.EquipmentKind;
import java.util.List;
import java.util.Locale;
import java.util.random.RandomGenerator;

/** Names written in the ways in which drafters and surveyors write them. */
final class Writings {

    private Writings() {}

    /** {@code LP-2A}, {@code LP2A}, {@code Panel LP-2A}, {@code lp 2a}; never one that could mean something else. */
    static String of(Board b, RandomGenerator random) {
        String name = b.name;
        String mark = name.replaceAll("-.*", ""), number = name.replaceFirst("^[^-]*-?", "");
        List<String> forms = new java.util.ArrayList<>(List.of(name, name, name.toLowerCase(Locale.ROOT)));
        if (!number.isEmpty()) {
            forms.add(mark + number);
            forms.add(mark + " " + number);
            forms.add(mark + "_" + number);
        }
        if (b.kind == EquipmentKind.PANEL) {
            forms.add("Panel " + name);
            forms.add("PNL " + name);
            forms.add("PANEL " + mark + number);
        }
        if (b.kind == EquipmentKind.TRANSFORMER) {
            forms.add("XFMR " + name);
            forms.add("Transformer " + name);
        }
        return forms.get(random.nextInt(forms.size()));
    }

    /** As a directory's entry names it. */
    static String entry(Board b, RandomGenerator random) {
        return switch (b.kind) {
            case PANEL -> random.nextBoolean() ? "PANEL " + b.name : "PNL " + b.name;
            case TRANSFORMER -> random.nextBoolean() ? "XFMR " + b.name : b.name;
            default -> b.name;
        };
    }

    /** A 'fed from' with a device. */
    static String supply(Slot s, RandomGenerator random) {
        return switch (random.nextInt(3)) {
            case 0 -> s.in.name + " CKT " + s.key();
            case 1 -> s.in.name + "/" + s.key();
            default -> s.in.name + " CKT " + s.circuit();
        };
    }
}
