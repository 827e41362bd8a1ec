package dev.sunthread.cure;

import dev.sunthread.catalog.Demand;
import dev.sunthread.catalog.judging.KeptPhrase;
import dev.sunthread.cure.judging.CureVerdicts;
import dev.sunthread.kernel.verdict.Judgement;
import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.production.Prerequisite;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/**
 * A demanded cure is met by a run of its recipe that reached the unit and began once the step that demands it had, the
 * last one if it was done again. Where the revision in force states limits, a run
 * counts only if its raw data show that they were kept: without raw data nothing is proven.
 */
@Component
class DemandedCures implements Prerequisite {

    private final CuresOfUnits cures;
    private final CureVerdicts verdicts;
    private final Bonds bonds;

    DemandedCures(CuresOfUnits cures, CureVerdicts verdicts, Bonds bonds) {
        this.cures = cures;
        this.verdicts = verdicts;
        this.bonds = bonds;
    }

    @Override
    public Demand.Way way() {
        return Demand.Way.CURE;
    }

    @Override
    public Set<Long> met(Demand demand, Map<Long, OffsetDateTime> units, OffsetDateTime at) {
        Map<Long, List<CuresOfUnits.Reached>> reached = judged(demand, units, at);
        Map<Long, Judgement> together = bonds.judged(reached);
        return reached.entrySet().stream()
                .filter(unit -> isMet(unit.getValue(), Optional.ofNullable(together.get(unit.getKey()))))
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
    }

    private static boolean isMet(List<CuresOfUnits.Reached> runs, Optional<Judgement> together) {
        return together.map(bond -> bond.outcome() == Outcome.PASSED)
                .orElseGet(() -> runs.stream().anyMatch(CuresOfUnits.Reached::passed));
    }

    /** What reached the units, none of it left unjudged that could be judged. */
    private Map<Long, List<CuresOfUnits.Reached>> judged(
            Demand demand, Map<Long, OffsetDateTime> units, OffsetDateTime at) {
        Map<Long, List<CuresOfUnits.Reached>> reached = cures.since(demand.definition(), units, at);
        List<Long> unknown = reached.values().stream()
                .flatMap(List::stream)
                .filter(run -> Boolean.FALSE.equals(run.kept()))
                .map(CuresOfUnits.Reached::entry)
                .distinct()
                .toList();
        unknown.forEach(verdicts::judgeEntry);
        return unknown.isEmpty() ? reached : cures.since(demand.definition(), units, at);
    }

    @Override
    public Optional<String> shortfall(Demand demand, Map.Entry<Long, OffsetDateTime> unit, OffsetDateTime at) {
        Map<Long, List<CuresOfUnits.Reached>> reached = cures.since(demand.definition(), Map.ofEntries(unit), at);
        List<CuresOfUnits.Reached> runs = reached.getOrDefault(unit.getKey(), List.of());
        if (runs.isEmpty()) {
            return Optional.empty();
        }
        Judgement bond = bonds.judged(reached).get(unit.getKey());
        return Optional.of(bond == null ? told(runs.get(runs.size() - 1)) : told(runs, bond));
    }

    private static String told(List<CuresOfUnits.Reached> runs, Judgement bond) {
        return runs.stream().map(CuresOfUnits.Reached::run).collect(Collectors.joining(", ", "cure run ", ""))
                + (bond.outcome() == Outcome.FAILED ? " failed for it: " : " is not proven for it: ")
                + bond.sentence().english();
    }

    private static String told(CuresOfUnits.Reached run) {
        boolean failed = Outcome.FAILED.name().equals(run.outcome());
        return "cure run " + run.run() + (failed ? " failed" : " is not proven")
                + (run.said() == null ? "" : ": " + KeptPhrase.read(run.said()).english());
    }
}
