package dev.sunthread.production.balance;

import dev.sunthread.materials.stock.Balance;
import dev.sunthread.materials.stock.Movement;
import dev.sunthread.materials.stock.Movements;
import java.util.List;
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
        return balance(movements.ofLot(lot, cutoff), uses.ofLot(lot, cutoff));
    }

    public Balance ofContainer(long container, long cutoff) {
        return balance(movements.ofContainer(container, cutoff), uses.ofContainer(container, cutoff));
    }

    private static Balance balance(List<Movement> moved, List<Movement> used) {
        return Balance.of(Stream.concat(moved.stream(), used.stream()).toList());
    }
}
