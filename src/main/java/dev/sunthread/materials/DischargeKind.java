package dev.sunthread.materials;

import dev.sunthread.catalog.Position;
import dev.sunthread.catalog.Stations;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What was loaded at a position was taken off. */
@Component
class DischargeKind implements Kind<DischargeKind.Body> {

    record Body(
            @Field("The station") String station,
            @Field("The position on it") String position,

            @Field("The lot that was taken off, if its label was scanned") @Nullable
            String lot,

            @Field("The new lot as which it goes on, where the position mixes what is loaded") @Nullable
            String into) {}

    private final Stations stations;
    private final Lots lots;
    private final LotMaking making;
    private final Loading loading;
    private final JdbcClient jdbc;

    DischargeKind(Stations stations, Lots lots, LotMaking making, Loading loading, JdbcClient jdbc) {
        this.stations = stations;
        this.lots = lots;
        this.making = making;
        this.loading = loading;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "discharge";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "What was loaded at a position was taken off; what it left behind stays until a clean point.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        Position position = stations.position(body.station(), body.position(), "body.position");
        loading.lock(position.id());
        Long lot = body.lot() == null ? null : lots.known(body.lot());
        lotTakenOffIsTheOneLoaded(fact, position, lot);
        jdbc.sql(
                        "INSERT INTO materials.discharge (entry, position, lot, into_lot, discharged_at) VALUES (?, ?, ?, ?, ?)")
                .params(fact.entry(), position.id())
                .param(lot)
                .param(unloaded(fact, position, lot))
                .param(fact.occurredAt())
                .update();
        loading.follow(position.id());
    }

    /** The lot as which the content goes on, of the item that was scanned or is recorded as loaded; absent if none. */
    private @Nullable Long unloaded(Fact<Body> fact, Position position, @Nullable Long lot) {
        String into = fact.body().into();
        if (into == null) {
            return null;
        }
        Optional<Long> content = Optional.ofNullable(lot).or(() -> lotAt(fact, position));
        long made = making.made(
                fact,
                NewLot.of(
                        into,
                        NewLot.Way.UNLOADING,
                        content.flatMap(lots::itemOf).orElse(null)));
        content.ifPresent(part -> making.heldLotHoldsWhatIsMadeOfIt(fact, part, made));
        return made;
    }

    private Optional<Long> lotAt(Fact<Body> fact, Position position) {
        return loading.loadedAt(position.id(), fact.occurredAt()).map(Loaded::lot);
    }

    private void lotTakenOffIsTheOneLoaded(Fact<Body> fact, Position position, @Nullable Long lot) {
        Long loaded = lotAt(fact, position).orElse(null);
        if (loaded == null) {
            fact.breaks(
                    "only-what-is-loaded-is-taken-off",
                    "Nothing is recorded as loaded at position " + position.code() + " of " + position.stationCode(),
                    "Record the charge that was missed");
        } else if (lot != null && !lot.equals(loaded)) {
            fact.breaks(
                    "only-what-is-loaded-is-taken-off",
                    "Lot " + fact.body().lot() + " was taken off position " + position.code() + " of "
                            + position.stationCode() + ", where another lot is recorded as loaded",
                    "Record the charge that was missed, or correct the lot",
                    TraceRef.lot(lot),
                    TraceRef.lot(loaded));
        }
    }

    @Override
    public void withdrawn(long entry) {
        loading.followWithdrawn("discharge", entry);
    }
}
