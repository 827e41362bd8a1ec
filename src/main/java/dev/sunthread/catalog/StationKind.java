package dev.sunthread.catalog;

import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import java.math.BigDecimal;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Releases a revision of a station with its positions. */
@Component
class StationKind implements Definition<StationKind.Body> {

    record Body(
            @Field("The station's code") String station,
            @Field("The revision that is released") String revision,

            @Field(value = "What people call it", text = TextForm.NAME)
            String name,

            @Field("Seconds by which a time recorded here may be early or late")
            BigDecimal clockUncertainty,

            @Field("The named places where material is loaded")
            List<String> positions) {

        Body {
            if (clockUncertainty.signum() < 0 || clockUncertainty.compareTo(BigDecimal.valueOf(86_400)) > 0) {
                throw new Contradiction(
                        "clockUncertainty", "is not between 0 and 86400 seconds", "Give the seconds, such as \"30\"");
            }
        }
    }

    private final Stations stations;
    private final Revisions revisions;
    private final JdbcClient jdbc;

    StationKind(Stations stations, Revisions revisions, JdbcClient jdbc) {
        this.stations = stations;
        this.revisions = revisions;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "station";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A revision of a station is released; it is in force from when it occurred. Positions that an earlier"
                + " revision had stay known.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        Station station = stations.register(body.station());
        revisions.revisionIsReleasedOnce("station_revision", "station", station.id(), body.revision());
        jdbc.sql("""
                        INSERT INTO catalog.station_revision
                          (entry, station, revision, name, effective_at, clock_uncertainty) VALUES (?, ?, ?, ?, ?, ?)
                        """)
                .params(fact.entry(), station.id(), body.revision(), body.name())
                .params(fact.occurredAt(), body.clockUncertainty())
                .update();
        body.positions().forEach(position -> stations.registerPosition(station, position));
    }
}
