package dev.sunthread.production;

import dev.sunthread.catalog.RouteStep;
import dev.sunthread.ledger.Fact;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;

/** What released routes say of an operation that is done, and what holds say of all that its units are built with. */
@Component
class OperationRules {

    private final UnitRoutes routes;
    private final AssemblyRules assemblies;
    private final RouteOrder order;
    private final OperationTerms terms;
    private final TakenInRules takenIn;

    OperationRules(
            UnitRoutes routes, AssemblyRules assemblies, RouteOrder order, OperationTerms terms, TakenInRules takenIn) {
        this.routes = routes;
        this.assemblies = assemblies;
        this.order = order;
        this.terms = terms;
        this.takenIn = takenIn;
    }

    void operationMayBeDone(
            Fact<StepKind.Body> fact,
            Map<Long, UnitName> worked,
            Collection<TakenInRules.Taken> taken,
            OffsetDateTime start) {
        String operation = fact.body().operation();
        List<RouteStep> steps = routes.steps(worked.values(), operation, fact.occurredAt());
        boolean alone = !steps.isEmpty() && steps.stream().allMatch(RouteStep::unitAlone);
        assemblies.nothingBuiltTogetherIsOnHold(fact, worked, !alone);
        if (!steps.isEmpty()) {
            terms.operationIsDoneOnce(fact, worked);
        }
        order.operationFollowsTheEarlierOnes(fact, worked, operation, start);
        steps.forEach(step -> terms.operationIsDoneAsReleased(fact, step, worked.keySet()));
        takenIn.materialIsWhatTheOperationTakesIn(fact, steps, taken);
        taken.forEach(use -> takenIn.materialMayBeUsed(fact, use));
    }
}
