package asfound.finding;

import asfound.model.Natural;
import asfound.model.Observation;
import asfound.model.Place;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One difference between paper and building, said once as the event that happened, with both sides. Each kind is a record
 * in the file of the rule that finds it; {@link Rules#all()} lists them.
 */
public sealed interface Finding
        permits CrossedFeeds,
                DeviceDiffers,
                DrawingsDisagree,
                DuplicateFeed,
                EntryBlank,
                EquipmentNotDrawn,
                EquipmentNotFound,
                FeedLoop,
                FeedsOther,
                NothingConnected,
                PositionClash,
                ShiftedDirectory,
                StaleObservation,
                SurveyConflict,
                TotalsDiffer,
                UndocumentedFeed,
                UndocumentedSource,
                VagueEntry {

    /** Worst first, then in natural order of equipment and device, then by kind. */
    Comparator<Finding> WORST_FIRST = Comparator.comparing(Finding::severity)
            .thenComparing(Finding::equipment, Natural.ORDER)
            .thenComparing(f -> f.circuit().orElse(""), Natural.ORDER)
            .thenComparing(Finding::kind)
            .thenComparing(Finding::id);

    /** One further device or equipment of the same event. */
    record Part(String equipment, Optional<String> circuit) {

        public static Part of(String equipment) {
            return new Part(equipment, Optional.empty());
        }

        public static Part of(String equipment, String circuit) {
            return new Part(equipment, Optional.of(circuit));
        }

        /** {@code MDP/7}, or the equipment alone. */
        public String inWords() {
            return equipment + circuit.map(c -> "/" + c).orElse("");
        }
    }

    /** What happened, in the form that every kind shares. */
    Event event();

    /** What this kind of finding means and what to do about it. */
    Guide guide();

    /** The kind's word in the record format: {@code crossed-feeds}. */
    default String kind() {
        return guide().kind();
    }

    default Severity severity() {
        return event().severity();
    }

    /** The equipment that it is about, by its one name. */
    default String equipment() {
        return event().about().equipment();
    }

    /** The device: its lowest position or its name; empty where it is about the equipment as a whole. */
    default Optional<String> circuit() {
        return event().about().circuit();
    }

    /** {@code feeds-other at LP-1/7}: what it is and where, for a list in one line. */
    default String inShort() {
        return kind() + " at " + equipment() + circuit().map(c -> "/" + c).orElse("");
    }

    /** The further parts of the same event, in order. */
    default List<Part> others() {
        return event().others();
    }

    /** What the drawings say, in words. */
    default String drawn() {
        return event().drawn();
    }

    /** What was found, in words. */
    default String found() {
        return event().found();
    }

    /** Where the drawings say it. */
    default List<Place> drawings() {
        return event().drawings();
    }

    /** The observations that it rests on. */
    default List<Observation> evidence() {
        return event().evidence();
    }

    /** The event in one or two sentences, in the words of the person who will act on it. */
    default String message() {
        return event().message();
    }

    /** What to do about the drawing, as one sentence. */
    default String correction() {
        return event().correction();
    }

    /** The exact changes to the drawings; empty where a person must look first. */
    default List<Correction> corrections() {
        return event().corrections();
    }

    /** It tells what the devices that it names were traced to: no later rule tells that again. */
    default boolean explainsFeeds() {
        return true;
    }

    /**
     * Identity across runs: kind and place (equipment, device and the event's further parts), never wording; a short
     * hash. The same facts give the same id.
     */
    default String id() {
        return FindingId.of(this);
    }

    /**
     * What it rests on, as a short hash: both sides in words and what every observation saw, not where these stand in
     * their files. An acceptance holds only as long as this is the same.
     */
    default String facts() {
        return FindingId.factsOf(this);
    }
}
