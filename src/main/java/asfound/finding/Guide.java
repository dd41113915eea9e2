package asfound.finding;

import java.util.List;

/**
 * What one kind of finding means, for the person who gets it. Report and README print it; tests run its examples.
 *
 * @param kind the kind's word in the record format
 * @param says the fault, in one sentence
 * @param matters why it matters to whoever relies on the drawing
 * @param todo what to do
 * @param restsOn the published rules that it rests on, each with its section; paraphrased
 * @param example a small record that raises exactly this finding
 * @param nearMiss a small record much like it that raises none
 */
public record Guide(
        String kind,
        String says,
        String matters,
        String todo,
        List<String> restsOn,
        Example example,
        NearMiss nearMiss) {

    public Guide {
        restsOn = List.copyOf(restsOn);
    }

    /** Paper and survey of a small building, one fact to a line: {@code MDP/7 PANEL LP-1}, {@code MDP/7 feeds LP-2}. */
    public record Example(List<String> drawn, List<String> survey) {

        public Example {
            drawn = List.copyOf(drawn);
            survey = List.copyOf(survey);
        }
    }

    /** An example that raises no finding, and why it does not. */
    public record NearMiss(String why, Example example) {}
}
