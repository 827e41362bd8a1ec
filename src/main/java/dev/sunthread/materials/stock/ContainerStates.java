package dev.sunthread.materials.stock;

import dev.sunthread.ledger.Known;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What became of containers, from history as known at a cut-off. */
@Repository
public class ContainerStates {

    private record Head(
            long id,
            String label,
            @Nullable OffsetDateTime openedAt,
            @Nullable OffsetDateTime endedAt,
            @Nullable String ending) {}

    private static final String HEAD = """
            SELECT c.id, c.label,
              (SELECT min(o.opened_at) FROM materials.container_opening o WHERE o.container = c.id AND %s) AS opened_at,
              n.ended_at,
              CASE n.why WHEN 'USED_UP' THEN 'used up' WHEN 'SCRAPPED' THEN 'scrapped'
                WHEN 'RETURNED' THEN 'sent back to the supplier' END AS ending
            FROM materials.container c LEFT JOIN LATERAL (
              SELECT n.ended_at, n.why FROM materials.lot_ending n
              WHERE n.container = c.id AND %s ORDER BY n.ended_at DESC, n.entry DESC LIMIT 1) n ON true
            WHERE c.id = :container
            """.formatted(Known.at("o.entry"), Known.at("n.entry"));

    private final JdbcClient jdbc;

    ContainerStates(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The state of a container that was ever named; its out-time up to the moment. */
    public ContainerState of(long container, OffsetDateTime at, long cutoff) {
        Head head = read(HEAD, container, cutoff, Head.class).get(0);
        List<ContainerMove> moves = moves(container, cutoff);
        ContainerMove last = moves.isEmpty() ? null : moves.get(moves.size() - 1);
        return new ContainerState(
                container,
                head.label(),
                head.openedAt(),
                last == null ? null : last.place(),
                last == null ? null : last.storage(),
                OutTime.of(moves, head.endedAt() == null ? at : head.endedAt()),
                head.endedAt(),
                head.ending());
    }

    /** Every move of a container, the earliest first. */
    public List<ContainerMove> moves(long container, long cutoff) {
        return read("""
                        SELECT m.place, m.storage, m.moved_at AS at, e.id AS entry
                        FROM materials.container_move m JOIN ledger.entry e ON e.number = m.entry
                        WHERE m.container = :container AND %s ORDER BY m.moved_at, m.entry
                        """.formatted(Known.at("m.entry")), container, cutoff, ContainerMove.class);
    }

    /** The internal numbers of containers that were ever filled from a lot, the latest filling first, at most so many. */
    public List<Long> ofLot(long lot, int most, long cutoff) {
        return jdbc.sql("""
                        SELECT f.container FROM materials.container_filling f WHERE f.lot = :lot AND %s
                        GROUP BY f.container ORDER BY max(f.filled_at) DESC, f.container LIMIT :most
                        """.formatted(Known.at("f.entry")))
                .param("lot", lot)
                .param("most", most)
                .param("cutoff", cutoff)
                .query((row, number) -> row.getLong(1))
                .list();
    }

    private <T> List<T> read(String sql, long container, long cutoff, Class<T> type) {
        return jdbc.sql(sql)
                .param("container", container)
                .param("cutoff", cutoff)
                .query(DataClassRowMapper.newInstance(type))
                .list();
    }
}
