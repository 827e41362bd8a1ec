package dev.sunthread.web.home;

import dev.sunthread.ledger.Known;
import dev.sunthread.materials.stock.Balance;
import dev.sunthread.production.balance.Balances;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Finds lots and opened containers that expired or do within seven days while some of them is, or may be, on hand: a lot
 * whose records tell no quantity, or not every one, is listed too.
 */
@Repository
class ExpiringThings {

    private static final int DAYS_AHEAD = 7;

    /** A lot made here without a stated time expires as the first of what it is made of. */
    private static final String EXPIRES = """
            WITH RECURSIVE expires (lot, at) AS (
              SELECT o.lot, o.expires_at FROM materials.lot_origin o WHERE o.expires_at <= :until AND %s
              UNION
              SELECT c.lot, x.at FROM expires x JOIN materials.lot_component c ON c.component = x.lot
              JOIN materials.lot_making m ON m.entry = c.entry AND m.lot = c.lot
              WHERE m.expires_at IS NULL AND %s),
            earliest AS (
              SELECT x.lot, min(x.at) AS at FROM expires x
              WHERE NOT EXISTS (SELECT FROM materials.lot_ending n WHERE n.lot = x.lot AND n.container IS NULL AND %s)
              GROUP BY x.lot)
            SELECT f.*, l.number AS lot, (
              SELECT min(i.number) FROM materials.lot_origin o JOIN catalog.item i ON i.id = o.item
              WHERE o.lot = l.id AND %s) AS item
            FROM (
              SELECT e.lot AS id, NULL::bigint AS container_id, NULL::text AS container, e.at AS expires_at,
                     NULL::timestamptz AS opened_at
              FROM earliest e
              UNION ALL
              SELECT e.lot, k.id, k.label, e.at, p.opened_at
              FROM earliest e JOIN (SELECT DISTINCT g.lot, g.container FROM materials.container_filling g WHERE %s) g ON g.lot = e.lot
              JOIN materials.container k ON k.id = g.container
              JOIN (SELECT q.container, min(q.opened_at) AS opened_at FROM materials.container_opening q WHERE %s
                    GROUP BY q.container) p ON p.container = k.id
              WHERE NOT EXISTS (SELECT FROM materials.lot_ending z WHERE z.container = k.id AND %s)) f
            JOIN materials.lot l ON l.id = f.id ORDER BY f.expires_at, l.number, f.container NULLS FIRST
            """.formatted(
                    Known.at("o.entry"),
                    Known.at("c.entry"),
                    Known.at("n.entry"),
                    Known.at("o.entry"),
                    Known.at("g.entry"),
                    Known.at("q.entry"),
                    Known.at("z.entry"));

    private record Found(
            long id,
            @Nullable Long containerId,
            @Nullable String container,
            OffsetDateTime expiresAt,
            @Nullable OffsetDateTime openedAt,
            String lot,
            @Nullable String item) {
        boolean isLot() {
            return containerId == null;
        }
    }

    private final Balances balances;
    private final Clock clock;
    private final JdbcClient jdbc;

    ExpiringThings(Balances balances, Clock clock, JdbcClient jdbc) {
        this.balances = balances;
        this.clock = clock;
        this.jdbc = jdbc;
    }

    /** All of them, the earliest first. */
    List<ExpiringThing> at(long cutoff) {
        OffsetDateTime now = OffsetDateTime.now(clock);
        List<Found> found = jdbc.sql(EXPIRES)
                .param("until", now.plusDays(DAYS_AHEAD))
                .param("cutoff", cutoff)
                .query(DataClassRowMapper.newInstance(Found.class))
                .list();
        Map<Long, Balance> lots = balances.ofLots(
                found.stream().filter(Found::isLot).map(Found::id).toList(), cutoff);
        Map<Long, Balance> containers = balances.ofContainers(
                found.stream().map(Found::containerId).filter(Objects::nonNull).toList(), cutoff);
        return found.stream()
                .map(one -> onHand(one, balance(one, lots, containers), now))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Balance balance(Found found, Map<Long, Balance> lots, Map<Long, Balance> containers) {
        Balance balance = found.isLot() ? lots.get(found.id()) : containers.get(found.containerId());
        return Objects.requireNonNull(balance);
    }

    private static Optional<ExpiringThing> onHand(Found found, Balance balance, OffsetDateTime now) {
        boolean measured = !balance.unitOfMeasure().isEmpty();
        boolean surelyNone = measured && balance.onHand().signum() == 0;
        return surelyNone
                ? Optional.empty()
                : Optional.of(new ExpiringThing(
                        found.lot(),
                        found.container(),
                        found.item(),
                        found.expiresAt(),
                        !now.isBefore(found.expiresAt()),
                        found.openedAt(),
                        measured ? balance.onHand() : null,
                        measured ? balance.unitOfMeasure() : null));
    }
}
