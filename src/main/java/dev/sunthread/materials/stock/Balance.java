package dev.sunthread.materials.stock;

import dev.sunthread.materials.stock.Movement.Way;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where all of a lot or container went: what was brought in is what was taken out, what is on hand, and what no record
 * explains. What was measured in the balance's unit, or in another of its dimension, counts; the rest is told as a number of happenings.
 *
 * @param lines one for each way on which anything is recorded
 * @param onHand what was counted last with what was recorded since, or what is left by computation; never below nought
 * @param unexplained what is missing without a record; less than nought if more was taken out than there was
 * @param countedAt when it was last counted or told to be gone; absent if never
 * @param overdrawnAt when more had been taken out than there was, for the first time: a scan before must be wrong
 */
public record Balance(
        String unitOfMeasure,
        List<Line> lines,
        BigDecimal onHand,
        BigDecimal unexplained,
        @Nullable OffsetDateTime countedAt,
        @Nullable OffsetDateTime overdrawnAt) {

    /**
     * All that is recorded on one way.
     *
     * @param unmeasured how many of the happenings tell no quantity, or one in a unit of another dimension
     */
    public record Line(Way way, BigDecimal quantity, int happenings, int unmeasured) {

        static Line none(Way way) {
            return new Line(way, BigDecimal.ZERO, 0, 0);
        }

        Line and(BigDecimal more) {
            return new Line(way, quantity.add(more), happenings + 1, unmeasured);
        }

        Line andUnmeasured() {
            return new Line(way, quantity, happenings + 1, unmeasured + 1);
        }
    }

    /** The balance of all movements of one lot or container, in any order. */
    public static Balance of(List<Movement> movements) {
        return Balancing.of(movements);
    }

    /** Whether every happening that moved something was measured, so that the unexplained rest is exact. */
    public boolean isExact() {
        return lines.stream()
                .allMatch(line -> line.unmeasured() == 0 || line.way().effect() == Movement.Effect.NONE);
    }
}
