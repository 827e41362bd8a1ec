package dev.sunthread.materials.stock;

import dev.sunthread.ledger.Known;
import dev.sunthread.ledger.SoleWriter;
import dev.sunthread.materials.ContainerAge;
import dev.sunthread.materials.ContainerAges;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads how old the content of containers is from what is recorded of them. */
@Repository
class RecordedAges implements ContainerAges {

    private static final String HEAD = """
            SELECT
              least((SELECT min(o.opened_at) FROM materials.container_opening o WHERE o.container = :container AND %s),
                    (SELECT min(c.charged_at) FROM materials.charge c WHERE c.container = :container AND %s)) AS opened_at,
              (SELECT min(n.ended_at) FROM materials.lot_ending n WHERE n.container = :container AND %s) AS ended_at
            """.formatted(Known.now("o.entry"), Known.now("c.entry"), Known.now("n.entry"));

    private static final String MOVES = """
            SELECT m.place, m.storage, m.moved_at AS at, '' AS entry FROM materials.container_move m
            WHERE m.container = :container AND %s ORDER BY m.moved_at, m.entry
            """.formatted(Known.now("m.entry"));

    private record Head(
            @Nullable OffsetDateTime openedAt, @Nullable OffsetDateTime endedAt) {}

    private record Life(Head head, List<ContainerMove> moves) {}

    private final SoleWriter sole;
    private final JdbcClient jdbc;

    RecordedAges(SoleWriter sole, JdbcClient jdbc) {
        this.sole = sole;
        this.jdbc = jdbc;
    }

    @Override
    public ContainerAge of(long container, OffsetDateTime at) {
        Life life = lives().computeIfAbsent(container, this::read);
        return new ContainerAge(
                life.head().openedAt(),
                OutTime.of(life.moves(), at).total(),
                life.head().endedAt());
    }

    @Override
    public void changed(long container) {
        lives().remove(container);
    }

    private Map<Long, Life> lives() {
        return sole.known("container lives");
    }

    private Life read(long container) {
        return new Life(
                jdbc.sql(HEAD)
                        .param("container", container)
                        .query(DataClassRowMapper.newInstance(Head.class))
                        .single(),
                jdbc.sql(MOVES)
                        .param("container", container)
                        .query(DataClassRowMapper.newInstance(ContainerMove.class))
                        .list());
    }
}
