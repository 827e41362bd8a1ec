package dev.sunthread.production;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.materials.LotRules;
import dev.sunthread.materials.Lots;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Looks up what an installation or removal is about, and lets one writer at a time change it. */
@Component
class Children {

    /** A child as the database knows it; exactly one of unit and lot is given. */
    record Child(@Nullable Long unit, @Nullable Long lot) {

        TraceRef ref() {
            return unit != null ? TraceRef.unit(unit) : TraceRef.lot(Objects.requireNonNull(lot));
        }
    }

    private final Units units;
    private final Lots lots;
    private final LotRules lotRules;
    private final Stays stays;
    private final JdbcClient jdbc;

    Children(Units units, Lots lots, LotRules lotRules, Stays stays, JdbcClient jdbc) {
        this.units = units;
        this.lots = lots;
        this.lotRules = lotRules;
        this.stays = stays;
        this.jdbc = jdbc;
    }

    Child known(ChildName name) {
        return name.unit() != null
                ? new Child(units.known(name.unit(), "body.child.unit"), null)
                : new Child(null, lots.known(Objects.requireNonNull(name.lot())));
    }

    void lock(Child child, long parent) {
        units.lock(child.unit() == null ? List.of(parent) : List.of(child.unit(), parent));
    }

    /** Brings the state in line after a removal of a child from a position was recorded. */
    void follow(Child child, @Nullable Long position) {
        if (child.unit() != null) {
            stays.followUnit(child.unit());
        } else {
            stays.followPosition(Objects.requireNonNull(position));
        }
    }

    /** Brings the state in line after an installation or removal was withdrawn. */
    void followWithdrawn(String table, long entry) {
        record Row(
                @Nullable Long unit,
                @Nullable Long lot,
                @Nullable Long position) {}
        Row row = jdbc.sql("SELECT child_unit AS unit, child_lot AS lot, parent_position AS position FROM production."
                        + table + " WHERE entry = ?")
                .param(entry)
                .query(Row.class)
                .single();
        follow(new Child(row.unit(), row.lot()), row.position());
    }

    /** What must hold of a part of a lot before it is put into a parent. */
    void partMayBeTaken(Fact<?> fact, ChildName name) {
        if (name.lot() != null) {
            long lot = lotRules.taken(fact, name.lot());
            lotRules.lotIsNotExpired(fact, name.lot(), lot, null);
        }
    }

    /** The internal number of the item of a child; absent if nothing tells it. */
    @Nullable
    Long itemOf(ChildName name, Child child) {
        return name.unit() != null ? itemOf(name.unit()) : itemOf(Objects.requireNonNull(child.lot()));
    }

    /** The internal number of the item of a unit that is known. */
    Long itemOf(UnitName unit) {
        return units.item(unit);
    }

    /** The internal number of the item of a lot; absent if nothing tells it. */
    @Nullable
    Long itemOf(long lot) {
        return lots.itemOf(lot).orElse(null);
    }
}
