package dev.sunthread.electrical;

import dev.sunthread.catalog.EquipmentChecked;
import dev.sunthread.catalog.TermsReleased;
import dev.sunthread.catalog.judging.Runs;
import dev.sunthread.electrical.judging.TestVerdicts;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.ledger.Fact;
import java.util.List;
import java.util.Map;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * When a rig is found bad, every verdict since its last good check is judged again with the error that was found, and the
 * units that are no longer accepted are named.
 */
@Component
class TestsAfterBadCheck {

    private static final int NAMED = 1_000;

    private final TestVerdicts verdicts;
    private final JdbcClient jdbc;

    TestsAfterBadCheck(TestVerdicts verdicts, JdbcClient jdbc) {
        this.verdicts = verdicts;
        this.jdbc = jdbc;
    }

    @EventListener
    void judgeAgain(EquipmentChecked checked) {
        List<Long> lost = verdicts.judgeEquipment(checked.equipment()).entrySet().stream()
                .filter(test -> test.getValue().judgement().outcome() != Outcome.PASSED)
                .map(Map.Entry::getKey)
                .toList();
        Fact<?> fact = checked.fact();
        List<Long> units = fact == null ? List.of() : acceptedBefore(lost);
        if (fact != null && !units.isEmpty()) {
            fact.shows(
                    "acceptances-stand-after-a-check",
                    units.size() + " units were accepted on " + checked.code() + " since its last good check with too"
                            + " little margin for the error that was found",
                    "Test them again on a good rig; until then they are not proven",
                    units.stream().limit(NAMED).map(TraceRef::unit).toArray(TraceRef[]::new));
        }
    }

    @EventListener
    void judgeAgain(TermsReleased released) {
        if (released.thing().equals(Runs.TESTS.thing())) {
            verdicts.judgeReleased(released.fact().entry());
        }
    }

    /** The units of runs that passed before a check was counted against them. */
    private List<Long> acceptedBefore(List<Long> entries) {
        return jdbc.sql("""
                        SELECT DISTINCT r.unit FROM electrical.run_record r
                        JOIN electrical.verdict v ON v.entry = r.entry AND v.checked = 0 AND v.outcome = 'PASSED'
                        WHERE r.entry = ANY (?) AND r.verdict = 'PASS' ORDER BY r.unit
                        """)
                .param(entries.toArray(Long[]::new))
                .query(Long.class)
                .list();
    }
}
