package dev.sunthread.production;

import dev.sunthread.catalog.Items;
import dev.sunthread.catalog.Structures;
import dev.sunthread.ledger.Fact;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.Map;
import org.springframework.stereotype.Component;

/** What must hold before a step is done. */
@Component
class StepRules {

    private final UnitRules unitRules;
    private final Items items;
    private final Structures structures;
    private final Prerequisites prerequisites;
    private final ValueRules valueRules;
    private final OperationRules operationRules;

    StepRules(
            UnitRules unitRules,
            Items items,
            Structures structures,
            Prerequisites prerequisites,
            ValueRules valueRules,
            OperationRules operationRules) {
        this.unitRules = unitRules;
        this.items = items;
        this.structures = structures;
        this.prerequisites = prerequisites;
        this.valueRules = valueRules;
        this.operationRules = operationRules;
    }

    void unitsMayBeWorkedOn(Fact<StepKind.Body> fact, Map<Long, UnitName> worked) {
        unitRules.unitsMayMoveOn(fact, worked);
        worked.values().stream().map(UnitName::item).distinct().forEach(item -> operationIsOnTheRoute(fact, item));
        prerequisites.operationFollowsWhatIsDemanded(fact, worked, fact.body().operation());
        valueRules.valuesLieWithinTheirLimits(fact, worked);
    }

    /** What must hold beside, once the step is in history. */
    void operationMayBeDone(
            Fact<StepKind.Body> fact,
            Map<Long, UnitName> worked,
            Collection<TakenInRules.Taken> taken,
            OffsetDateTime start) {
        operationRules.operationMayBeDone(fact, worked, taken, start);
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
