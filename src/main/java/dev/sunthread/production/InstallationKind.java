package dev.sunthread.production;

import dev.sunthread.catalog.Stations;
import dev.sunthread.inbox.typed.TypedLabels;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.Unreadable;
import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
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
    private final Stations stations;
    private final Children children;
    private final InstallationRules rules;
    private final TypedLabels typed;
    private final JdbcClient jdbc;

    InstallationKind(
            Units units,
            Stations stations,
            Children children,
            InstallationRules rules,
            TypedLabels typed,
            JdbcClient jdbc) {
        this.units = units;
        this.stations = stations;
        this.children = children;
        this.rules = rules;
        this.typed = typed;
        this.jdbc = jdbc;
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
        long position = rules.before(fact, child, parent);
        jdbc.sql("""
                        INSERT INTO production.installation
                          (entry, child_unit, child_lot, quantity, unit_of_measure, parent_position, station, installed_at)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .param(fact.entry())
                .param(child.unit())
                .param(child.lot())
                .param(body.child().quantity())
                .param(body.child().unitOfMeasure())
                .param(position)
                .param(stations.idOf(body.station(), "body.station"))
                .param(fact.occurredAt())
                .update();
        boolean applied =
                Objects.requireNonNull(children.follow(child, position).get(fact.entry()));
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
