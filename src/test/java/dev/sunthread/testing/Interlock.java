package dev.sunthread.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.sunthread.kernel.RuleBroken;
import dev.sunthread.ledger.Acceptance;
import dev.sunthread.ledger.Manner;
import dev.sunthread.ledger.RaisedFinding;
import java.util.Map;

/** Sees a rule refuse what is asked to be done, and note a finding beside the same thing told afterwards. */
public record Interlock(Plant plant) {

    /** Asks for it, then tells it; gives the finding, which says what the refusal said. */
    public RaisedFinding of(String rule, String kind, String time, Map<String, Object> body) {
        RuleBroken refused = catchThrowableOfType(RuleBroken.class, () -> plant.say(kind, time, body, Manner.DO));
        assertThat(refused).as("nothing refused " + kind).isNotNull();
        assertThat(refused.rule()).isEqualTo(rule);
        assertThat(refused.remedy()).isNotBlank();
        Acceptance told = plant.say(kind, time, body);
        assertThat(told.findings()).extracting(RaisedFinding::rule).contains(rule);
        RaisedFinding finding = told.findings().stream()
                .filter(one -> one.rule().equals(rule))
                .findFirst()
                .orElseThrow();
        assertThat(finding.sentence()).isEqualTo(refused.reason());
        return finding;
    }

    /** Asks for it and sees it accepted without a finding. */
    public void none(String kind, String time, Map<String, Object> body) {
        assertThat(plant.say(kind, time, body, Manner.DO).findings()).isEmpty();
    }
}
