package dev.sunthread.catalog;

import org.springframework.data.repository.Repository;

/** Keeps stations. */
interface ReleasedStations extends Repository<ReleasedStation, Long> {

    ReleasedStation save(ReleasedStation station);
}
