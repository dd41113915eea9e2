package asfound.recordset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import org.junit.jupiter.api.Test;

class LimitsTest {

    @Test
    void each_limit_can_be_set_by_its_name_and_no_other_changes() {
        Limits limits = Limits.usual();
        for (Limit limit : Limit.values()) limits = limits.with(limit.inWords(), limit.ordinal() + 1);
        assertThat(limits.fileBytes()).isEqualTo(1 << 20);
        assertThat(limits.pages()).isEqualTo(2);
        assertThat(limits.pageTime()).isEqualTo(Duration.ofSeconds(3));
        assertThat(limits.pageObjects()).isEqualTo(4);
        assertThat(limits.fileTime()).isEqualTo(Duration.ofSeconds(5));
        assertThat(limits.expandedBytes()).isEqualTo(6 << 20);
        assertThat(limits.rows()).isEqualTo(8);
        assertThat(limits.columns()).isEqualTo(9);
        assertThat(limits.fieldChars()).isEqualTo(10);
        assertThat(limits.amount(Limit.REPORT_MB)).isEqualTo(17L << 20);
    }

    @Test
    void a_limit_that_does_not_exist_or_lets_nothing_through_is_refused() {
        assertThatThrownBy(() -> Limits.usual().with("colour", 3))
                .hasMessageContaining("The limits are file-mb, pages");
        assertThatThrownBy(() -> Limits.usual().with("pages", 0)).hasMessageContaining("at least 1");
    }
}
