package dev.sunthread.quality;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.catalog.Stations;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import dev.sunthread.ledger.body.Unreadable;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Not everything done at a station may be recorded, from a time on. */
@Component
@Needs(Right.WORK)
class StationBehindKind implements Kind<StationBehindKind.Body> {

    record Body(
            @Field("The station") String station,

            @Field("Until then everything done there is recorded")
            OffsetDateTime since,

            @Field(value = "The page at the station it is about, if about one: a UUID (RFC 9562)", text = TextForm.ID)
            @Nullable
            String page,

            @Field(value = "What keeps it behind", text = TextForm.NOTE)
            String why) {}

    private final Stations stations;
    private final JdbcClient jdbc;

    StationBehindKind(Stations stations, JdbcClient jdbc) {
        this.stations = stations;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "station-behind";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "Not everything done at a station may be recorded, from a time on; every answer names it until it has caught"
                + " up. The server says so itself of a page that it does not hear from.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        if (body.since().isAfter(fact.occurredAt())) {
            throw Unreadable.at(
                    "body.since",
                    "is later than when it was noticed",
                    "Give a time until which everything done at the station is surely recorded");
        }
        jdbc.sql(
                        "INSERT INTO quality.station_behind (entry, station, since, page, why) VALUES (?, ?, ?, cast(? AS uuid), ?)")
                .params(
                        fact.entry(),
                        stations.named(body.station(), "body.station").id(),
                        body.since())
                .param(body.page())
                .param(body.why())
                .update();
    }
}
