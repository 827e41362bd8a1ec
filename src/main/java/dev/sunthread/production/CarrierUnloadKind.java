package dev.sunthread.production;

import dev.sunthread.catalog.Stations;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Units, or other carriers, or everything, were taken off a carrier. */
@Component
class CarrierUnloadKind implements Kind<CarrierUnloadKind.Body> {

    record Body(
            @Field("The carrier they were taken off") String carrier,

            @Field("What was taken off it; absent if everything was")
            List<Unload> unloads,

            @Field("The station where it was done") @Nullable
            String station) {}

    record Unload(
            @Field("The unit, if it is one") @Nullable UnitName unit,

            @Field("The carrier, if one was taken off another") @Nullable
            String carrier)
            implements CarriedName {

        Unload {
            if ((unit == null) == (carrier == null)) {
                throw new Contradiction("unit", "must be given, or carrier, and not both", "Name a unit or a carrier");
            }
        }
    }

    private final Carriers carriers;
    private final Carried carried;
    private final UnloadRules rules;
    private final Stations stations;
    private final JdbcClient jdbc;

    CarrierUnloadKind(Carriers carriers, Carried carried, UnloadRules rules, Stations stations, JdbcClient jdbc) {
        this.carriers = carriers;
        this.carried = carried;
        this.rules = rules;
        this.stations = stations;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "carrier-unload";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "Units, or other carriers with what is on them, were taken off a carrier; or everything was.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        long carrier = carriers.known(body.carrier());
        List<Carried.Thing> named = carried.locked(carrier, body.unloads(), "body.unloads");
        rules.onlyWhatIsOnTheCarrierIsTakenOff(fact, carrier, named);
        List<Carried.Thing> things = named.isEmpty() ? List.of(new Carried.Thing(null, null)) : named;
        jdbc.sql("""
                        INSERT INTO production.carrier_unload
                          (entry, ordinal, carrier, unit, inner_carrier, station, unloaded_at)
                        SELECT :entry, l.ordinal, :carrier, l.unit, l.inner_carrier, cast(:station AS bigint), :at
                        FROM unnest(cast(:units AS bigint[]), cast(:carriers AS bigint[]))
                          WITH ORDINALITY AS l (unit, inner_carrier, ordinal)
                        """)
                .param("entry", fact.entry())
                .param("carrier", carrier)
                .param("station", stations.idOf(body.station(), "body.station"))
                .param("at", fact.occurredAt())
                .param("units", Carried.unitColumn(things))
                .param("carriers", Carried.carrierColumn(things))
                .update();
    }
}
