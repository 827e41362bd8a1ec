package dev.sunthread.station;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.access.Role;
import dev.sunthread.ledger.Door;
import dev.sunthread.station.RulePasses.Signature;
import dev.sunthread.station.Verdict.Outcome;
import dev.sunthread.testing.KnownPeople;
import dev.sunthread.testing.SunthreadTest;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A rule that refuses at a station and may be passed is signed for there; so is an operation that is done again. */
@SunthreadTest
class PassTests {

    private static final Signature SIGNED = new Signature("BADGE-qe-1", KnownPeople.PIN, "lifted at one corner");

    @Autowired
    Door door;

    @Autowired
    ApplicationContext context;

    @Autowired
    Bench bench;

    @Autowired
    RulePasses passes;

    @Autowired
    JdbcClient jdbc;

    private LineFloor floor;
    private int scans;

    @BeforeEach
    void release() {
        floor = LineFloor.released(door);
        KnownPeople people = new KnownPeople(context);
        people.add("op-1", Role.OPERATOR);
        people.add("qe-1", Role.QUALITY);
        soft("operation-is-done-once", "lot-is-not-expired");
    }

    private void soft(String... rules) {
        floor.plant().say("soft-rules", "1 00:00", Map.of("revision", "A", "rules", List.of(rules)));
    }

    private Verdict scan(String station, String... texts) {
        Verdict said = Verdict.accepted(Say.of("nothing"));
        for (String text : texts) {
            said = bench.scan(station, "op-1", new Scan("scan-" + ++scans, text, OffsetDateTime.now(), false));
        }
        return Objects.requireNonNull(said);
    }

    private List<String> names(String sql) {
        return jdbc.sql(sql).query(String.class).list();
    }

    @Test
    void anOperatorAloneIsRefusedWithWhatToDo() {
        floor.bonded("R0001");
        assertThat(scan("GLUE", "R0001").said().key()).isEqualTo("unit.done-already");
        Verdict asked = scan("GLUE", ".again", "R0001");
        assertThat(asked.choices()).extracting(Verdict.Choice::said).containsExactly(Say.of("again.operation", "bond"));
        Verdict refused = scan("GLUE", ".1");
        assertThat(refused.outcome()).isEqualTo(Outcome.REFUSED);
        assertThat(refused.said())
                .isEqualTo(Say.of("said", "Unit REC R0001 has bond recorded already", "operation-is-done-once"));
        assertThat(refused.remedy())
                .isEqualTo(
                        Say.words("If it is to be done again, have somebody who may judge sign that, with the reason"));
        assertThat(scan("GLUE", ".pass").said().key()).isEqualTo("pass.who");
        Verdict not = passes.sign("GLUE", "op-1", new Signature("BADGE-op-1", KnownPeople.PIN, "it is loose"));
        assertThat(not.said()).isEqualTo(Say.of("pass.not-allowed", "op-1"));
        assertThat(names("SELECT why FROM holds.rule_pass")).isEmpty();
    }

    @Test
    void whatIsSignedIsDoneAgainAndBothAreOnRecord() {
        floor.bonded("R0001");
        scan("GLUE", ".again", "R0001", ".1", ".pass");
        assertThat(passes.sign("GLUE", "op-1", SIGNED).said()).isEqualTo(Say.of("again.in-hand", "R0001", "bond"));
        Verdict done = scan("GLUE", "A-2", "C-1");
        assertThat(done.outcome()).isEqualTo(Outcome.NOTED);
        assertThat(done.remedy())
                .isEqualTo(Say.of(
                        "noted",
                        "Unit REC R0001 has bond recorded already; passed by qe-1: lifted at one corner",
                        "operation-is-done-once"));
        assertThat(names("SELECT l.number FROM production.step_use u JOIN materials.lot l ON l.id = u.lot"
                        + " WHERE l.number LIKE 'A%' ORDER BY u.entry"))
                .containsExactly("A-1", "A-2");
        assertThat(scan("GLUE", ".again", "R0001", ".1").outcome()).isEqualTo(Outcome.REFUSED);
    }

