package dev.sunthread.production.balance;

import dev.sunthread.materials.stock.Balance;
import dev.sunthread.materials.stock.Movement;
import dev.sunthread.materials.stock.Movements;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;

/** The balance of a lot or container from all happenings known at a cut-off. */
@Service
public class Balances {

    private final Movements movements;
    private final Uses uses;

    Balances(Movements movements, Uses uses) {
        this.movements = movements;
        this.uses = uses;
    }

    public Balance ofLot(long lot, long cutoff) {
        return Objects.requireNonNull(ofLots(List.of(lot), cutoff).get(lot));
    }

    public Balance ofContainer(long container, long cutoff) {
        return Objects.requireNonNull(ofContainers(List.of(container), cutoff).get(container));
    }

    /** The balance of each of many lots, read at once. */
    public Map<Long, Balance> ofLots(Collection<Long> lots, long cutoff) {
        return each(lots, movements.ofLots(lots, cutoff), uses.ofLots(lots, cutoff));
    }

    /** The balance of each of many containers, read at once. */
    public Map<Long, Balance> ofContainers(Collection<Long> containers, long cutoff) {
        return each(containers, movements.ofContainers(containers, cutoff), uses.ofContainers(containers, cutoff));
    }

    private static Map<Long, Balance> each(
            Collection<Long> things, Map<Long, List<Movement>> moved, Map<Long, List<Movement>> used) {
        return things.stream()
                .distinct()
                .collect(Collectors.toMap(
                        thing -> thing,
                        thing -> balance(moved.getOrDefault(thing, List.of()), used.getOrDefault(thing, List.of()))));
    }

    private static Balance balance(List<Movement> moved, List<Movement> used) {
        return Balance.of(Stream.concat(moved.stream(), used.stream()).toList());
    }
}
