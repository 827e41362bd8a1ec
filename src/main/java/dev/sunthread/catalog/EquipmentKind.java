package dev.sunthread.catalog;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Releases a revision of equipment: an oven, a lamp, a rig. */
@Component
@Needs(Right.DEFINE)
class EquipmentKind implements Definition<EquipmentKind.Body> {

    record Body(
            @Field("The equipment's code") String equipment,
            @Field("The revision that is released") String revision,

            @Field(value = "What people call it", text = TextForm.NAME)
            String name,

            @Field("The station whose clock tells its times, if it stands at one") @Nullable
            String station) {}

    private final ReleasedCodes codes;
    private final Stations stations;
    private final JdbcClient jdbc;

    EquipmentKind(ReleasedCodes codes, Stations stations, JdbcClient jdbc) {
        this.codes = codes;
        this.stations = stations;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "equipment";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A revision of equipment is released, such as an oven or a test rig.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        long equipment = codes.register("equipment", body.equipment(), body.revision());
        jdbc.sql("""
                        INSERT INTO catalog.equipment_revision (entry, equipment, revision, name, station, effective_at)
                        VALUES (?, ?, ?, ?, ?, ?)
                        """)
                .params(fact.entry(), equipment, body.revision(), body.name())
                .param(stations.idOf(body.station(), "body.station"))
                .param(fact.occurredAt())
                .update();
    }
}
