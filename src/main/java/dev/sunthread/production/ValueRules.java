package dev.sunthread.production;

import dev.sunthread.catalog.Items;
import dev.sunthread.catalog.ProcessLimits;
import dev.sunthread.catalog.ValueBounds;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;

/** What must hold of values that were measured or set in a step. */
@Component
class ValueRules {

    private final Items items;
    private final ProcessLimits limits;

    ValueRules(Items items, ProcessLimits limits) {
        this.items = items;
        this.limits = limits;
    }

    /** A measured value can't be refused any more: it is recorded with a finding. */
    void valuesLieWithinTheirLimits(Fact<StepKind.Body> fact, Map<Long, UnitName> worked) {
        if (fact.body().values().isEmpty()) {
            return;
        }
        worked.values().stream()
                .map(UnitName::item)
                .distinct()
                .map(number -> items.find(number).orElseThrow().id())
                .flatMap(item -> limits.of(item, fact.body().operation(), fact.occurredAt()).stream())
                .distinct()
                .forEach(bounds -> valueLiesWithin(fact, bounds, worked.keySet()));
    }

    private static void valueLiesWithin(Fact<StepKind.Body> fact, ValueBounds bounds, Collection<Long> units) {
        List<StepKind.Value> told = fact.body().values().stream()
                .filter(value -> value.name().equals(bounds.value()))
                .toList();
        for (StepKind.Value value : told) {
            boolean sameUnit = value.unitOfMeasure().equals(bounds.unitOfMeasure());
            if (!sameUnit || !bounds.allows(value.value())) {
                fact.shows(
                        "process-value-lies-within-its-limits",
                        "Operation " + fact.body().operation() + " was done with " + value.name() + " "
                                + value.value().toPlainString() + " " + value.unitOfMeasure() + "; the route demands "
                                + bounds.words(),
                        "Judge the units, and correct the record if the value or its unit is told wrong",
                        units.stream().map(TraceRef::unit).toArray(TraceRef[]::new));
            }
        }
    }
}
