package asfound.drawing.page;

import java.util.List;

/**
 * What a page of a drawing holds.
 *
 * @param number from 1
 * @param width as displayed, in points
 * @param height as displayed, in points
 * @param sheets one for each direction in which enough of its text runs, the direction of most of it first
 * @param letters how many letters it has
 * @param covered how many more lie under filled areas, where nobody sees them
 * @param undrawn how many of them are not drawn, as the text that a machine read from a picture and laid over it
 * @param unknown how many of them a font does not tell
 * @param imageShare the share of the page that images cover
 * @param outlines how many small curved shapes are drawn, as text drawn in outlines is
 * @param tooDeep forms lie within each other deeper than they are followed: what they show is not in here
 * @param lost what of its content could not be unpacked or followed, in words: what it shows may be missing or wrong
 */
public record Page(
        int number,
        double width,
        double height,
        List<Sheet> sheets,
        int letters,
        int covered,
        int undrawn,
        int unknown,
        double imageShare,
        int outlines,
        boolean tooDeep,
        List<String> lost) {

    public Page {
        sheets = List.copyOf(sheets);
        lost = List.copyOf(lost);
    }
}
