package dev.sunthread.production;

import static dev.sunthread.testing.Workshop.stepped;
import static dev.sunthread.testing.Workshop.unit;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.kernel.RuleBroken;
import dev.sunthread.ledger.Acceptance;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Manner;
import dev.sunthread.ledger.body.Unreadable;
import dev.sunthread.testing.Interlock;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Workshop;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A released list says which rules a person may sign to be passed; no other rule can be. */
@SunthreadTest
class RulePassTests {

    private static final String ORDER = "earlier-operations-are-done-before-the-next";

    private static final String ONCE = "operation-is-done-once";

    @Autowired
    Door door;

    private Workshop workshop;

    @BeforeEach
    void released() {
        workshop = Workshop.released(door);
        workshop.plant()
                .say(
                        "route",
                        "1 00:00",
                        Map.of(
                                "item",
                                "RCV",
                                "revision",
                                "A",
                                "operations",
                                List.of(
                                        Map.of("operation", "bond", "name", "Bond"),
                                        Map.of("operation", "coat", "name", "Coat"),
                                        Map.of("operation", "inspect", "name", "Inspect"))));
        workshop.plant().say("soft-rules", "1 00:00", Map.of("revision", "A", "rules", List.of(ORDER)));
    }

    @Test
    void whatIsSignedIsDoneWithAFindingThatSaysWho() {
        sign("09:00", ORDER, "coat", "RCV R1");
        Acceptance done = workshop.ask("step", "09:10", stepped("coat", "RCV R1"));
        assertThat(done.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.rule()).isEqualTo(ORDER);
            assertThat(finding.sentence())
                    .isEqualTo("Unit RCV R1 has no record of bond, which its route has before this; passed by op-1:"
                            + " trial of a bare receiver");
        });
    }

    @Test
    void aPassIsGoodForItsUnitAndOperation() {
        sign("09:00", ORDER, "coat", "RCV R1");
        refused("09:10", "coat", "RCV R2");
        refused("09:10", "inspect", "RCV R1");
        refused("08:50", "coat", "RCV R1");
        refused("09:10", "coat", "RCV R1", "RCV R2");
    }

    @Test
    void anOperationIsDoneAgainOnceForEachSignature() {
        workshop.plant().say("soft-rules", "2 00:00", Map.of("revision", "B", "rules", List.of(ONCE)));
        workshop.ask("step", "09:00", stepped("bond", "RCV R1"));
        refused("09:10", "bond", "RCV R1");
        sign("09:20", ONCE, "bond", "RCV R1");
        refused("09:15", "bond", "RCV R1");
        assertThat(workshop.ask("step", "09:30", stepped("bond", "RCV R1")).findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.sentence())
                        .isEqualTo("Unit RCV R1 has bond recorded already; passed by op-1: trial of a bare receiver"));
        refused("09:40", "bond", "RCV R1");
    }

    @Test
    void ofWhatWasToldOnlyASignedRepetitionIsNoted() {
        workshop.plant().say("soft-rules", "2 00:00", Map.of("revision", "B", "rules", List.of(ONCE)));
        workshop.step("09:00", "bond", "RCV R1");
        assertThat(workshop.step("09:10", "bond", "RCV R1").findings()).isEmpty();
        sign("09:20", ONCE, "bond", "RCV R1");
        assertThat(Workshop.rules(workshop.step("09:30", "bond", "RCV R1"))).containsExactly(ONCE);
        assertThat(workshop.step("09:40", "bond", "RCV R1").findings()).isEmpty();
    }

    @Test
    void aVoidedPassIsNone() {
        sign("09:00", ORDER, "coat", "RCV R1");
        workshop.plant().undo("09:05", workshop.plant().lastId());
        refused("09:10", "coat", "RCV R1");
    }

    @Test
    void onlyReleasedRulesArePassed() {
        Map<String, Object> expiry = pass("lot-is-not-expired", null);
        expiry.put("lots", List.of("A"));
        new Interlock(workshop.plant()).of("only-released-rules-are-passed", "rule-pass", "09:00", expiry);
        workshop.plant().say("soft-rules", "2 00:00", Map.of("revision", "B"));
        sign("09:00", ORDER, "coat", "RCV R1");
        refused("09:10", "coat", "RCV R1");
    }

    @Test
    void aPassThatWasSignedBeforeTheListNamedItIsNone() {
        Map<String, Object> early = pass("lot-is-not-expired", null);
        early.put("lots", List.of("A"));
        workshop.plant().say("rule-pass", "09:00", early);
        workshop.plant().say("soft-rules", "09:30", Map.of("revision", "B", "rules", List.of("lot-is-not-expired")));
        expire("A");
        assertThatThrownBy(() -> charge("10:00")).isInstanceOf(RuleBroken.class).hasMessage("Lot A had expired");
        workshop.plant().say("rule-pass", "10:10", early);
        assertThat(charge("10:20").findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.sentence())
                        .isEqualTo("Lot A had expired; passed by op-1: trial of a bare receiver"));
    }

    @Test
    void nobodyPassesHoldsAndIdentity() {
        for (String hard : List.of("unit-is-not-on-hold", "lot-is-not-on-hold", "serial-is-given-once")) {
            assertThatThrownBy(() -> sign("09:00", hard, "coat", "RCV R1"))
                    .isInstanceOf(Unreadable.class)
                    .hasMessageContaining("body.rule: is not one of");
            assertThatThrownBy(() -> workshop.plant()
                            .say("soft-rules", "2 00:00", Map.of("revision", "B", "rules", List.of(hard))))
                    .isInstanceOf(Unreadable.class);
        }
    }

    private void expire(String lot) {
        workshop.plant()
                .say(
                        "receipt",
                        "1 06:00",
                        Map.of(
                                "lot",
                                lot,
                                "item",
                                "ADH",
                                "quantity",
                                "1",
                                "unitOfMeasure",
                                "g",
                                "expiresAt",
                                "2026-03-10T07:00:00+01:00"));
    }

    private Acceptance charge(String time) {
        return workshop.ask("charge", time, Map.of("lot", "A", "station", "BOND", "position", "V1"));
    }

    private void sign(String time, String rule, String operation, String unit) {
        Map<String, Object> body = pass(rule, operation);
        body.put("units", List.of(unit(unit)));
        workshop.plant().say("rule-pass", time, body);
    }

    private static Map<String, Object> pass(String rule, @Nullable String operation) {
        Map<String, Object> body = new TreeMap<>(Map.of("rule", rule, "why", "trial of a bare receiver"));
        if (operation != null) {
            body.put("operation", operation);
        }
        return body;
    }

    private void refused(String time, String operation, String... units) {
        assertThatThrownBy(() -> workshop.plant().say("step", time, stepped(operation, units), Manner.DO))
                .isInstanceOf(RuleBroken.class);
    }
}
