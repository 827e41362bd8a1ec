package dev.sunthread.production;

import dev.sunthread.access.Qualifications;
import dev.sunthread.catalog.RouteStep;
import dev.sunthread.holds.Passes;
import dev.sunthread.holds.SoftRule;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.SoleWriter;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;

/** Where an operation may be done, by whom and how often, as its released route says. */
@Component
class OperationTerms {

    private final Qualifications qualifications;
    private final Passes passes;
    private final Repeats repeats;
    private final SoleWriter sole;

    OperationTerms(Qualifications qualifications, Passes passes, Repeats repeats, SoleWriter sole) {
        this.qualifications = qualifications;
        this.passes = passes;
        this.repeats = repeats;
        this.sole = sole;
    }

    void operationIsDoneAsReleased(Fact<StepKind.Body> fact, RouteStep step, Collection<Long> units) {
        List<TraceRef> about = units.stream().map(TraceRef::unit).toList();
        stationMayDoTheOperation(fact, step, about);
        operatorIsQualified(fact, step, about);
    }

    /** @param worked the units, by whose routes the operation is done */
    void operationIsDoneOnce(Fact<StepKind.Body> fact, Map<Long, UnitName> worked) {
        repeats.operationIsDoneOnce(fact, fact.body().operation(), worked);
    }

    private void stationMayDoTheOperation(Fact<StepKind.Body> fact, RouteStep step, List<TraceRef> about) {
        String station = fact.body().station();
        if (!step.mayBeDoneAt(station)) {
            String stations = String.join(", ", step.stations());
            passes.breaks(
                    fact,
                    SoftRule.STATION_MAY_DO_THE_OPERATION,
                    step.operation(),
                    new Passes.Words(
                            "Operation " + step.operation() + " may not be done at " + station,
                            "Do it at " + stations + ", or release a route that allows this station"),
                    about);
        }
    }

    /** Only of people this plant knows; who was qualified stands in no journal, so a restore can't ask. */
    private void operatorIsQualified(Fact<StepKind.Body> fact, RouteStep step, List<TraceRef> about) {
        if (step.qualified()
                && !sole.isSole()
                && qualifications.lacks(fact.actor(), step.operation(), fact.occurredAt())) {
            passes.breaks(
                    fact,
                    SoftRule.OPERATOR_IS_QUALIFIED,
                    step.operation(),
                    new Passes.Words(
                            fact.actor() + " is not qualified for operation " + step.operation(),
                            "Have it done by somebody who is, or have the qualification recorded"),
                    about);
        }
    }
}
