package dev.sunthread.catalog;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.kernel.SerialPattern;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import dev.sunthread.ledger.body.Unreadable;
import java.util.List;
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

            @Field("What its serials look like: # a digit, @ a letter A to Z, ? either, all else itself") @Nullable
            String serialPattern,

            @Field(
                    value = "Numbers of others for it, such as a GTIN or a supplier's, as labels hold them",
                    atMost = 100)
            List<String> labelNumbers,

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
            if (serialPattern != null && (level == null || !new SerialPattern(serialPattern).isVaried())) {
                throw new Contradiction(
                        "serialPattern",
                        level == null ? "is given for an item without serials" : "is the same for every serial",
                        "Give the pattern for items tracked by serial, with # for each digit that varies");
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
    private final ItemLabels labels;
    private final ItemLives lives;
    private final JdbcClient jdbc;

    ItemKind(Items items, Revisions revisions, ItemLabels labels, ItemLives lives, JdbcClient jdbc) {
        this.items = items;
        this.revisions = revisions;
        this.labels = labels;
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
                        INSERT INTO catalog.item_revision
                          (entry, item, revision, name, serial_pattern, open_life, out_life) VALUES (?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(fact.entry(), item.id(), body.revision(), body.name())
                .param(body.serialPattern())
                .param(body.openLife())
                .param(body.outLife())
                .update();
        labels.keep(fact.entry(), item.id(), body.labelNumbers());
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
