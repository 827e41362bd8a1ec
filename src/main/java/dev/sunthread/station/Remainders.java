package dev.sunthread.station;

import dev.sunthread.catalog.ItemLives;
import dev.sunthread.catalog.Items;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.materials.stock.Balance;
import dev.sunthread.materials.stock.ContainerStates;
import dev.sunthread.production.balance.Balances;
import dev.sunthread.station.work.Loaded;
import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Finds how much is left of what is loaded, and until when it is good. */
@Component
class Remainders {

    private final Sealer sealer;
    private final Balances balances;
    private final ContainerStates containers;
    private final Items items;
    private final ItemLives lives;
    private final Clock clock;

    Remainders(
            Sealer sealer, Balances balances, ContainerStates containers, Items items, ItemLives lives, Clock clock) {
        this.sealer = sealer;
        this.balances = balances;
        this.containers = containers;
        this.items = items;
        this.lives = lives;
        this.clock = clock;
    }

    Remaining of(Loaded loaded) {
        long cutoff = sealer.seal();
        Balance balance = loaded.containerId() == null
                ? balances.ofLot(loaded.lotId(), cutoff)
                : balances.ofContainer(loaded.containerId(), cutoff);
        return new Remaining(
                loaded.position(),
                Objects.requireNonNullElse(loaded.container(), loaded.lot()),
                loaded.item(),
                balance.isExact() ? balance.onHand() : null,
                balance.unitOfMeasure(),
                goodUntil(loaded, cutoff),
                loaded.hold());
    }

    private @Nullable OffsetDateTime goodUntil(Loaded loaded, long cutoff) {
        return Stream.of(Optional.ofNullable(loaded.expiresAt()), openUntil(loaded, cutoff))
                .flatMap(Optional::stream)
                .min(OffsetDateTime::compareTo)
                .orElse(null);
    }

    private Optional<OffsetDateTime> openUntil(Loaded loaded, long cutoff) {
        if (loaded.containerId() == null || loaded.item() == null) {
            return Optional.empty();
        }
        OffsetDateTime now = OffsetDateTime.now(clock);
        OffsetDateTime opened = containers.of(loaded.containerId(), now, cutoff).openedAt();
        Optional<Duration> open =
                items.find(loaded.item()).map(item -> lives.of(item.id(), now).open());
        return opened == null ? Optional.empty() : open.map(opened::plus);
    }
}
