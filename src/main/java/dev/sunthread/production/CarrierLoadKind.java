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

/** Units, or other carriers, were put on a carrier. */
@Component
class CarrierLoadKind implements Kind<CarrierLoadKind.Body> {

    record Body(
            @Field("The carrier they were put on") String carrier,

            @Field(value = "What was put on it", atLeast = 1)
            List<Load> loads,

            @Field("The station where it was done") @Nullable
            String station) {

        Body {
            if (loads.stream().anyMatch(load -> carrier.equals(load.carrier()))) {
                throw new Contradiction(
                        "loads", "names the carrier itself", "Name the units and other carriers that were put on it");
            }
        }
    }

    record Load(
            @Field("The unit, if it is one") @Nullable UnitName unit,

            @Field("The carrier, if one was put on another") @Nullable
            String carrier,

            @Field("The position on the carrier, if it has any") @Nullable
            String position)
            implements CarriedName {

        Load {
            if ((unit == null) == (carrier == null)) {
                throw new Contradiction("unit", "must be given, or carrier, and not both", "Name a unit or a carrier");
            }
        }
    }

    private final Carriers carriers;
    private final Carried carried;
    private final CarrierRules rules;
    private final Stations stations;
    private final JdbcClient jdbc;

    CarrierLoadKind(Carriers carriers, Carried carried, CarrierRules rules, Stations stations, JdbcClient jdbc) {
        this.carriers = carriers;
        this.carried = carried;
        this.rules = rules;
        this.stations = stations;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "carrier-load";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "Units, or other carriers with what is on them, were put on a carrier and stay there until they are unloaded.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        long carrier = carriers.known(body.carrier());
        List<Carried.Thing> things = carried.locked(carrier, body.loads(), "body.loads");
        rules.before(fact, things);
        jdbc.sql("""
                        INSERT INTO production.carrier_load
                          (entry, ordinal, carrier, unit, inner_carrier, position, station, loaded_at)
                        SELECT :entry, l.ordinal, :carrier, l.unit, l.inner_carrier, l.position, cast(:station AS bigint), :at
                        FROM unnest(cast(:units AS bigint[]), cast(:carriers AS bigint[]), cast(:positions AS text[]))
                          WITH ORDINALITY AS l (unit, inner_carrier, position, ordinal)
                        """)
                .param("entry", fact.entry())
                .param("carrier", carrier)
                .param("station", stations.idOf(body.station(), "body.station"))
                .param("at", fact.occurredAt())
                .param("units", Carried.unitColumn(things))
                .param("carriers", Carried.carrierColumn(things))
                .param("positions", body.loads().stream().map(Load::position).toArray(String[]::new))
                .update();
        rules.after(fact);
    }
}
