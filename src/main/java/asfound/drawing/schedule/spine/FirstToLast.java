package asfound.drawing.schedule.spine;

import asfound.drawing.schedule.phrase.PositionText;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Devices written with their first and last pole, {@code 7-9} or {@code 17-20}, where positions are counted one by one down a column:
 * 6 stands before it, 10 behind it, and 8 nowhere else. {@code 27 to 30} are all four. Where they are odd on one side and even on the other, {@code 7-9} is 7 and 9.
 */
final class FirstToLast {

    private static final Pattern WRITTEN = Pattern.compile("\\d{1,3}\\s*[-–—]\\s*\\d{1,3}");

    private static final Pattern IN_WORDS =
            Pattern.compile("\\d{1,3}\\s*(?:to|thru|through)\\s*\\d{1,3}", Pattern.CASE_INSENSITIVE);

    private FirstToLast() {}

    static List<Spine.Token> of(List<Spine.Token> tokens) {
        if (tokens.stream().noneMatch(t -> mayBe(t) || isInWords(t))) return List.copyOf(tokens);
        Set<Integer> all = new HashSet<>();
        tokens.forEach(t -> all.addAll(t.text().numbers()));
        boolean oneByOne = all.stream().map(n -> n % 2).distinct().count() == 2;
        return IntStream.range(0, tokens.size())
                .mapToObj(i -> isOne(tokens, i, all) || oneByOne && isRunInWords(tokens.get(i), all)
                        ? whole(tokens.get(i))
                        : tokens.get(i))
                .toList();
    }

    private static boolean mayBe(Spine.Token t) {
        List<Integer> numbers = t.text().numbers();
        return !t.text().isWay()
                && numbers.size() == 2
                && numbers.get(1) >= numbers.get(0) + 2
                && WRITTEN.matcher(t.text().raw().strip()).matches();
    }

    private static boolean isOne(List<Spine.Token> tokens, int i, Set<Integer> all) {
        if (!mayBe(tokens.get(i))) return false;
        int first = tokens.get(i).text().first();
        boolean before = i == 0 ? first == 1 : last(tokens.get(i - 1)) == first - 1;
        int last = last(tokens.get(i));
        boolean behind = i + 1 == tokens.size() || tokens.get(i + 1).text().first() == last + 1;
        return before
                && behind
                && tokens.size() > 1
                && IntStream.range(first + 1, last).noneMatch(all::contains);
    }

    private static boolean isInWords(Spine.Token t) {
        return !t.text().isWay()
                && t.text().numbers().size() == 2
                && IN_WORDS.matcher(t.text().raw().strip()).matches();
    }

    /** {@code 27 to 30}, and none of those between has a row of its own. */
    private static boolean isRunInWords(Spine.Token t, Set<Integer> all) {
        return isInWords(t) && IntStream.range(t.text().first() + 1, last(t)).noneMatch(all::contains);
    }

    private static int last(Spine.Token t) {
        List<Integer> numbers = t.text().numbers();
        return numbers.get(numbers.size() - 1);
    }

    private static Spine.Token whole(Spine.Token t) {
        List<Integer> all =
                IntStream.rangeClosed(t.text().first(), last(t)).boxed().toList();
        PositionText text = new PositionText(all, List.of(), t.text().raw());
        return new Spine.Token(text, t.phrase());
    }
}
