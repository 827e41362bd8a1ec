package dev.sunthread.materials;

import dev.sunthread.catalog.Position;
import dev.sunthread.catalog.Stations;
import dev.sunthread.inbox.typed.TypedLabels;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.EarlierEntries;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** A lot was loaded at a position. */
@Component
class ChargeKind implements Kind<ChargeKind.Body> {

    record Body(
            @Field("The lot that was loaded") String lot,
            @Field("The station") String station,
            @Field("The position on it") String position,

            @Field("The container of the lot, if its label was scanned") @Nullable
            String container) {}

    private final Stations stations;
    private final LotRules rules;
    private final Containers containers;
    private final Loading loading;
    private final LoadRules loadRules;
    private final EarlierEntries earlier;
    private final TypedLabels typed;
    private final JdbcClient jdbc;

    ChargeKind(
            Stations stations,
            LotRules rules,
            Containers containers,
            Loading loading,
            LoadRules loadRules,
            EarlierEntries earlier,
            TypedLabels typed,
            JdbcClient jdbc) {
        this.stations = stations;
        this.rules = rules;
        this.containers = containers;
        this.loading = loading;
        this.loadRules = loadRules;
        this.earlier = earlier;
        this.typed = typed;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "charge";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A lot was loaded at a position; what was there before ends at the latest now.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        Position position = stations.position(body.station(), body.position(), "body.position");
        loading.lock(position.id());
        long lot = rules.taken(fact, body.lot());
        positionIsDischargedBeforeTheNextCharge(fact, position, lot);
        Long container = containers.ofLot(fact, body.container(), body.lot(), lot);
        jdbc.sql("INSERT INTO materials.charge (entry, position, lot, container, charged_at) VALUES (?, ?, ?, ?, ?)")
                .params(fact.entry(), position.id(), lot)
                .param(container)
                .param(fact.occurredAt())
                .update();
        loading.follow(position.id());
        loadRules.onlyWhatThePositionTakesIsLoaded(fact, position, body.lot(), lot);
        loadRules.chargedMayBeUsed(fact, body.lot(), lot, container);
        typed.name(fact, body.station(), Arrays.asList(body.lot(), body.container()));
    }

    private void positionIsDischargedBeforeTheNextCharge(Fact<Body> fact, Position position, long lot) {
        loading.loadedAt(position.id(), fact.occurredAt())
                .ifPresent(before -> fact.breaks(
                        "position-is-discharged-before-the-next-charge",
                        "Position " + position.code() + " of " + position.stationCode()
                                + " was charged while another charge was still loaded, recorded "
                                + earlier.words(before.charge(), fact.occurredAt()),
                        "Record the discharge of what was there before",
                        TraceRef.lot(before.lot()),
                        TraceRef.lot(lot)));
    }

    @Override
    public void withdrawn(long entry) {
        loading.followWithdrawn("charge", entry);
    }
}
