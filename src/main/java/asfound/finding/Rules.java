package asfound.finding;

import java.util.List;

/** The one list of rules. */
public final class Rules {

    private Rules() {}

    /**
     * Every rule, in the order in which they explain what was seen: a difference that one rule has explained is no longer
     * open to the rules after it, so a row is told once, as part of the largest event that holds it.
     */
    public static List<Rule> all() {
        return List.of(
                SurveyConflict.RULE,
                StaleObservation.RULE,
                UndocumentedSource.RULE,
                DrawingsDisagree.RULE,
                EquipmentNotDrawn.RULE,
                FeedLoop.RULE,
                ShiftedDirectory.RULE,
                CrossedFeeds.RULE,
                DuplicateFeed.RULE,
                EquipmentNotFound.RULE,
                FeedsOther.RULE,
                UndocumentedFeed.RULE,
                NothingConnected.RULE,
                DeviceDiffers.RULE,
                PositionClash.RULE,
                EntryBlank.RULE,
                VagueEntry.RULE,
                TotalsDiffer.RULE);
    }
}
