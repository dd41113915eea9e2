package asfound.model;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/**
 * One row of a field survey: what a person saw at one device.
 *
 * @param panel the equipment that holds the device
 * @param circuit the device; blank where the connection has none
 * @param relation what was seen between the device and {@code found}
 * @param found designation or description of what is at the other end; blank for {@code nothing} and {@code no device}
 * @param kind the kind of {@code found} where the row gives it
 * @param method how it was seen
 * @param wire the conductor as written
 * @param date the day of the observation
 * @param by who observed; empty where not given
 */
public record Observation(
        Stated<String> panel,
        Stated<CircuitRef> circuit,
        Relation relation,
        Stated<String> found,
        EquipmentKind kind,
        Method method,
        Stated<Integer> poles,
        Stated<Integer> ratingA,
        Stated<Voltage> voltage,
        Stated<String> phase,
        Stated<String> wire,
        Stated<String> location,
        String by,
        Stated<LocalDate> date,
        String note,
        String photo,
        Place.InRow place) {

    /** What was seen between a device and the other end. */
    public enum Relation {
        FEEDS("feeds"),
        FED_BY("fed by"),
        DOES_NOT_FEED("does not feed"),
        NOTHING("nothing"),
        NO_DEVICE("no device");

        private final String word;

        Relation(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        /** The relation that a word names; {@code feeds} for a blank; empty where the word is not known. */
        public static Optional<Relation> of(String text) {
            String t = text.strip()
                    .toLowerCase(Locale.ROOT)
                    .replaceAll("[^a-z]+", " ")
                    .strip();
            return Optional.ofNullable(
                    switch (t) {
                        case "", "feeds", "feed", "feeding", "supplies", "supplying", "serves", "to" -> FEEDS;
                        case "fed by",
                                "is fed by",
                                "fed from",
                                "is fed from",
                                "backfed by",
                                "backfed from",
                                "back fed by",
                                "supplied by",
                                "supplied from",
                                "from" -> FED_BY;
                        case "does not feed",
                                "doesn t feed",
                                "doesnt feed",
                                "not feeding",
                                "not feed",
                                "does not supply",
                                "does not serve",
                                "no longer feeds",
                                "not feeds" -> DOES_NOT_FEED;
                        case "nothing",
                                "none",
                                "nothing connected",
                                "nothing found",
                                "no load",
                                "not connected",
                                "spare",
                                "unused",
                                "disconnected" -> NOTHING;
                        case "no device", "no breaker", "empty", "empty space", "space", "missing" -> NO_DEVICE;
                        default -> null;
                    });
        }
    }

    /** How something was seen. Only the first three trace a connection; a label proves nothing. */
    public enum Method {
        OPENED("opened"),
        TONE("tone"),
        VISUAL("visual"),
        LABEL("label"),
        UNKNOWN("");

        private final String word;

        Method(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        /** The method is able to prove a connection. A blank or unknown method proves nothing. */
        public boolean traces() {
            return this == OPENED || this == TONE || this == VISUAL;
        }

        /** The method that a word names; empty where the word is not known. A blank is {@link #UNKNOWN}. */
        public static Optional<Method> of(String text) {
            String t = text.strip()
                    .toLowerCase(Locale.ROOT)
                    .replaceAll("[^a-z]+", " ")
                    .strip();
            return Optional.ofNullable(
                    switch (t) {
                        case "" -> UNKNOWN;
                        case "opened", "open", "operated", "switched off", "opened and tested", "switched" -> OPENED;
                        case "tone", "tracer", "toner", "circuit tracer", "signal", "traced", "tone traced" -> TONE;
                        case "visual", "visually", "by eye", "followed by eye", "sight" -> VISUAL;
                        case "label", "labelled", "labeled", "directory", "read", "nameplate", "tag" -> LABEL;
                        default -> null;
                    });
        }
    }
}
