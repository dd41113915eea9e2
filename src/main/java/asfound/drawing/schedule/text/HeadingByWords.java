package asfound.drawing.schedule.text;

import static asfound.drawing.schedule.text.HeadingSense.AMPERES;
import static asfound.drawing.schedule.text.HeadingSense.BREAKER;
import static asfound.drawing.schedule.text.HeadingSense.CIRCUIT;
import static asfound.drawing.schedule.text.HeadingSense.CURRENT;
import static asfound.drawing.schedule.text.HeadingSense.DESCRIBED;
import static asfound.drawing.schedule.text.HeadingSense.FAULT;
import static asfound.drawing.schedule.text.HeadingSense.KIND;
import static asfound.drawing.schedule.text.HeadingSense.LOAD;
import static asfound.drawing.schedule.text.HeadingSense.NAMED;
import static asfound.drawing.schedule.text.HeadingSense.NUMBER;
import static asfound.drawing.schedule.text.HeadingSense.OF_PHASE;
import static asfound.drawing.schedule.text.HeadingSense.OTHER;
import static asfound.drawing.schedule.text.HeadingSense.PANEL;
import static asfound.drawing.schedule.text.HeadingSense.PHASE;
import static asfound.drawing.schedule.text.HeadingSense.PHASE_A;
import static asfound.drawing.schedule.text.HeadingSense.PHASE_B;
import static asfound.drawing.schedule.text.HeadingSense.PHASE_C;
import static asfound.drawing.schedule.text.HeadingSense.POLES;
import static asfound.drawing.schedule.text.HeadingSense.POWER;
import static asfound.drawing.schedule.text.HeadingSense.SERVED;
import static asfound.drawing.schedule.text.HeadingSense.TESTED;
import static asfound.drawing.schedule.text.HeadingSense.WIRE;

import java.util.Map;
import java.util.Set;

/** What a heading that is no usual one says of its column, by what its words tell one by one. */
final class HeadingByWords {

    private HeadingByWords() {}

    /** Adds what the words of a heading, in lower case and each once, speak for. */
    static void weigh(Set<String> words, Map<Role, Double> out) {
        Set<HeadingSense> said = HeadingSense.of(words);
        if (said.isEmpty()) return;
        int size = words.size();
        boolean circuit = said.contains(CIRCUIT), number = said.contains(NUMBER), amps = said.contains(AMPERES);
        boolean breaker = said.contains(BREAKER), poles = said.contains(POLES);
        boolean load = said.contains(POWER) || said.contains(LOAD) && !amps;
        boolean panel = said.contains(PANEL) && size <= 3 && (number || said.contains(NAMED));
        boolean tested = said.contains(TESTED) || said.contains(CURRENT) && said.contains(FAULT);
        if (tested) out.put(Role.OTHER, 0.8);
        else if (said.contains(OF_PHASE) && size == 2 && circuit && !number) out.put(Role.DESCRIPTION, 0.8);
        else if (panel && !circuit) out.put(Role.PANEL, 0.9);
        else if (said.contains(DESCRIBED)) out.put(Role.DESCRIPTION, 0.9);
        else if (circuit && number && !breaker) out.put(Role.POSITION, 0.8);
        else if (said.contains(WIRE)) out.put(Role.WIRE, 0.8);
        else if (poles && (amps || breaker)) {
            out.put(Role.DEVICE, 0.8);
            out.put(Role.POLES, number ? 0.7 : 0.3);
        } else if (load && said.contains(PHASE_A)) out.put(Role.LOAD_A, 0.8);
        else if (load && said.contains(PHASE_B)) out.put(Role.LOAD_B, 0.8);
        else if (load && said.contains(PHASE_C)) out.put(Role.LOAD_C, 0.8);
        else if (load) out.put(Role.LOAD, 0.8);
        else if (breaker && said.contains(KIND)) out.put(Role.OTHER, 0.6);
        else if (breaker || amps && size <= 3) {
            out.put(Role.RATING, 0.7);
            out.put(Role.DEVICE, 0.6);
        } else if (poles) out.put(Role.POLES, 0.7);
        else if (said.contains(PHASE)) out.put(Role.PHASE, 0.6);
        else if (said.contains(SERVED)) out.put(Role.DESCRIPTION, 0.5);
        else if (said.contains(OTHER)) out.put(Role.OTHER, 0.6);
    }
}
