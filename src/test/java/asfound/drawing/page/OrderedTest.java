package asfound.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class OrderedTest {

    @Test
    void numbers_are_put_in_the_order_of_their_things_and_equal_ones_stay_as_they_stood() {
        Random random = new Random(1);
        for (int n = 0; n < 300; n++) {
            int[] things = IntStream.range(0, n)
                    .map(i -> random.nextInt(1 + random.nextInt(20)))
                    .toArray();
            int[] numbers = IntStream.range(0, n).toArray();
            List<Integer> expected = IntStream.of(numbers)
                    .boxed()
                    .sorted(Comparator.comparing(i -> things[i]))
                    .toList();
            Ordered.sort(numbers, n, (a, b) -> Integer.compare(things[a], things[b]));
            assertThat(IntStream.of(numbers).boxed().toList()).isEqualTo(expected);
        }
    }
}
