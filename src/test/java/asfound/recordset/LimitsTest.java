package asfound.recordset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import org.junit.jupiter.api.Test;

class LimitsTest {

    @Test
    void each_limit_can_be_set_by_its_name_and_no_other_changes() {
        Limits limits = Limits.usual();
        for (int i = 0; i < Limits.NAMES.size(); i++) limits = limits.with(Limits.NAMES.get(i), i + 1);
        assertThat(limits)
                .isEqualTo(new Limits(1 << 20, 2, Duration.ofSeconds(3), Duration.ofSeconds(4), 5, 6, 7, 8L << 20));
    }

    @Test
    void a_limit_that_does_not_exist_or_lets_nothing_through_is_refused() {
        assertThatThrownBy(() -> Limits.usual().with("colour", 3))
                .hasMessageContaining("The limits are file-mb, pages");
        assertThatThrownBy(() -> Limits.usual().with("pages", 0)).hasMessageContaining("at least 1");
    }
}
