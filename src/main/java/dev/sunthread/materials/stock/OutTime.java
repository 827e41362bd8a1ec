package dev.sunthread.materials.stock;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How long a container was at room temperature, every excursion added up; what was before its first move is not known
 * and not counted.
 *
 * @param total the time at room temperature
 * @param excursions how many times it was brought there
 * @param since when the excursion that still goes on began; absent if none does
 */
public record OutTime(
        Duration total, int excursions, @Nullable OffsetDateTime since) {

    private static final OutTime NONE = new OutTime(Duration.ZERO, 0, null);

    /** The out-time up to a moment, by moves in any order; of moves at the same moment the one listed later counts. */
    public static OutTime of(List<ContainerMove> moves, OffsetDateTime until) {
        OutTime out = NONE;
        for (ContainerMove move :
                moves.stream().sorted(Comparator.comparing(ContainerMove::at)).toList()) {
            if (move.at().isBefore(until)) {
                out = out.moved(move);
            }
        }
        return out.upTo(until);
    }

    private OutTime moved(ContainerMove move) {
        if (move.storage() != Storage.ROOM) {
            return new OutTime(upTo(move.at()).total(), excursions, null);
        }
        return since != null ? this : new OutTime(total, excursions + 1, move.at());
    }

    private OutTime upTo(OffsetDateTime moment) {
        return since == null ? this : new OutTime(total.plus(Duration.between(since, moment)), excursions, since);
    }

    /** The time in hours and minutes, as people of the plant say it. */
    public String words() {
        return total.toHours() + " h " + total.toMinutesPart() + " min";
    }
}
