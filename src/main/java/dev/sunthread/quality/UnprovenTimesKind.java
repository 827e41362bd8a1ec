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

/** The times that a station tells within a spell are not proven: each may be any other of them. */
@Component
@Needs(Right.WORK)
class UnprovenTimesKind implements Kind<UnprovenTimesKind.Body> {

    record Body(
            @Field("The station") String station,

            @Field("What it tells of a time from then on may have been at any time of the spell; since ever if absent")
            @Nullable
            OffsetDateTime from,

            @Field("The end of the spell") OffsetDateTime to,

            @Field(
                    "What the clock said of the first such time, if one that is not trusted told it; what lies outside the"
                            + " spell is a finding")
            @Nullable
            OffsetDateTime told,

            @Field(value = "Why the times are not proven", text = TextForm.NOTE)
            String why) {}

    private final Stations stations;
    private final JdbcClient jdbc;

    UnprovenTimesKind(Stations stations, JdbcClient jdbc) {
        this.stations = stations;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "unproven-times";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "What a station tells of times within a spell is not proven, for a clock told it that anybody may set: a"
                + " trace takes each of them for the whole spell. The server says so itself, before it records a scan whose"
                + " age only the clock of a device tells.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        if (body.to().isAfter(fact.occurredAt())) {
            throw Unreadable.at("body.to", "is later than when this was said", "Give the end of a spell that is over");
        }
        if (body.from() != null && body.from().isAfter(body.to())) {
            throw Unreadable.at("body.from", "is later than the end of the spell", "Give the begin before the end");
        }
        toldTimesLieWithinWhatIsProven(fact);
        jdbc.sql("""
                        INSERT INTO quality.unproven_time (entry, station, since, until, told, why)
                        VALUES (?, ?, coalesce(cast(? AS timestamptz), '-infinity'), ?, ?, ?)
                        """)
                .param(fact.entry())
                .param(stations.named(body.station(), "body.station").id())
                .param(body.from())
                .param(body.to())
                .param(body.told())
                .param(body.why())
                .update();
    }

    private static void toldTimesLieWithinWhatIsProven(Fact<Body> fact) {
        Body body = fact.body();
        OffsetDateTime told = body.told();
        if (told != null && (told.isAfter(body.to()) || body.from() != null && told.isBefore(body.from()))) {
            fact.shows(
                    "told-times-lie-within-what-is-proven",
                    "A clock at " + body.station() + " said " + told + ", but it was "
                            + (body.from() == null ? "" : "not before " + body.from() + " and ") + "not after "
                            + body.to(),
                    "Set the clock of the device. Find out when it was done and correct what was recorded; a trace counts"
                            + " it at any time of those");
        }
    }
}
