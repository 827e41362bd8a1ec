package dev.sunthread.catalog;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import dev.sunthread.ledger.body.Unreadable;
import java.math.BigDecimal;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Releases a revision of a station with its positions. */
@Component
@Needs(Right.DEFINE)
class StationKind implements Definition<StationKind.Body> {

    record Body(
            @Field("The station's code") String station,
            @Field("The revision that is released") String revision,

            @Field(value = "What people call it", text = TextForm.NAME)
            String name,

            @Field("Seconds by which a time recorded here may be early or late")
            BigDecimal clockUncertainty,

            @Field("The named places where material is loaded")
            List<String> positions,

            @Field("Positions where it is proved how soon nothing of the lot before is left")
            List<CarryOver> carryOver,

            @Field("Positions, such as tanks, whose content mixes: what is unloaded goes on as a new lot")
            List<String> mixingBack) {

        Body {
            if (clockUncertainty.signum() < 0 || clockUncertainty.compareTo(BigDecimal.valueOf(86_400)) > 0) {
                throw new Contradiction(
                        "clockUncertainty", "is not between 0 and 86400 seconds", "Give the seconds, such as \"30\"");
            }
        }
    }

    record CarryOver(
            @Field("The position") String position,

            @Field("Uses after a change until nothing of the lot before is left")
            int uses,

            @Field(value = "What proves it", text = TextForm.NOTE)
            String evidence) {

        CarryOver {
            if (uses < 0) {
                throw new Contradiction("uses", "is less than nought", "Give the number of uses, or 0");
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
        for (int i = 0; i < body.carryOver().size(); i++) {
            recordCarryOver(fact, body.carryOver().get(i), "body.carryOver[" + i + "].position");
        }
        for (int i = 0; i < body.mixingBack().size(); i++) {
            recordMixingBack(fact, body.mixingBack().get(i), "body.mixingBack[" + i + "]");
        }
    }

    private void recordCarryOver(Fact<Body> fact, CarryOver carryOver, String path) {
        int recorded = jdbc.sql("""
                        INSERT INTO catalog.position_carry_over (entry, position, uses, evidence) VALUES (?, ?, ?, ?)
                        ON CONFLICT DO NOTHING
                        """)
                .params(fact.entry(), position(fact, carryOver.position(), path))
                .params(carryOver.uses(), carryOver.evidence())
                .update();
        if (recorded == 0) {
            throw Unreadable.at(
                    path, "names \"" + carryOver.position() + "\" twice", "Give one limit for each position");
        }
    }

    private void recordMixingBack(Fact<Body> fact, String position, String path) {
        jdbc.sql("INSERT INTO catalog.position_mixing_back (entry, position) VALUES (?, ?) ON CONFLICT DO NOTHING")
                .params(fact.entry(), position(fact, position, path))
                .update();
    }

    private long position(Fact<Body> fact, String position, String path) {
        return stations.position(fact.body().station(), position, path).id();
    }
}
