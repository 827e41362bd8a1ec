package dev.sunthread.cure;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.kernel.verdict.Judgement;
import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.ledger.Fact;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Says what several cures of one unit did to it together, where that breaks the recipe although each may have kept it. */
@Component
class BondFindings {

    private final CuresOfUnits cures;
    private final Bonds bonds;

    BondFindings(CuresOfUnits cures, Bonds bonds) {
        this.cures = cures;
        this.bonds = bonds;
    }

    /** Looks at the units of a load with all cures by the recipe that are known of them, earlier or later. */
    void judge(Fact<CureRunKind.Body> fact, long recipe, Load load) {
        Map<Long, List<CuresOfUnits.Reached>> repeated = new LinkedHashMap<>();
        cures.of(recipe, load.names().keySet(), null).forEach((unit, runs) -> {
            if (runs.size() > 1) {
                repeated.put(unit, runs);
            }
        });
        bonds.judged(repeated).entrySet().stream()
                .filter(bond -> bond.getValue().outcome() == Outcome.FAILED)
                .collect(Collectors.groupingBy(
                        Map.Entry::getValue,
                        LinkedHashMap::new,
                        Collectors.mapping(Map.Entry::getKey, Collectors.toList())))
                .forEach((judgement, units) -> note(fact, judgement, units));
    }

    private static void note(Fact<CureRunKind.Body> fact, Judgement judgement, List<Long> units) {
        fact.shows(
                "cures-of-a-unit-keep-the-recipe-together",
                units.size() + " units were cured more than once by recipe "
                        + fact.body().recipe() + ", which broke it: "
                        + judgement.sentence().english(),
                "Keep them apart and have them disposed of",
                units.stream().map(TraceRef::unit).toArray(TraceRef[]::new));
    }
}
