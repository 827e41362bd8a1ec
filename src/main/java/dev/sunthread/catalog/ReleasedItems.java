package dev.sunthread.catalog;

import org.springframework.data.repository.Repository;

/** Keeps items. */
interface ReleasedItems extends Repository<ReleasedItem, Long> {

    ReleasedItem save(ReleasedItem item);
}
