package dev.sunthread.catalog;

import org.springframework.data.repository.Repository;

/** Keeps positions of stations. */
interface ReleasedPositions extends Repository<ReleasedPosition, Long> {

    ReleasedPosition save(ReleasedPosition position);
}
