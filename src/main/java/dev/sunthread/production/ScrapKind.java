package dev.sunthread.production;

import dev.sunthread.catalog.Stations;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Units were scrapped; what is inside them can still be taken out. */
@Component
class ScrapKind implements Kind<ScrapKind.Body> {

    record Body(
            @Field(value = "The units", atLeast = 1) List<UnitName> units,
            @Field(value = "Why", text = TextForm.NOTE) String why,

            @Field("The station where it was done") @Nullable
            String station) {}

    private final Units units;
    private final UnitLives lives;
    private final UnitRules rules;
    private final Stations stations;
    private final JdbcClient jdbc;

    ScrapKind(Units units, UnitLives lives, UnitRules rules, Stations stations, JdbcClient jdbc) {
        this.units = units;
        this.lives = lives;
        this.rules = rules;
        this.stations = stations;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "scrap";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "Units were scrapped, with all that is inside them; what is inside can still be taken out.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        Map<Long, UnitName> scrapped = units.knownOnce(body.units(), "body.units");
        units.lock(scrapped.keySet());
        rules.unitsAreBorn(fact, scrapped);
        unitIsScrappedOnce(fact, scrapped);
        jdbc.sql("""
                        INSERT INTO production.scrapping (entry, unit, station, why, scrapped_at)
                        SELECT ?, unnest(?), cast(? AS bigint), ?, ?
                        """)
                .params(fact.entry(), scrapped.keySet().toArray(Long[]::new))
                .param(stations.idOf(body.station(), "body.station"))
                .params(body.why(), fact.occurredAt())
                .update();
        lives.areScrapped(scrapped.keySet());
    }

    private void unitIsScrappedOnce(Fact<Body> fact, Map<Long, UnitName> named) {
        Set<Long> before = lives.scrapped(named.keySet(), fact.occurredAt());
        named.forEach((unit, name) -> {
            if (before.contains(unit)) {
                fact.breaks(
                        "unit-is-scrapped-once",
                        "Unit " + name + " was scrapped before",
                        "Correct the serial, or void the scrapping that is wrong",
                        TraceRef.unit(unit));
            }
        });
    }
}
