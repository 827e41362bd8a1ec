package dev.sunthread.web.lot;

import dev.sunthread.materials.stock.Balance;
import dev.sunthread.materials.stock.ContainerStates;
import dev.sunthread.production.balance.Balances;
import dev.sunthread.web.Paged;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** What is left of a lot, in all and in each of its containers. */
@Service
class LotContents {

    private static final int A_PAGE = 50;

    private final ContainerStates containers;
    private final Balances balances;

    LotContents(ContainerStates containers, Balances balances) {
        this.containers = containers;
        this.balances = balances;
    }

    Balance balance(long lot, long cutoff) {
        return balances.ofLot(lot, cutoff);
    }

    /** A page of its containers, those filled last first. */
    Paged<HeldContent> ofContainers(long lot, @Nullable Integer page, OffsetDateTime at, long cutoff) {
        Paged<Long> shown = Paged.of(page, A_PAGE, containers.ofLot(lot, Integer.MAX_VALUE, cutoff));
        return new Paged<>(states(shown.rows(), at, cutoff), shown.total(), shown.page(), shown.size());
    }

    List<HeldContent> ofEveryContainer(long lot, OffsetDateTime at, long cutoff) {
        return states(containers.ofLot(lot, Integer.MAX_VALUE, cutoff), at, cutoff);
    }

    private List<HeldContent> states(List<Long> numbers, OffsetDateTime at, long cutoff) {
        Map<Long, Balance> left = balances.ofContainers(numbers, cutoff);
        return numbers.stream()
                .map(container -> new HeldContent(
                        containers.of(container, at, cutoff), Objects.requireNonNull(left.get(container))))
                .toList();
    }
}
