package dev.sunthread.catalog;

import dev.sunthread.ledger.body.Unreadable;
import jakarta.persistence.EntityManager;
import java.util.Optional;
import org.hibernate.Session;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Released items, by number; looked up once per transaction. */
@Service
public class Items {

    private final EntityManager entities;
    private final ReleasedItems kept;

    Items(EntityManager entities, ReleasedItems kept) {
        this.entities = entities;
        this.kept = kept;
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

    @Transactional(readOnly = true)
    public Optional<Item> find(String number) {
        return entities.unwrap(Session.class)
                .bySimpleNaturalId(ReleasedItem.class)
                .loadOptional(number)
                .map(ReleasedItem::item);
    }

    /** The item of that number, released now if it was not. */
    Item register(ItemKind.Body body) {
        return find(body.item())
                .orElseGet(() -> kept.save(
                                new ReleasedItem(body.item(), body.tracking(), body.level(), body.unitOfMeasure()))
                        .item());
    }
}
