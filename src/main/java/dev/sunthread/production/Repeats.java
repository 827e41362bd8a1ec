package dev.sunthread.production;

import dev.sunthread.holds.Passes;
import dev.sunthread.holds.SoftRule;
import dev.sunthread.kernel.RuleBroken;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.springframework.stereotype.Component;

/**
 * An operation of a route is done once on a unit, unless a person signs since it was done last that it is to be done
 * again; each signature is good for one time. Of what was told only what was signed is noted: that it was done again is
 * plain from the record.
 */
@Component
public class Repeats {

    private static final SoftRule RULE = SoftRule.OPERATION_IS_DONE_ONCE;

    private final Passes passes;
    private final Units units;
    private final OperationEnds ends;

    Repeats(Passes passes, Units units, OperationEnds ends) {
        this.passes = passes;
        this.units = units;
        this.ends = ends;
    }

    /** @param worked the units by whose routes the operation is done */
    void operationIsDoneOnce(Fact<?> fact, String operation, Map<Long, UnitName> worked) {
        if (fact.isAsked()) {
            units.lock(worked.keySet());
        } else if (!passes.isEverSigned(RULE)) {
            return;
        }
        ends.before(fact.entry(), operation, worked.keySet(), fact.occurredAt()).forEach((unit, last) -> {
            var wanted = new Passes.Wanted(RULE, operation, last, fact.occurredAt());
            List<TraceRef> about = List.of(TraceRef.unit(unit));
            if (fact.isAsked() || passes.areSigned(wanted, about)) {
                passes.breaks(fact, wanted, words(Objects.requireNonNull(worked.get(unit)), operation), about);
            }
        });
    }

    /**
     * Makes sure, before anything is done, that an operation may be done again on a unit.
     *
     * @throws RuleBroken if nobody signed for it since it was done last
     */
    public void mayBeDoneAgain(UnitName name, String operation, OffsetDateTime at) {
        long unit = units.known(name, "unit");
        OffsetDateTime last =
                ends.by(List.of(unit), at).getOrDefault(unit, Map.of()).get(operation);
        List<TraceRef> about = List.of(TraceRef.unit(unit));
        if (last != null && !passes.areSigned(new Passes.Wanted(RULE, operation, last, at), about)) {
            Passes.Words words = words(name, operation);
            throw new RuleBroken(RULE.word(), words.sentence(), words.remedy(), about);
        }
    }

    private static Passes.Words words(UnitName name, String operation) {
        return new Passes.Words(
                "Unit " + name + " has " + operation + " recorded already",
                "If it is to be done again, have somebody who may judge sign that, with the reason");
    }
}
