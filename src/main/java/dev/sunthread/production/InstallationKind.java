package dev.sunthread.production;

import dev.sunthread.inbox.typed.TypedLabels;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.Unreadable;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** A unit, or a part of a lot, was put into a position of a parent. */
@Component
class InstallationKind implements Kind<InstallationKind.Body> {

    record Body(
            @Field("What was put in") ChildName child,
            @Field("The unit it was put into") UnitName parent,
            @Field("The position in the parent") String position,

            @Field("The station where it was done") @Nullable
            String station) {}

    private final Units units;
    private final Children children;
    private final Installations installations;
    private final InstallationRules rules;
    private final TypedLabels typed;

    InstallationKind(
            Units units, Children children, Installations installations, InstallationRules rules, TypedLabels typed) {
        this.units = units;
        this.children = children;
        this.installations = installations;
        this.rules = rules;
        this.typed = typed;
    }

    @Override
    public String name() {
        return "installation";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A unit, or a part of a lot, was put into a position of a parent and stays there until its removal.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        Children.Child child = children.known(body.child());
        long parent = units.known(body.parent(), "body.parent");
        nothingIsPutIntoItself(child, parent);
        children.lock(child, parent);
        rules.before(fact, child, parent);
        boolean applied = installations.record(fact, child, parent);
        rules.after(fact, child, parent, applied);
        UnitName unit = body.child().unit();
        typed.name(
                fact,
                body.station(),
                Arrays.asList(
                        body.parent().serial(), unit == null ? body.child().lot() : unit.serial()));
    }

    private static void nothingIsPutIntoItself(Children.Child child, long parent) {
        if (child.unit() != null && child.unit() == parent) {
            throw Unreadable.at("body.parent", "is the unit itself", "Name the unit it was put into");
        }
    }

    @Override
    public void withdrawn(long entry) {
        children.followWithdrawn("installation", entry);
    }
}
