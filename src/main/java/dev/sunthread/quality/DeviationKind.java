package dev.sunthread.quality;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.catalog.Items;
import dev.sunthread.catalog.ReleasedCodes;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import dev.sunthread.materials.Lots;
import dev.sunthread.production.KnownNames;
import dev.sunthread.production.UnitName;
import dev.sunthread.production.Units;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** A person signs that something demanded was not done to a unit, or is not in it or in a lot. */
@Component
@Needs(Right.JUDGE)
class DeviationKind implements Kind<DeviationKind.Body> {

    record Body(
            @Field("The unit, if it is about one") @Nullable UnitName unit,

            @Field("The lot, if it is about one") @Nullable String lot,

            @Field(
                    "The operation that was done without it, if it is about one; alone, it was not done at all, and what it"
                            + " takes in and demands is looked for until each is signed")
            @Nullable
            String operation,

            @Field("The position that stays empty, if it is about one") @Nullable
            String position,

            @Field("The item that did not go in") @Nullable String item,

            @Field("The recipe of the cure that was not done") @Nullable
            String recipe,

            @Field("The specification of the test that was not done") @Nullable
            String specification,

            @Field(value = "Why, and who decided it", text = TextForm.NOTE)
            String why) {

        Body {
            if ((unit == null) == (lot == null)) {
                throw new Contradiction("unit", "must be given, or lot, and not both", "Name a unit or a lot");
            }
            long things = Stream.of(item, recipe, specification)
                    .filter(Objects::nonNull)
                    .count();
            boolean isOfAnOperation = unit != null && operation != null && position == null;
            if (things > 1 || things == 0 && !isOfAnOperation) {
                throw new Contradiction(
                        "item",
                        "must be given, or recipe, or specification, and only one of them",
                        "Say which one thing was not done, in an envelope for each; for a whole operation only unit and"
                                + " operation");
            }
        }

        /** Whether it is about an operation that was not done at all. */
        boolean isOfAnOperation() {
            return item == null && recipe == null && specification == null;
        }
    }

    private final Units units;
    private final Lots lots;
    private final Items items;
    private final ReleasedCodes codes;
    private final KnownNames names;
    private final JdbcClient jdbc;

    DeviationKind(Units units, Lots lots, Items items, ReleasedCodes codes, KnownNames names, JdbcClient jdbc) {
        this.names = names;
        this.units = units;
        this.lots = lots;
        this.items = items;
        this.codes = codes;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "deviation";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "Something demanded was not done to a unit or is not in a lot, and a person signs for that: nothing is"
                + " looked for in its place.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        if (body.isOfAnOperation()) {
            recordOperation(fact);
            return;
        }
        String item = body.item();
        String recipe = body.recipe();
        String specification = body.specification();
        jdbc.sql("""
                        INSERT INTO quality.deviation
                          (entry, unit, lot, operation, position, item, recipe, specification, why)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .param(fact.entry())
                .param(body.unit() == null ? null : known(fact, body.unit()))
                .param(body.lot() == null ? null : known(fact, body.lot()))
                .param(body.operation())
                .param(body.position())
                .param(item == null ? null : items.named(item, "body.item").id())
                .param(recipe == null ? null : codes.recipe(recipe, "body.recipe"))
                .param(specification == null ? null : codes.specification(specification, "body.specification"))
                .param(body.why())
                .update();
    }

    private void recordOperation(Fact<Body> fact) {
        Body body = fact.body();
        jdbc.sql("INSERT INTO quality.operation_not_done (entry, unit, operation, why) VALUES (?, ?, ?, ?)")
                .params(fact.entry(), known(fact, Objects.requireNonNull(body.unit())))
                .params(Objects.requireNonNull(body.operation()), body.why())
                .update();
    }

    private long known(Fact<Body> fact, UnitName name) {
        long unit = units.known(name, "body.unit");
        names.ofUnits(fact, Map.of(unit, name));
        return unit;
    }

    private long known(Fact<Body> fact, String number) {
        long lot = lots.known(number);
        names.ofLot(fact, lot, number);
        return lot;
    }
}
