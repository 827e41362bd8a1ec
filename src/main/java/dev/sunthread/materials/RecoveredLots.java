package dev.sunthread.materials;

import dev.sunthread.ledger.Fact;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Lots made of what was taken out of units. */
@Repository
public class RecoveredLots {

    /** What was taken out into a lot, as far as it is known: item, quantity with its unit, and station. */
    public record Recovered(
            long lot,
            @Nullable Long item,
            @Nullable BigDecimal quantity,
            @Nullable String unitOfMeasure,
            @Nullable Long station) {}

    private final JdbcClient jdbc;

    RecoveredLots(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Records the making of the lot as part of what is being recorded. */
    public void record(Fact<?> fact, Recovered recovered) {
        jdbc.sql("""
                        INSERT INTO materials.lot_making
                          (entry, lot, way, item, quantity, unit_of_measure, station, made_at)
                        VALUES (?, ?, 'RECOVERY', ?, ?, ?, ?, ?)
                        """)
                .params(fact.entry(), recovered.lot())
                .param(recovered.item())
                .param(recovered.quantity())
                .param(recovered.unitOfMeasure())
                .param(recovered.station())
                .param(fact.occurredAt())
                .update();
    }
}
