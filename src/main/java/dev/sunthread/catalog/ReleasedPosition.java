package dev.sunthread.catalog;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.NaturalId;
import org.jspecify.annotations.Nullable;

/** A position of a station as the database keeps it. */
@Entity
@Immutable
@Table(schema = "catalog", name = "position")
class ReleasedPosition {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @NaturalId
    @Column(name = "station")
    private long stationId;

    @NaturalId
    private String code;

    private @Nullable Long namedBy;

    /** For the database only. */
    @SuppressWarnings("NullAway.Init")
    protected ReleasedPosition() {}

    ReleasedPosition(long stationId, String code, long namedBy) {
        this.stationId = stationId;
        this.code = code;
        this.namedBy = namedBy;
    }

    Position of(Station station) {
        return new Position(id == null ? 0 : id, station.id(), station.code(), code);
    }
}
