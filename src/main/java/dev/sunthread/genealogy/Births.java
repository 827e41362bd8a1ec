package dev.sunthread.genealogy;

import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Since when a node counts as a suspect: a unit from its birth, everything else since ever. */
final class Births {

    private static final String FIRST = """
            SELECT station, (extract(epoch FROM born_at) * 1000000)::bigint AS instant FROM production.birth b
            WHERE b.unit = :unit AND %s ORDER BY born_at LIMIT 1
            """.formatted(Known.at("b.entry"));

    private record Birth(@org.jspecify.annotations.Nullable Long station, long instant) {}

    private final JdbcClient jdbc;
    private final long cutoff;
    private final Clocks clocks;

    Births(JdbcClient jdbc, long cutoff, Clocks clocks) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
        this.clocks = clocks;
    }

    long startOf(TraceRef node) {
        if (node.kind() != TraceKind.UNIT) {
            return Long.MIN_VALUE;
        }
        Optional<Birth> birth = jdbc.sql(FIRST)
                .param("unit", node.id())
                .param("cutoff", cutoff)
                .query(Birth.class)
                .optional();
        return birth.map(born -> clocks.told(born.station(), born.instant()).early())
                .orElse(Long.MIN_VALUE);
    }
}
