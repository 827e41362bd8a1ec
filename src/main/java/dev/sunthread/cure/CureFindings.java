package dev.sunthread.cure;

import dev.sunthread.catalog.EquipmentChecked;
import dev.sunthread.catalog.judging.Judged;
import dev.sunthread.cure.judging.CureVerdicts;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.ledger.Fact;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Judges cure runs when they are recorded and when their equipment was checked, and says which broke their recipe. */
@Component
class CureFindings {

    private static final int NAMED = 1_000;

    private final CureVerdicts verdicts;
    private final JdbcClient jdbc;

    CureFindings(CureVerdicts verdicts, JdbcClient jdbc) {
        this.verdicts = verdicts;
        this.jdbc = jdbc;
    }

    void judge(Fact<CureRunKind.Body> fact, long run, Load load) {
        Judged judged = verdicts.judgeEntry(fact.entry()).get(fact.entry());
        if (judged != null && judged.judgement().outcome() == Outcome.FAILED) {
            fact.shows(
                    "cure-keeps-its-recipe",
                    "Cure run " + fact.body().run() + " broke recipe "
                            + fact.body().recipe() + ": " + judged.judgement().sentence(),
                    "Keep what was in it apart and have it disposed of or cured again",
                    Stream.concat(Stream.of(new TraceRef(TraceKind.CURE_RUN, run)), load.refs().stream())
                            .toArray(TraceRef[]::new));
        }
    }

    @EventListener
    void judgeAgain(EquipmentChecked checked) {
        List<Long> lost = verdicts.notPassing(checked.equipment());
        Fact<?> fact = checked.fact();
        List<Long> runs = fact == null ? List.of() : acceptedBefore(lost);
        if (fact != null && !runs.isEmpty()) {
            fact.shows(
                    "cures-stand-after-a-check",
                    runs.size() + " cure runs in " + checked.code()
                            + " since its last good check kept their recipe with"
                            + " too little margin for the error that was found",
                    "Judge what was in them; until then they are not proven",
                    runs.stream()
                            .limit(NAMED)
                            .map(run -> new TraceRef(TraceKind.CURE_RUN, run))
                            .toArray(TraceRef[]::new));
        }
    }

    /** The runs that passed before a check was counted against them. */
    private List<Long> acceptedBefore(List<Long> entries) {
        return jdbc.sql("""
                        SELECT DISTINCT r.run FROM cure.run_record r
                        JOIN cure.verdict v ON v.entry = r.entry AND v.checked = 0 AND v.outcome = 'PASSED'
                        WHERE r.entry = ANY (?) ORDER BY r.run
                        """)
                .param(entries.toArray(Long[]::new))
                .query(Long.class)
                .list();
    }
}
