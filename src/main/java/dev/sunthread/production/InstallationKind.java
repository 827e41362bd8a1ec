package dev.sunthread.production;

import dev.sunthread.catalog.Stations;
import dev.sunthread.inbox.typed.TypedLabels;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.Unreadable;
import java.sql.Types;
import java.util.Arrays;
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

    private static final String INSERT = Stays.WITH_POSITION + """
            INSERT INTO production.installation
              (entry, child_unit, child_lot, quantity, unit_of_measure, parent_position, station, installed_at)
            SELECT :entry, :unit, :lot, :quantity, :unitOfMeasure, position.id, :station, :at FROM position
            """;

    private final Units units;
    private final Stations stations;
    private final Children children;
    private final Stays stays;
    private final InstallationRules rules;
    private final TypedLabels typed;
    private final JdbcClient jdbc;

    InstallationKind(
            Units units,
            Stations stations,
            Children children,
            Stays stays,
            InstallationRules rules,
            TypedLabels typed,
            JdbcClient jdbc) {
        this.units = units;
        this.stations = stations;
        this.children = children;
        this.stays = stays;
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
        rules.before(fact, child, parent);
        jdbc.sql(INSERT)
                .param("entry", fact.entry())
                .param("unit", child.unit(), Types.BIGINT)
                .param("lot", child.lot(), Types.BIGINT)
                .param("quantity", body.child().quantity(), Types.NUMERIC)
                .param("unitOfMeasure", body.child().unitOfMeasure(), Types.VARCHAR)
                .param("parent", parent)
                .param("position", body.position())
                .param("station", stations.idOf(body.station(), "body.station"), Types.BIGINT)
                .param("at", fact.occurredAt())
                .update();
        rules.after(fact, child, parent, stays.begin(fact.entry()));
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
