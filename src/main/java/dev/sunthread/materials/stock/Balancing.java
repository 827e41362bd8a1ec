package dev.sunthread.materials.stock;

import dev.sunthread.kernel.Measures;
import dev.sunthread.materials.stock.Balance.Line;
import dev.sunthread.materials.stock.Movement.Effect;
import dev.sunthread.materials.stock.Movement.Way;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Goes through movements in the order of time and keeps what is left, as far as it was measured. */
final class Balancing {

    /** At one moment things come in before they go out, and are counted last. */
    private static final Comparator<Movement> ORDER = Comparator.comparing(
                    (Movement movement) -> movement.at().toInstant())
            .thenComparing(movement -> movement.way().effect())
            .thenComparing(Movement::all);

    private final String unit;
    private final Map<Way, Line> lines = new EnumMap<>(Way.class);
    private BigDecimal left = BigDecimal.ZERO;
    private BigDecimal unexplained = BigDecimal.ZERO;
    private @Nullable OffsetDateTime countedAt;
    private @Nullable OffsetDateTime overdrawnAt;

    private Balancing(String unit) {
        this.unit = unit;
    }

    static Balance of(List<Movement> movements) {
        Balancing balancing = new Balancing(unitOf(movements));
        movements.stream().sorted(ORDER).forEach(balancing::take);
        return balancing.result();
    }

    /** The unit in which things came in, else any that is stated. */
    private static String unitOf(List<Movement> movements) {
        return Stream.concat(
                        movements.stream().filter(movement -> movement.way().effect() == Effect.BRINGS),
                        movements.stream())
                .map(Movement::unitOfMeasure)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse("");
    }

    private void take(Movement movement) {
        BigDecimal quantity = quantityOf(movement);
        note(movement.way(), quantity);
        if (quantity != null) {
            apply(movement, quantity);
        }
    }

    /** Counts have no line of their own: added up, they would tell nothing. */
    private void note(Way way, @Nullable BigDecimal quantity) {
        Line line = lines.getOrDefault(way, Line.none(way));
        if (quantity == null) {
            lines.put(way, line.andUnmeasured());
        } else if (way.effect() != Effect.TELLS) {
            lines.put(way, line.and(quantity));
        }
    }

    private @Nullable BigDecimal quantityOf(Movement movement) {
        if (movement.all()) {
            return left.max(BigDecimal.ZERO);
        }
        BigDecimal quantity = movement.quantity();
        boolean isNothing = quantity != null && quantity.signum() == 0;
        String measure = movement.unitOfMeasure();
        if (isNothing || quantity == null || measure == null) {
            return isNothing ? quantity : null;
        }
        return Measures.told(quantity, measure, unit).orElse(null);
    }

    private void apply(Movement movement, BigDecimal quantity) {
        switch (movement.way().effect()) {
            case BRINGS -> left = left.add(quantity);
            case TAKES -> taken(movement.at(), quantity);
            case TELLS -> counted(movement.at(), quantity);
            case NONE -> {}
        }
    }

    private void taken(OffsetDateTime at, BigDecimal quantity) {
        left = left.subtract(quantity);
        if (left.signum() < 0 && overdrawnAt == null) {
            overdrawnAt = at;
        }
    }

    private void counted(OffsetDateTime at, BigDecimal quantity) {
        unexplained = unexplained.add(left.subtract(quantity));
        left = quantity;
        countedAt = at;
    }

    private Balance result() {
        BigDecimal onHand = left.max(BigDecimal.ZERO);
        return new Balance(
                unit,
                List.copyOf(lines.values()),
                onHand,
                unexplained.add(left.subtract(onHand)),
                countedAt,
                overdrawnAt);
    }
}
