package dev.sunthread.inbox;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A kept line is read as far as it goes. */
class LineTextTests {

    private static final String WHOLE = """
            {"actor":"op","body":{"lot":"M","components":[{"lot":"A"},{"lot":"B"}]},"id":"x","kind":"blend",\
            "occurredAt":"2026-03-10T08:30:00+01:00"}""";

    @Test
    void tellsEachTextWithItsFieldAndTheObjectItStandsIn() {
        LineText line = LineText.of(WHOLE);
        assertThat(line.kind()).contains("blend");
        assertThat(line.occurredAt()).isNotNull();
        assertThat(line.said())
                .contains(
                        new LineText.Said("lot", "/body", "M"),
                        new LineText.Said("components.lot", "/body/components/1", "B"));
    }

    @Test
    void tellsWhatStandsBehindABreakWithoutItsPlace() {
        LineText line = LineText.of(WHOLE.replace("[{\"lot\":\"A\"}", "[{\"lot\":\"A\"]"));
        assertThat(line.kind()).contains("blend");
        assertThat(line.said())
                .contains(new LineText.Said("lot", "/body", "M"), LineText.somewhere("lot", "B"))
                .doesNotContain(new LineText.Said("components.lot", "/body/components/1", "B"));
    }

    @Test
    void readsNoKindWhereTwoMayBeMeant() {
        assertThat(LineText.of("x \"kind\":\"step\" \"kind\":\"hold\"").kind()).isEmpty();
        assertThat(LineText.of("A-17").said()).isEmpty();
    }
}
