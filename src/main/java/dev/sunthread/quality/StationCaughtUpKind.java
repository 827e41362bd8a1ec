package dev.sunthread.quality;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import dev.sunthread.ledger.body.Unreadable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Everything done at a station that was behind is recorded now. */
@Component
@Needs(Right.WORK)
class StationCaughtUpKind implements Kind<StationCaughtUpKind.Body> {

    record Body(
            @Field(value = "The id of the envelope that said that the station is behind", text = TextForm.ID)
            String entry,

            @Field(value = "How that is known", text = TextForm.NOTE)
            String why) {}

    private final JdbcClient jdbc;

    StationCaughtUpKind(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "station-caught-up";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "Everything done at a station that was behind is recorded now; answers name it no longer.";
    }

    @Override
    public void record(Fact<Body> fact) {
        String entry = fact.body().entry();
        int caughtUp =
                jdbc.sql("""
                        INSERT INTO quality.station_caught_up (entry, behind, why)
                        SELECT ?, b.entry, ? FROM quality.station_behind b JOIN ledger.entry e ON e.number = b.entry
                        WHERE e.id = ?
                        """).params(fact.entry(), fact.body().why(), entry).update();
        if (caughtUp == 0) {
            throw Unreadable.at(
                    "body.entry",
                    "\"" + entry + "\" says of no station that it is behind",
                    "Give the id that the list of stations shows");
        }
    }
}
