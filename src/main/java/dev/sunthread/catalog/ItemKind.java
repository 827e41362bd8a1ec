package dev.sunthread.catalog;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import dev.sunthread.ledger.body.Unreadable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Releases a revision of an item. */
@Component
@Needs(Right.DEFINE)
class ItemKind implements Definition<ItemKind.Body> {

    record Body(
            @Field("The item's number") String item,
            @Field("The revision that is released") String revision,

            @Field(value = "What people call it", text = TextForm.NAME)
            String name,

            @Field("How its pieces are told apart") Tracking tracking,

            @Field("The level its units are counted at; for items tracked by serial") @Nullable
            String level,

            @Field("The unit its quantities are stated in") String unitOfMeasure,

            @Field(value = "Seconds for which an opened container of it may be used", positive = true) @Nullable
            Integer openLife,

            @Field(
                    value = "Seconds for which a container of it may be at room temperature, all excursions added up",
                    positive = true)
            @Nullable
            Integer outLife) {

        Body {
            if ((tracking == Tracking.SERIAL) != (level != null)) {
                throw new Contradiction(
                        "level",
                        level == null
                                ? "is missing for an item tracked by serial"
                                : "is given for an item without serials",
                        "Give the level for items tracked by serial, and only for those");
            }
            if (tracking == Tracking.SERIAL && (openLife != null || outLife != null)) {
                throw new Contradiction(
                        openLife != null ? "openLife" : "outLife",
                        "is given for an item tracked by serial",
                        "Give it only for items that come in containers");
            }
        }
    }

    private final Items items;
    private final Revisions revisions;
    private final ItemLives lives;
    private final JdbcClient jdbc;

    ItemKind(Items items, Revisions revisions, ItemLives lives, JdbcClient jdbc) {
        this.items = items;
        this.revisions = revisions;
        this.lives = lives;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "item";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A revision of an item is released; what makes its identity stays as in its first revision.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        Item item = items.register(body);
        trackingStaysAsFirstReleased(item, body);
        revisions.revisionIsReleasedOnce("item_revision", "item", item.id(), body.revision());
        jdbc.sql("""
                        INSERT INTO catalog.item_revision (entry, item, revision, name, open_life, out_life)
                        VALUES (?, ?, ?, ?, ?, ?)
                        """)
                .params(fact.entry(), item.id(), body.revision(), body.name())
                .param(body.openLife())
                .param(body.outLife())
                .update();
        lives.changed();
    }

    private static void trackingStaysAsFirstReleased(Item item, Body body) {
        if (item.tracking() != body.tracking()
                || !Objects.equals(item.level(), body.level())
                || !item.unitOfMeasure().equals(body.unitOfMeasure())) {
            throw Unreadable.at(
                    "body.tracking",
                    "differs from the item's first revision in tracking, level or unit of measure",
                    "Keep all three, or release another item number");
        }
    }
}
