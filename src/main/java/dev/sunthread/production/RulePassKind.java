package dev.sunthread.production;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.holds.Passes;
import dev.sunthread.holds.SoftRule;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** A person signs that units, lots or containers go on although a rule is broken that may be passed. */
@Component
@Needs(Right.JUDGE)
class RulePassKind implements Kind<RulePassKind.Body> {

    record Body(
            @Field("The rule that is passed") SoftRule rule,
            @Field("The units that go on") List<UnitName> units,
            @Field("The lots that are used all the same") List<String> lots,

            @Field("The containers that are used all the same")
            List<String> containers,

            @Field("The operation it is good for; absent for whatever is done with them") @Nullable
            String operation,

            @Field(value = "Why", text = TextForm.NOTE) String why) {

        Body {
            if (units.isEmpty() && lots.isEmpty() && containers.isEmpty()) {
                throw new Contradiction(
                        "units", ", lots and containers are all missing", "Name at least one unit, lot or container");
            }
        }
    }

    private final DecidedThings things;
    private final Passes passes;

    RulePassKind(DecidedThings things, Passes passes) {
        this.things = things;
        this.passes = passes;
    }

    @Override
    public String name() {
        return "rule-pass";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A person signs that units, lots or containers go on although a rule is broken; what is then done with them"
                + " is recorded with a finding that says who signed.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        ruleMayBePassed(fact, body.rule());
        Set<TraceRef> subjects = new LinkedHashSet<>();
        subjects.addAll(things.units(fact, body.units()));
        subjects.addAll(things.lots(fact, body.lots()));
        subjects.addAll(things.containers(fact, body.containers()));
        passes.sign(fact, body.rule(), subjects, body.operation(), body.why());
    }

    private void ruleMayBePassed(Fact<Body> fact, SoftRule rule) {
        if (!passes.mayBePassed(rule, fact.occurredAt())) {
            fact.breaks(
                    "only-released-rules-are-passed",
                    "The list of rules in force then does not let anybody pass " + rule.word(),
                    "Keep the rule, or have a list released that names it");
        }
    }
}
