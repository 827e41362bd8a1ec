package dev.sunthread.catalog;

import dev.sunthread.ledger.body.Unreadable;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Released items, by number. */
@Repository
public class Items {

    private final JdbcClient jdbc;

    Items(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The item that a body names. @throws Unreadable if it was never released */
    public Item named(String number, String field) {
        return find(number)
                .orElseThrow(() -> Unreadable.at(
                        field,
                        "names item \"" + number + "\", which is not released",
                        "Release the item first or correct its number"));
    }

    /** The item of that number which is tracked by serial. @throws Unreadable if it is unknown or tracked otherwise */
    public Item serialised(String number, String field) {
        Item item = named(number, field);
        if (item.tracking() != Tracking.SERIAL) {
            throw Unreadable.at(
                    field,
                    "names item \"" + number + "\", which is not tracked by serial",
                    "Name a unit of an item that is tracked by serial");
        }
        return item;
    }

    public Optional<Item> find(String number) {
        return jdbc.sql("SELECT id, number, tracking, level, unit_of_measure FROM catalog.item WHERE number = ?")
                .param(number)
                .query(Item.class)
                .optional();
    }

    Item register(Item item) {
        jdbc.sql("""
                        INSERT INTO catalog.item (number, tracking, level, unit_of_measure) VALUES (?, ?, ?, ?)
                        ON CONFLICT (number) DO NOTHING
                        """)
                .params(item.number(), item.tracking().name())
                .param(item.level())
                .param(item.unitOfMeasure())
                .update();
        return find(item.number()).orElseThrow();
    }
}
