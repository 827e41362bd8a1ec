package dev.sunthread.production;

import dev.sunthread.catalog.Stations;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.EarlierEntries;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Serials were given to new units. */
@Component
class BirthKind implements Kind<BirthKind.Body> {

    record Body(
            @Field(value = "The units", atLeast = 1) List<UnitName> units,

            @Field("The station where they got their serials") @Nullable
            String station) {}

    private final Units units;
    private final UnitLives lives;
    private final Stations stations;
    private final EarlierEntries earlier;
    private final JdbcClient jdbc;

    BirthKind(Units units, UnitLives lives, Stations stations, EarlierEntries earlier, JdbcClient jdbc) {
        this.units = units;
        this.lives = lives;
        this.stations = stations;
        this.earlier = earlier;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "birth";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "New units got their serials.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Long station = stations.idOf(fact.body().station(), "body.station");
        Map<Long, UnitName> born = units.knownOnce(fact.body().units(), "body.units");
        units.lock(born.keySet());
        serialsAreGivenOnce(fact, born);
        jdbc.sql(
                        "INSERT INTO production.birth (entry, unit, station, born_at) SELECT ?, unnest(?), cast(? AS bigint), ?")
                .params(fact.entry(), born.keySet().toArray(Long[]::new))
                .param(station)
                .param(fact.occurredAt())
                .update();
        lives.areBorn(born.keySet());
    }

    private void serialsAreGivenOnce(Fact<Body> fact, Map<Long, UnitName> named) {
        Set<Long> before = lives.born(named.keySet());
        named.forEach((unit, name) -> {
            if (before.contains(unit)) {
                fact.breaks(
                        "serial-is-given-once",
                        "Serial " + name + " was given before, recorded "
                                + earlier.words(lives.birthOf(unit), fact.occurredAt()),
                        "Find out which body carries it; relabel the other",
                        TraceRef.unit(unit));
            }
        });
    }
}
