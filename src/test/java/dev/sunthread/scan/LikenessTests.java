package dev.sunthread.scan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.kernel.SerialPattern;
import org.junit.jupiter.api.Test;

/** In what labels differ, and what serials look like. */
class LikenessTests {

    @Test
    void tellsInWhatTwoLabelsDiffer() {
        assertThat(Likeness.between("rc-1", "RC-1")).containsExactly(Likeness.CASE);
        assertThat(Likeness.between("RC-O1", "RC-01")).containsExactly(Likeness.NOUGHT_AND_O);
        assertThat(Likeness.between("RC-l1", "RC-11")).contains(Likeness.ONE_AND_LETTERS);
        assertThat(Likeness.between("RC-007", "RC-7")).containsExactly(Likeness.LEADING_NOUGHTS);
        assertThat(Likeness.between("RC7", "RC-7")).containsExactly(Likeness.MARKS);
        assertThat(Likeness.between("RC-7", "RC-7")).isEmpty();
    }

    @Test
    void aPatternReadsCountsAndEnds() {
        SerialPattern pattern = new SerialPattern("W@-##x");
        assertThat(pattern.matches("WA-07x")).isTrue();
        assertThat(pattern.matches("Wa-07x")).isFalse();
        assertThat(pattern.counts()).isFalse();
        SerialPattern counting = new SerialPattern("W-##x");
        assertThat(counting.serial(7)).contains("W-07x");
        assertThat(counting.number("W-07x")).contains(7L);
        assertThat(counting.serial(100)).isEmpty();
        assertThat(new SerialPattern("##-##").counts()).isFalse();
        assertThat(new SerialPattern("A.(#)").expression()).isEqualTo("^A\\.\\([0-9]\\)$");
    }
}
