package dev.sunthread.genealogy;

import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Since when a node counts as a suspect: a unit from the earliest its birth can have been, all else since ever. */
final class Births {

    private static final String OF_UNIT = """
            SELECT station, (extract(epoch FROM born_at) * 1000000)::bigint AS instant FROM production.birth b
            WHERE b.unit = :unit AND %s
            """.formatted(Known.at("b.entry"));

    private record Birth(@Nullable Long station, long instant) {}

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
        return jdbc.sql(OF_UNIT).param("unit", node.id()).param("cutoff", cutoff).query(Birth.class).stream()
                .mapToLong(
                        birth -> clocks.told(birth.station(), birth.instant()).early())
                .min()
                .orElse(Long.MIN_VALUE);
    }
}
