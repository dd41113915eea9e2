package asfound.drawing.schedule.text;

import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a single word of a heading tells; some words tell several things, and most words of a sheet none. */
enum HeadingSense {
    CIRCUIT("ckt", "circuit", "cct", "cir", "circ", "way", "pole"),
    NUMBER("no", "#", "number", "num", "nr"),
    AMPERES("trip", "amps", "amp", "a", "rating", "at", "size", "amperes", "in", "ampere"),
    BREAKER("breaker", "bkr", "brkr", "cb", "ocpd", "mcb", "mccb", "fuse", "ocp", "rcbo"),
    POLES("pole", "poles", "p"),
    POWER("va", "kva", "kw", "watts", "w"),
    LOAD("load"),
    PANEL("panel", "panelboard", "pnl", "board", "db", "switchboard", "loadcentre", "loadcenter"),
    NAMED("id", "name", "ref", "reference", "designation", "tag", "mark", "code"),
    DESCRIBED("description", "desc", "descr", "served", "serves", "serving", "designation", "desig", "service", "name"),
    OF_PHASE("l1", "l2", "l3", "red", "yellow", "blue"),
    TESTED("zs", "impedance", "time", "disconnection", "ohm", "ohms", "points", "method"),
    CURRENT("capacity", "current"),
    FAULT("breaking", "operating", "ka", "ma", "fault"),
    WIRE("wire", "cable", "conductor", "conduit", "csa", "awg", "mm2", "mm", "cond", "cpc"),
    PHASE_A("a", "l1"),
    PHASE_B("b", "l2"),
    PHASE_C("c", "l3"),
    KIND("type", "curve", "frame"),
    PHASE("phase", "ph"),
    SERVED("equipment", "area", "load", "feeds"),
    OTHER("type", "notes", "remarks", "code", "rcd", "ka", "frame", "length");

    private static final Map<String, Set<HeadingSense>> OF_WORD = ofWord();

    private final List<String> words;

    HeadingSense(String... words) {
        this.words = List.of(words);
    }

    private static Map<String, Set<HeadingSense>> ofWord() {
        Map<String, Set<HeadingSense>> out = new HashMap<>();
        for (HeadingSense sense : values())
            for (String word : sense.words)
                out.computeIfAbsent(word, w -> EnumSet.noneOf(HeadingSense.class))
                        .add(sense);
        return out;
    }

    /** All that some words tell. */
    static Set<HeadingSense> of(Collection<String> words) {
        Set<HeadingSense> out = EnumSet.noneOf(HeadingSense.class);
        for (String word : words) out.addAll(OF_WORD.getOrDefault(word, Set.of()));
        return out;
    }
}
