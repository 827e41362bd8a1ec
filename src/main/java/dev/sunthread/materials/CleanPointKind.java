package dev.sunthread.materials;

import dev.sunthread.catalog.Stations;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** A position was purged or changed over so that nothing of earlier lots remains. */
@Component
class CleanPointKind implements Kind<CleanPointKind.Body> {

    record Body(
            @Field("The station") String station,
            @Field("The position on it") String position,

            @Field(value = "What was done and how it was checked", text = TextForm.NOTE)
            String evidence) {}

    private final Stations stations;
    private final JdbcClient jdbc;

    CleanPointKind(Stations stations, JdbcClient jdbc) {
        this.stations = stations;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "clean-point";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A position was purged or changed over; what earlier lots left behind ends here.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        long position = stations.position(body.station(), body.position(), "body.position")
                .id();
        jdbc.sql("INSERT INTO materials.clean_point (entry, position, cleaned_at, evidence) VALUES (?, ?, ?, ?)")
                .params(fact.entry(), position, fact.occurredAt(), body.evidence())
                .update();
    }
}