    @Test
    void theSignatureIsThePersonsOwnAndNoSecretIsKept() {
        floor.bonded("R0001");
        scan("GLUE", ".again", "R0001", ".1", ".pass");
        passes.sign("GLUE", "op-1", SIGNED);
        assertThat(names("SELECT actor || ' ' || source FROM ledger.entry WHERE kind = 'rule-pass'"))
                .containsExactly("qe-1 GLUE");
        assertThat(names("SELECT rule || ' ' || operation FROM holds.rule_pass"))
                .containsExactly("operation-is-done-once bond");
        assertThat(names("SELECT text || verdict::text FROM station.scan"))
                .noneMatch(kept -> kept.contains("BADGE-") || kept.contains(KnownPeople.PIN));
        assertThat(names("SELECT what FROM access.log WHERE actor = 'qe-1'")).contains("SIGNED_AT_STATION");
    }

    @Test
    void aWrongPinAndAMissingReasonAreToldAndAskedAgain() {
        floor.bonded("R0001");
        scan("GLUE", ".again", "R0001", ".1", ".pass");
        Verdict wrong = passes.sign("GLUE", "op-1", new Signature("BADGE-qe-1", "271828", "it is loose"));
        assertThat(wrong.said()).isEqualTo(Say.words("Badge and PIN don’t fit together"));
        assertThat(wrong.passing()).isNotNull();
        Verdict bare = passes.sign("GLUE", "op-1", new Signature("BADGE-qe-1", KnownPeople.PIN, " "));
        assertThat(bare.said()).isEqualTo(Say.of("pass.no-reason"));
        assertThat(passes.sign("GLUE", "op-1", SIGNED).said().key()).isEqualTo("again.in-hand");
    }

    @Test
    void materialThatExpiredIsLoadedOnceItIsSigned() {
        Map<String, Object> old = new java.util.TreeMap<>(Map.of("lot", "A-9", "item", "TIM", "quantity", "9"));
        old.putAll(Map.of("unitOfMeasure", "g", "expiresAt", "2026-03-10T12:00:00+01:00"));
        floor.plant().say("receipt", "1 06:00", old);
        assertThat(scan("GLUE", "A-9").said()).isEqualTo(Say.of("said", "Lot A-9 had expired", "lot-is-not-expired"));
        scan("GLUE", ".pass");
        assertThat(passes.sign("GLUE", "op-1", SIGNED).said()).isEqualTo(Say.of("material.which-position", "A-9"));
        assertThat(scan("GLUE", "V1").said()).isEqualTo(Say.of("material.loaded", "A-9", "V1"));
    }

    @Test
    void aRuleThatNobodyMayPassOffersNoSignature() {
        floor.baked("R0001").hold("lots", "A-1");
        assertThat(scan("GLUE", "A-1").passing()).isNull();
        assertThat(scan("DARK", "R0001").passing()).isNull();
        assertThat(scan("DARK", ".pass").said()).isEqualTo(Say.of("pass.nothing"));
        assertThat(passes.sign("DARK", "op-1", SIGNED).said()).isEqualTo(Say.of("pass.nothing"));
        assertThat(names("SELECT why FROM holds.rule_pass")).isEmpty();
    }

    @Test
    void whatIsNotDoneHereCannotBeDoneAgain() {
        floor.bonded("R0001");
        assertThat(scan("DARK", ".again", "R0001").said()).isEqualTo(Say.of("again.none", "R0001"));
        assertThat(scan("DARK", ".cancel", ".again", "R0009").said()).isEqualTo(Say.of("again.none", "R0009"));
        assertThat(scan("GLUE", ".again", "R0001", ".again fasten").said())
                .isEqualTo(Say.of("again.not-this", "fasten"));
    }
}
