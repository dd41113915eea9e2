package asfound.drawing.page;

import asfound.model.Box;
import asfound.model.Place;
import java.util.List;
import java.util.function.Function;

/**
 * One page, or one sheet of a workbook, in the frame in which its text runs from left to right.
 *
 * @param width of the frame in points
 * @param height of the frame in points
 * @param words from top to bottom and left to right
 * @param askew the texts that run neither across nor along it, as stamps do
 * @param across the horizontal rules
 * @param down the vertical rules
 * @param places from a box of this frame to its place in the file
 */
public record Sheet(
        double width,
        double height,
        List<Word> words,
        List<Word> askew,
        Rules across,
        Rules down,
        Function<Box, Place> places) {

    public Sheet {
        words = List.copyOf(words);
        askew = List.copyOf(askew);
    }

    /** One on which no text runs askew. */
    public Sheet(double width, double height, List<Word> words, Rules across, Rules down, Function<Box, Place> places) {
        this(width, height, words, List.of(), across, down, places);
    }

    /** The same sheet with others of its words. */
    public Sheet with(List<Word> some) {
        return new Sheet(width, height, some, askew, across, down, places);
    }

    public Place place(Box box) {
        return places.apply(box);
    }

    /** Whether it was laid out from the cells of a table, and not read from a page. */
    public boolean hasCells() {
        return !words.isEmpty() && place(words.get(0).box()) instanceof Place.InRow;
    }
}
