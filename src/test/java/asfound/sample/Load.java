package asfound.sample;

import java.util.List;
import java.util.random.RandomGenerator;

/**
 * What a branch circuit serves, and the ways in which people write it.
 *
 * @param ways writings that an electrician takes for one thing; the first is the drafter's
 */
record Load(List<String> ways) {

    private static final List<String> ROOM_WORDS = List.of("RM", "ROOM", "Rm.", "room", "rm");

    /** The n-th load of a building: no two mean one thing. */
    static Load numbered(int n, RandomGenerator random) {
        int room = 100 + n;
        String words = ROOM_WORDS.get(random.nextInt(ROOM_WORDS.size()));
        return switch (random.nextInt(7)) {
            case 0, 1 ->
                new Load(List.of(
                        "RECEPT RM " + room,
                        "Receptacles " + words + " " + room,
                        "Recept rm " + room,
                        "RECEPTACLES - ROOM " + room,
                        "Recepts, room " + room));
            case 2, 3 ->
                new Load(List.of(
                        "LTG RM " + room,
                        "Lighting " + words + " " + room,
                        "Lights room " + room,
                        "LIGHTS - RM " + room,
                        "lighting, rm " + room));
            case 4 ->
                new Load(List.of(
                        "EXHAUST FAN EF-" + n, "Exhaust fan EF-" + n, "EF-" + n + " exhaust fan", "EXH FAN EF-" + n));
            case 5 ->
                new Load(List.of(
                        "WATER HEATER WH-" + n,
                        "Water heater WH-" + n,
                        "WH-" + n + " water heater",
                        "WTR HTR WH-" + n));
            default -> new Load(List.of("AIR HANDLER AHU-" + n, "AHU-" + n, "Air handler AHU-" + n, "ahu-" + n));
        };
    }

    String drafted() {
        return ways.get(0);
    }

    String written(RandomGenerator random) {
        return ways.get(random.nextInt(ways.size()));
    }
}
