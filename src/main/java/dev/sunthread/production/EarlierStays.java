package dev.sunthread.production;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What was recorded as being where before something else was put there. */
@Repository
class EarlierStays {

    /**
     * Where something is.
     *
     * @param entry the entry that told it
     * @param child the unit that is there; absent for a part of a lot
     * @param what the child in words
     * @param place the position and its parent in words
     */
    record Stay(long entry, @Nullable Long child, String what, String place) {}

    private final JdbcClient jdbc;

    EarlierStays(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What contradicts an installation and was recorded before it, the first first. */
    List<Stay> contradicting(long entry) {
        return jdbc.sql("""
                        SELECT o.entry, o.child_unit AS child,
                          coalesce('unit ' || ci.number || ' ' || c.serial, 'a part of lot ' || l.number) AS what,
                          'position ' || p.position || ' of unit ' || i.number || ' ' || u.serial AS place
                        FROM production.stay n JOIN production.installation ni ON ni.entry = n.entry
                        JOIN production.stay o ON o.entry <> n.entry AND o.during && n.during
                          AND (o.child_unit = n.child_unit OR o.parent_position = n.parent_position)
                        JOIN production.installation oi ON oi.entry = o.entry AND oi.ordinal < ni.ordinal
                        JOIN production.parent_position p ON p.id = o.parent_position
                        JOIN production.unit u ON u.id = p.parent JOIN catalog.item i ON i.id = u.item
                        LEFT JOIN production.unit c ON c.id = o.child_unit LEFT JOIN catalog.item ci ON ci.id = c.item
                        LEFT JOIN materials.lot l ON l.id = o.child_lot
                        WHERE n.entry = ? ORDER BY oi.ordinal
                        """)
                .param(entry)
                .query(DataClassRowMapper.newInstance(Stay.class))
                .list();
    }
}
