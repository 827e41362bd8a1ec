package dev.sunthread.cure;

import dev.sunthread.catalog.Demand;
import dev.sunthread.catalog.judging.KeptPhrase;
import dev.sunthread.cure.judging.CureVerdicts;
import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.production.Prerequisite;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.springframework.stereotype.Component;

/**
 * A demanded cure is met by a run of its recipe that reached the unit. Where the revision in force states limits, a run
 * counts only if its raw data show that they were kept: without raw data nothing is proven.
 */
@Component
class DemandedCures implements Prerequisite {

    private final CuresOfUnits cures;
    private final CureVerdicts verdicts;

    DemandedCures(CuresOfUnits cures, CureVerdicts verdicts) {
        this.cures = cures;
        this.verdicts = verdicts;
    }

    @Override
    public Demand.Way way() {
        return Demand.Way.CURE;
    }

    @Override
    public Set<Long> met(Demand demand, Collection<Long> units, OffsetDateTime at) {
        Set<Long> met = new HashSet<>(cures.namedByOneThatCounts(demand.definition(), units, at));
        List<Long> left = units.stream().filter(unit -> !met.contains(unit)).toList();
        if (!left.isEmpty()) {
            judged(demand, left, at).forEach((unit, runs) -> {
                if (runs.stream().anyMatch(CuresOfUnits.Reached::passed)) {
                    met.add(unit);
                }
            });
        }
        return met;
    }

    /** What reached the units, none of it left unjudged that could be judged. */
    private Map<Long, List<CuresOfUnits.Reached>> judged(Demand demand, Collection<Long> units, OffsetDateTime at) {
        Map<Long, List<CuresOfUnits.Reached>> reached = cures.of(demand.definition(), units, at);
        List<Long> unknown = reached.values().stream()
                .flatMap(List::stream)
                .filter(run -> Boolean.FALSE.equals(run.kept()))
                .map(CuresOfUnits.Reached::entry)
                .distinct()
                .toList();
        unknown.forEach(verdicts::judgeEntry);
        return unknown.isEmpty() ? reached : cures.of(demand.definition(), units, at);
    }

    @Override
    public Optional<String> shortfall(Demand demand, long unit, OffsetDateTime at) {
        List<CuresOfUnits.Reached> runs =
                cures.of(demand.definition(), List.of(unit), at).getOrDefault(unit, List.of());
        return runs.isEmpty() ? Optional.empty() : Optional.of(told(runs.get(runs.size() - 1)));
    }

    private static String told(CuresOfUnits.Reached run) {
        boolean failed = Outcome.FAILED.name().equals(run.outcome());
        return "cure run " + run.run() + (failed ? " failed" : " is not proven")
                + (run.said() == null ? "" : ": " + KeptPhrase.read(run.said()).english());
    }
}
