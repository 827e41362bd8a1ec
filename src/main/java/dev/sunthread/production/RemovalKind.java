package dev.sunthread.production;

import dev.sunthread.catalog.Stations;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** A unit, or a part of a lot, was taken out of a parent. */
@Component
class RemovalKind implements Kind<RemovalKind.Body> {

    record Body(
            @Field("What was taken out") ChildName child,
            @Field("The unit it was taken out of") UnitName parent,

            @Field("The position it was in; needed for a part of a lot") @Nullable
            String position,

            @Field("The station where it was done") @Nullable
            String station) {

        Body {
            if (child.lot() != null && position == null) {
                throw new Contradiction("position", "is missing for a part of a lot", "Give the position it was in");
            }
        }
    }

    private final Units units;
    private final Stations stations;
    private final Children children;
    private final Stays stays;
    private final Places places;
    private final JdbcClient jdbc;

    RemovalKind(Units units, Stations stations, Children children, Stays stays, Places places, JdbcClient jdbc) {
        this.units = units;
        this.stations = stations;
        this.children = children;
        this.stays = stays;
        this.places = places;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "removal";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A unit, or a part of a lot, was taken out of a parent; what it gave to the parent stays there.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        Children.Child child = children.known(body.child());
        long parent = units.known(body.parent(), "body.parent");
        children.lock(child, parent);
        Long position = body.position() == null ? null : stays.position(parent, body.position());
        places.name(child, parent, body.position());
        onlyWhatIsInsideIsTakenOut(fact, child, parent);
        jdbc.sql("""
                        INSERT INTO production.removal
                          (entry, child_unit, child_lot, parent, parent_position, station, removed_at)
                        VALUES (?, ?, ?, ?, ?, ?, ?)
                        """)
                .param(fact.entry())
                .param(child.unit())
                .param(child.lot())
                .param(parent)
                .param(position)
                .param(stations.idOf(body.station(), "body.station"))
                .param(fact.occurredAt())
                .update();
        children.follow(child, position);
    }

    private void onlyWhatIsInsideIsTakenOut(Fact<Body> fact, Children.Child child, long parent) {
        if (!stays.isInside(child.unit(), child.lot(), parent, fact.occurredAt())) {
            fact.breaks(
                    "only-what-is-inside-is-taken-out",
                    "It was taken out of " + fact.body().parent() + ", where it is not recorded as being then",
                    "Record the installation that was missed, or correct the parent",
                    child.ref(),
                    TraceRef.unit(parent));
        }
    }

    @Override
    public void withdrawn(long entry) {
        children.followWithdrawn("removal", entry);
    }
}
