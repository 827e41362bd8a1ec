package dev.sunthread.web.lot;

import dev.sunthread.materials.stock.Balance;
import dev.sunthread.materials.stock.ContainerStates;
import dev.sunthread.production.balance.Balances;
import java.time.OffsetDateTime;
import java.util.List;
import org.springframework.stereotype.Service;

/** What is left of a lot, in all and in each of its containers. */
@Service
class LotContents {

    private static final int MOST = 50;

    private final ContainerStates containers;
    private final Balances balances;

    LotContents(ContainerStates containers, Balances balances) {
        this.containers = containers;
        this.balances = balances;
    }

    Balance balance(long lot, long cutoff) {
        return balances.ofLot(lot, cutoff);
    }

    /** The containers filled last, at most fifty. */
    List<HeldContent> ofContainers(long lot, OffsetDateTime at, long cutoff) {
        return containers.ofLot(lot, MOST, cutoff).stream()
                .map(container ->
                        new HeldContent(containers.of(container, at, cutoff), balances.ofContainer(container, cutoff)))
                .toList();
    }
}
