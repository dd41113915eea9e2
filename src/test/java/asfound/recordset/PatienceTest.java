package asfound.recordset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class PatienceTest {

    private static final Duration LONG = Duration.ofMinutes(1);

    @Test
    void work_that_ends_gives_what_it_made() throws Exception {
        assertThat(Patience.within(LONG, () -> "done")).hasValue("done");
    }

    @Test
    void what_the_work_throws_comes_through() {
        assertThatThrownBy(() -> Patience.within(LONG, () -> {
                    throw new IOException("torn");
                }))
                .isInstanceOf(IOException.class)
                .hasMessage("torn");
        assertThatThrownBy(() -> Patience.within(LONG, () -> {
                    throw new StackOverflowError();
                }))
                .isInstanceOf(StackOverflowError.class);
    }

    @Test
    void work_without_end_is_given_up_and_ends_at_its_next_check() throws Exception {
        CountDownLatch ended = new CountDownLatch(1);
        assertThat(Patience.within(Duration.ofMillis(1), () -> {
                    try {
                        while (true) Patience.check();
                    } finally {
                        ended.countDown();
                    }
                }))
                .isEmpty();
        assertThat(ended.await(1, TimeUnit.MINUTES)).isTrue();
    }
}
