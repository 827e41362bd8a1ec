package dev.sunthread.catalog;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.NaturalId;
import org.jspecify.annotations.Nullable;

/** A station as the database keeps it; its revisions are history. */
@Entity
@Immutable
@Table(schema = "catalog", name = "station")
class ReleasedStation {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @NaturalId
    private String code;

    /** For the database only. */
    @SuppressWarnings("NullAway.Init")
    protected ReleasedStation() {}

    ReleasedStation(String code) {
        this.code = code;
    }

    Station station() {
        return new Station(id == null ? 0 : id, code);
    }
}
