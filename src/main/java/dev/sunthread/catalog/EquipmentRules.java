package dev.sunthread.catalog;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Known;
import java.sql.Types;
import java.time.OffsetDateTime;
import java.util.Collection;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What must hold of equipment before it is used. */
@Component
public class EquipmentRules {

    private final JdbcClient jdbc;

    EquipmentRules(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * Says so if the last check before the happening ended was bad.
     *
     * @param specification what is measured by the equipment: checks under another one count for nothing; absent if
     *     every check counts
     */
    public void equipmentWasGoodAtItsLastCheck(
            Fact<?> fact, String code, long equipment, @Nullable Long specification, Collection<TraceRef> about) {
        if (wasBad(equipment, specification, fact.occurredAt())) {
            fact.breaks(
                    "equipment-was-good-at-its-last-check",
                    "Equipment " + code + " was found bad at its last check",
                    "Check it again and record the check before it is used; judge anew what it was used for since",
                    about.toArray(TraceRef[]::new));
        }
    }

    private boolean wasBad(long equipment, @Nullable Long specification, OffsetDateTime at) {
        return jdbc.sql("""
                        SELECT c.verdict FROM catalog.equipment_check c
                        WHERE c.equipment = :equipment AND c.checked_at <= :at AND %s
                          AND (:specification IS NULL OR coalesce(c.specification, :specification) = :specification)
                        ORDER BY c.checked_at DESC, c.entry DESC LIMIT 1
                        """.formatted(Known.now("c.entry")))
                .param("equipment", equipment)
                .param("at", at)
                .param("specification", specification, Types.BIGINT)
                .query(String.class)
                .optional()
                .filter(EquipmentCheckKind.Verdict.BAD.name()::equals)
                .isPresent();
    }
}
