package dev.sunthread.catalog;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.Unreadable;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Releases what goes where in a unit of an item. */
@Component
@Needs(Right.DEFINE)
class StructureKind implements Definition<StructureKind.Body> {

    record Body(
            @Field("The item whose units are built so, or whose lots are made so")
            String item,

            @Field("The revision that is released") String revision,

            @Field(value = "The positions of a unit, or the components of a lot, and what may go there", atLeast = 1)
            List<Place> positions) {}

    record Place(
            @Field("The position's or component's name") String position,

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
        return "A revision of a structure is released: which positions a unit of the item has, or which"
                + " components its lots are made of, and what goes there.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        Item built = itemIsTracked(items.named(body.item(), "body.item"));
        long item = built.id();
        revisions.revisionIsReleasedOnce("structure_revision", "item", item, body.revision());
        jdbc.sql("INSERT INTO catalog.structure_revision (entry, item, revision, effective_at) VALUES (?, ?, ?, ?)")
                .params(fact.entry(), item, body.revision(), fact.occurredAt())
                .update();
        revisions.changed("structure_revision");
        int ordinal = 0;
        for (int i = 0; i < body.positions().size(); i++) {
            Place place = body.positions().get(i);
            recordPlace(fact.entry(), built, place, ordinal, "body.positions[" + i + "].items");
            ordinal += place.items().size();
        }
    }

    private void recordPlace(long entry, Item built, Place place, int before, String path) {
        int ordinal = before;
        for (String number : place.items()) {
            Item part = items.named(number, path);
            lotsAreMadeOfLots(built, part, path);
            jdbc.sql("""
                            INSERT INTO catalog.structure_position (entry, position, item, ordinal) VALUES (?, ?, ?, ?)
                            ON CONFLICT DO NOTHING
                            """).params(entry, place.position(), part.id(), ++ordinal).update();
        }
    }

    private static Item itemIsTracked(Item item) {
        if (item.tracking() == Tracking.NONE) {
            throw Unreadable.at(
                    "body.item",
                    "names item \"" + item.number() + "\", whose pieces are not told apart",
                    "Name an item that is tracked by serial or by lot");
        }
        return item;
    }

    private static void lotsAreMadeOfLots(Item built, Item part, String path) {
        if (built.tracking() == Tracking.LOT && part.tracking() == Tracking.SERIAL) {
            throw Unreadable.at(
                    path,
                    "names item \"" + part.number() + "\", which is tracked by serial, as a component of a lot",
                    "Name items that are tracked by lot; what is taken out of a unit into a lot is a recovery");
        }
    }
}
