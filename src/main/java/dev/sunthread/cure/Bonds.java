package dev.sunthread.cure;

import dev.sunthread.cure.judging.BondCure;
import dev.sunthread.cure.judging.CureVerdicts;
import dev.sunthread.kernel.verdict.Judgement;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;

/**
 * What the bonds of units became by all their cures: judged apart from the runs where a unit was cured more than once, or
 * where the recipe has the sensor nearest to a bond count.
 */
@Component
class Bonds {

    private final CureVerdicts verdicts;

    Bonds(CureVerdicts verdicts) {
        this.verdicts = verdicts;
    }

    /**
     * What came out for each unit whose bond is judged apart; the verdicts of the runs say it of the others, and where a
     * cure was done under a revision that states no limits.
     */
    Map<Long, Judgement> judged(Map<Long, List<CuresOfUnits.Reached>> reached) {
        Map<List<BondCure>, Optional<Judgement>> known = new HashMap<>();
        Map<List<Long>, Boolean> apart = new HashMap<>();
        Map<Long, Judgement> judged = new HashMap<>();
        reached.forEach((unit, cures) -> {
            List<Long> entries = cures.stream().map(CuresOfUnits.Reached::entry).toList();
            boolean limited = cures.stream().allMatch(cure -> cure.outcome() != null);
            if (limited && (cures.size() > 1 || apart.computeIfAbsent(entries, verdicts::positionsCount))) {
                known.computeIfAbsent(
                                cures.stream()
                                        .map(CuresOfUnits.Reached::asBondCure)
                                        .toList(),
                                verdicts::bond)
                        .ifPresent(judgement -> judged.put(unit, judgement));
            }
        });
        return judged;
    }
}
