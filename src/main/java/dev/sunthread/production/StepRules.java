package dev.sunthread.production;

import dev.sunthread.catalog.Items;
import dev.sunthread.catalog.Structures;
import dev.sunthread.ledger.Fact;
import java.util.List;
import org.springframework.stereotype.Component;

/** What must hold before a step is done. */
@Component
class StepRules {

    private final Units units;
    private final UnitRules unitRules;
    private final Items items;
    private final Structures structures;

    StepRules(Units units, UnitRules unitRules, Items items, Structures structures) {
        this.units = units;
        this.unitRules = unitRules;
        this.items = items;
        this.structures = structures;
    }

    void unitsMayBeWorkedOn(Fact<StepKind.Body> fact) {
        List<UnitName> names = fact.body().units().stream().distinct().toList();
        for (UnitName name : names) {
            long unit = units.find(name.id()).orElseThrow();
            unitRules.unitIsBorn(fact, name, unit);
            unitRules.unitIsNotOnHold(fact, name, unit);
        }
        names.stream().map(UnitName::item).distinct().forEach(item -> operationIsOnTheRoute(fact, item));
    }

    private void operationIsOnTheRoute(Fact<StepKind.Body> fact, String number) {
        long item = items.find(number).orElseThrow().id();
        String operation = fact.body().operation();
        if (structures.operates(item, operation, fact.occurredAt()) == Structures.Allowed.NO) {
            fact.breaks(
                    "operation-is-on-the-route",
                    "The route of item " + number + " in force then has no operation " + operation,
                    "Correct the operation, or release a route that has it");
        }
    }
}
