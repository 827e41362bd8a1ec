package dev.sunthread.production;

import dev.sunthread.holds.Holds;
import dev.sunthread.holds.OpenHold;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.stereotype.Component;

/** What must hold of units before something is done with them; asked of all at once and noted unit by unit. */
@Component
public class UnitRules {

    private final UnitLives lives;
    private final Holds holds;

    UnitRules(UnitLives lives, Holds holds) {
        this.lives = lives;
        this.holds = holds;
    }

    /** Each unit is born, not scrapped and not on hold; gives those that are on hold. */
    public Set<Long> unitsMayMoveOn(Fact<?> fact, Map<Long, UnitName> named) {
        Set<Long> born = lives.born(named.keySet());
        Set<Long> scrapped = lives.scrapped(named.keySet(), fact.occurredAt());
        Map<Long, List<OpenHold>> open = holds.on(TraceKind.UNIT, named.keySet());
        named.forEach((unit, name) -> {
            unitIsBorn(fact, name, unit, born);
            unitIsNotScrapped(fact, name, unit, scrapped);
            unitIsNotOnHold(fact, name, unit, open.getOrDefault(unit, List.of()));
        });
        return open.keySet();
    }

    void heldChildHoldsItsParent(Fact<?> fact, UnitName name, long child, long parent) {
        if (unitsMayMoveOn(fact, Map.of(child, name)).contains(child)) {
            holds.place(fact, TraceRef.unit(parent), "Unit " + name + " was put into it while on hold");
        }
    }

    void unitsAreBorn(Fact<?> fact, Map<Long, UnitName> named) {
        Set<Long> born = lives.born(named.keySet());
        named.forEach((unit, name) -> unitIsBorn(fact, name, unit, born));
    }

    private static void unitIsBorn(Fact<?> fact, UnitName name, long unit, Set<Long> born) {
        if (!born.contains(unit)) {
            fact.breaks(
                    "unit-is-born",
                    "Unit " + name + " has no birth record",
                    "Record its birth, or correct the serial",
                    TraceRef.unit(unit));
        }
    }

    private static void unitIsNotScrapped(Fact<?> fact, UnitName name, long unit, Set<Long> scrapped) {
        if (scrapped.contains(unit)) {
            fact.breaks(
                    "unit-is-not-scrapped",
                    "Unit " + name + " was scrapped before",
                    "Correct the serial, or void the scrapping if the unit lives on",
                    TraceRef.unit(unit));
        }
    }

    private static void unitIsNotOnHold(Fact<?> fact, UnitName name, long unit, List<OpenHold> open) {
        open.forEach(hold -> fact.breaks(
                "unit-is-not-on-hold",
                "Unit " + name + " is on hold: " + hold.reason(),
                "Set it aside and ask quality",
                TraceRef.unit(unit)));
    }
}
