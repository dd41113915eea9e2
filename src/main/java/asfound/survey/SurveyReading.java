package asfound.survey;

import asfound.model.Observation;
import asfound.model.Problem;
import java.util.List;

/**
 * What was read from one survey file.
 *
 * @param observations one for each row that says something, in order of the rows
 * @param problems rows and fields that could not be read
 * @param rows how many rows the file has below its headers
 */
public record SurveyReading(List<Observation> observations, List<Problem> problems, int rows) {

    public SurveyReading {
        observations = List.copyOf(observations);
        problems = List.copyOf(problems);
    }
}
