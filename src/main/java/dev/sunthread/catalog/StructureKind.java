package dev.sunthread.catalog;

import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.body.Field;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Releases what goes where in a unit of an item. */
@Component
class StructureKind implements Definition<StructureKind.Body> {

    record Body(
            @Field("The item whose units are built so") String item,
            @Field("The revision that is released") String revision,

            @Field(value = "The positions of a unit and what may go there", atLeast = 1)
            List<Place> positions) {}

    record Place(
            @Field("The position's name") String position,

            @Field(value = "The item that goes there, approved alternates behind it", atLeast = 1, atMost = 100)
            List<String> items) {}

    private final Items items;
    private final Revisions revisions;
    private final JdbcClient jdbc;

    StructureKind(Items items, Revisions revisions, JdbcClient jdbc) {
        this.items = items;
        this.revisions = revisions;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "structure";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A revision of a structure is released: which positions a unit of the item has and what goes there.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        long item = items.serialised(body.item(), "body.item").id();
        revisions.revisionIsReleasedOnce("structure_revision", "item", item, body.revision());
        jdbc.sql("INSERT INTO catalog.structure_revision (entry, item, revision, effective_at) VALUES (?, ?, ?, ?)")
                .params(fact.entry(), item, body.revision(), fact.occurredAt())
                .update();
        for (int i = 0; i < body.positions().size(); i++) {
            recordPlace(fact.entry(), body.positions().get(i), "body.positions[" + i + "]");
        }
    }

    private void recordPlace(long entry, Place place, String path) {
        for (String number : place.items()) {
            jdbc.sql(
                            "INSERT INTO catalog.structure_position (entry, position, item) VALUES (?, ?, ?) ON CONFLICT DO NOTHING")
                    .params(
                            entry,
                            place.position(),
                            items.named(number, path + ".items").id())
                    .update();
        }
    }
}
