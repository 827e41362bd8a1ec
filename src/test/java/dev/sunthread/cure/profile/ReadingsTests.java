package dev.sunthread.cure.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.verdict.Span;
import org.junit.jupiter.api.Test;

/** Readings that are refused, with words. */
class ReadingsTests {

    @Test
    void notANumberIsRefused() {
        assertThatThrownBy(() -> Readings.of(new double[] {0, 60}, new double[] {25, Double.NaN}))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("Reading 2 is not a number");
    }

    @Test
    void repeatedAndReversedTimesAreRefused() {
        assertThatThrownBy(() -> Readings.of(new double[] {0, 60, 60}, new double[] {25, 26, 80}))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("at the same time as the one before it");
        assertThatThrownBy(() -> Readings.of(new double[] {60, 0}, new double[] {25, 26}))
                .hasMessageContaining("earlier than the one before it");
    }

    @Test
    void lineIsInABandFromWhereItEntersToWhereItLeaves() {
        Segment line = new Segment(0, 20, 100, 120);
        assertThat(line.within(new Span(50, 70))).isEqualTo(new Span(30, 50));
        assertThat(line.secondsWithin(new Span(110, 200))).isCloseTo(10, within(1e-12));
        assertThat(line.secondsWithin(new Span(130, 200))).isZero();
        assertThat(new Segment(0, 50, 10, 50).secondsWithin(new Span(50, 60))).isEqualTo(10);
    }
}
