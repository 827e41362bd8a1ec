package dev.sunthread.catalog;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.NaturalId;
import org.jspecify.annotations.Nullable;

/** An item as the database keeps it; what makes its identity never changes. */
@Entity
@Immutable
@Table(schema = "catalog", name = "item")
class ReleasedItem {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @NaturalId
    private String number;

    @Enumerated(EnumType.STRING)
    private Tracking tracking;

    private @Nullable String level;

    @Column(name = "unit_of_measure")
    private String unitOfMeasure;

    /** For the database only. */
    @SuppressWarnings("NullAway.Init")
    protected ReleasedItem() {}

    ReleasedItem(String number, Tracking tracking, @Nullable String level, String unitOfMeasure) {
        this.number = number;
        this.tracking = tracking;
        this.level = level;
        this.unitOfMeasure = unitOfMeasure;
    }

    Item item() {
        return new Item(id == null ? 0 : id, number, tracking, level, unitOfMeasure);
    }
}
