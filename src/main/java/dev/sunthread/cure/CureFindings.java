package dev.sunthread.cure;

import dev.sunthread.catalog.Demand;
import dev.sunthread.catalog.EquipmentChecked;
import dev.sunthread.catalog.TermsReleased;
import dev.sunthread.catalog.judging.Judged;
import dev.sunthread.catalog.judging.Runs;
import dev.sunthread.cure.judging.CureVerdicts;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.ledger.Fact;
import dev.sunthread.production.UnitWentOn;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Judges cure runs when they, a check of their equipment or a revision is recorded, and says which broke their recipe. */
@Component
class CureFindings {

    private static final int NAMED = 1_000;

    private final CureVerdicts verdicts;
    private final BondFindings bonds;
    private final UnitWentOn wentOn;
    private final JdbcClient jdbc;

    CureFindings(CureVerdicts verdicts, BondFindings bonds, UnitWentOn wentOn, JdbcClient jdbc) {
        this.wentOn = wentOn;
        this.verdicts = verdicts;
        this.bonds = bonds;
        this.jdbc = jdbc;
    }

    void judge(Fact<CureRunKind.Body> fact, Loads.Run run, Load load) {
        Judged judged = verdicts.judgeEntry(fact.entry()).get(fact.entry());
        if (judged != null && judged.judgement().outcome() == Outcome.FAILED) {
            fact.shows(
                    "cure-keeps-its-recipe",
                    "Cure run " + fact.body().run() + " broke recipe "
                            + fact.body().recipe() + ": "
                            + judged.judgement().sentence().english(),
                    "Keep what was in it apart and have it disposed of or cured again",
                    Stream.concat(Stream.of(new TraceRef(TraceKind.CURE_RUN, run.run())), load.refs().stream())
                            .toArray(TraceRef[]::new));
        }
        if (judged != null) {
            bonds.judge(fact, run.recipe(), load);
        }
        if (judged != null && judged.judgement().outcome() != Outcome.PASSED) {
            wentOn.afterARunThatDoesNotStand(fact, Demand.Way.CURE, run.recipe(), load.names());
        }
    }

    @EventListener
    void judgeAgain(EquipmentChecked checked) {
        Map<Long, Judged> judged = verdicts.judgeEquipment(checked.equipment());
        Fact<?> fact = checked.fact();
        if (fact != null) {
            List<Long> lost = acceptedBefore(entries(judged, verdict -> verdict != Outcome.PASSED));
            noteLost(fact, checked, lost);
            List<Long> broken = runs(entries(judged, verdict -> verdict == Outcome.FAILED)).stream()
                    .filter(run -> !lost.contains(run))
                    .toList();
            noteBroken(fact, "in " + checked.code() + " broke their recipe by what this check found", broken);
        }
    }

    @EventListener
    void judgeAgain(TermsReleased released) {
        if (released.thing().equals(Runs.CURES.thing())) {
            Fact<?> fact = released.fact();
            Map<Long, Judged> judged = verdicts.judgeReleased(fact.entry());
            List<Long> broken = runs(entries(judged, verdict -> verdict == Outcome.FAILED));
            noteBroken(fact, "since this revision came into force broke it", broken);
        }
    }

    private static void noteLost(Fact<?> fact, EquipmentChecked checked, List<Long> runs) {
        if (!runs.isEmpty()) {
            fact.shows(
                    "cures-stand-after-a-check",
                    checked.bad()
                            ? runs.size() + " cure runs in " + checked.code()
                                    + " since its last good check kept their recipe with"
                                    + " too little margin for the error that was found"
                            : runs.size() + " cure runs in " + checked.code()
                                    + " are no longer shown to have kept their recipe by what the radiometer read",
                    "Judge what was in them; until then they are not proven",
                    refs(runs));
        }
    }

    private static void noteBroken(Fact<?> fact, String what, List<Long> runs) {
        if (!runs.isEmpty()) {
            fact.shows(
                    "cure-keeps-its-recipe",
                    runs.size() + " cure runs " + what,
                    "Keep what was in them apart and have it disposed of or cured again",
                    refs(runs));
        }
    }

    private static TraceRef[] refs(List<Long> runs) {
        return runs.stream()
                .limit(NAMED)
                .map(run -> new TraceRef(TraceKind.CURE_RUN, run))
                .toArray(TraceRef[]::new);
    }

    private static Long[] entries(Map<Long, Judged> judged, Predicate<Outcome> wanted) {
        return judged.entrySet().stream()
                .filter(run -> wanted.test(run.getValue().judgement().outcome()))
                .map(Map.Entry::getKey)
                .toArray(Long[]::new);
    }

    private List<Long> runs(Long[] entries) {
        return jdbc.sql("SELECT DISTINCT run FROM cure.run_record WHERE entry = ANY (?) ORDER BY run")
                .param(entries)
                .query(Long.class)
                .list();
    }

    /** The runs that passed before a check was counted against them. */
    private List<Long> acceptedBefore(Long[] entries) {
        return jdbc.sql("""
                        SELECT DISTINCT r.run FROM cure.run_record r
                        JOIN cure.verdict v ON v.entry = r.entry AND v.checked = 0 AND v.outcome = 'PASSED'
                        WHERE r.entry = ANY (?) ORDER BY r.run
                        """).param(entries).query(Long.class).list();
    }
}
