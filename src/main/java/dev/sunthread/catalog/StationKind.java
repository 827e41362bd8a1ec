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
            List<String> mixingBack,

            @Field("Positions that take only certain items; one that is not named takes any")
            List<Takes> takes) {

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

    record Takes(
            @Field("The position") String position,

            @Field(
                    value = "The items that may be loaded there; their approved alternates may be too",
                    atLeast = 1,
                    atMost = 100)
            List<String> items) {}

    private final Stations stations;
    private final Items items;
    private final Revisions revisions;
    private final JdbcClient jdbc;

    StationKind(Stations stations, Items items, Revisions revisions, JdbcClient jdbc) {
        this.stations = stations;
        this.items = items;
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
        revisions.changed("station_revision");
        body.positions().forEach(position -> stations.registerPosition(station, position));
        for (int i = 0; i < body.carryOver().size(); i++) {
            recordCarryOver(fact, body.carryOver().get(i), "body.carryOver[" + i + "].position");
        }
        for (int i = 0; i < body.mixingBack().size(); i++) {
            recordMixingBack(fact, body.mixingBack().get(i), "body.mixingBack[" + i + "]");
        }
        for (int i = 0; i < body.takes().size(); i++) {
            recordTakes(fact, body.takes().get(i), "body.takes[" + i + "]");
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

    private void recordTakes(Fact<Body> fact, Takes takes, String path) {
        long position = position(fact, takes.position(), path + ".position");
        for (int i = 0; i < takes.items().size(); i++) {
            String item = takes.items().get(i);
            int recorded = jdbc.sql(
                            "INSERT INTO catalog.position_item (entry, position, item) VALUES (?, ?, ?) ON CONFLICT DO NOTHING")
                    .params(fact.entry(), position)
                    .param(loadable(item, path + ".items[" + i + "]").id())
                    .update();
            if (recorded == 0) {
                throw Unreadable.at(
                        path + ".items[" + i + "]",
                        "names item \"" + item + "\" of position \"" + takes.position() + "\" twice",
                        "Name each item of a position once");
            }
        }
    }

    private Item loadable(String number, String path) {
        Item item = items.named(number, path);
        if (item.tracking() == Tracking.SERIAL) {
            throw Unreadable.at(
                    path,
                    "names item \"" + number + "\", which is tracked by serial",
                    "Name items that come in lots: only lots are loaded at a position");
        }
        return item;
    }

    private long position(Fact<Body> fact, String position, String path) {
        return stations.position(fact.body().station(), position, path).id();
    }
}
