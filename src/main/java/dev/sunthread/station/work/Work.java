package dev.sunthread.station.work;

import dev.sunthread.production.UnitName;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What one person has in hand at a station.
 *
 * @param units the units in hand, or in the load
 * @param operation what is being done on them
 * @param since when it began
 * @param taken the material that was scanned for it
 * @param name the carrier, equipment or consignee in hand
 * @param position the position of the station in hand
 * @param carriers the carriers in the load
 * @param last the ids of the envelopes that the last scan recorded, which undoing takes back
 */
public record Work(
        Task task,
        List<UnitName> units,
        @Nullable String operation,
        @Nullable OffsetDateTime since,
        List<Taken> taken,
        @Nullable String name,
        @Nullable String position,
        List<String> carriers,
        List<String> last) {

    /** What kind of work is in hand. */
    public enum Task {
        NOTHING,
        /** An operation on units. */
        UNITS,
        /** A unit on which an operation is to be done again, not chosen yet. */
        AGAIN,
        /** Several units are being collected for one operation. */
        SEVERAL,
        /** Material that wants a position. */
        MATERIAL,
        /** A position that wants material, or a word. */
        POSITION,
        /** A carrier that is being loaded. */
        CARRIER,
        /** A load of equipment, not begun or running. */
        RUN,
        /** A shipment: first its consignee, then its units. */
        SHIPMENT
    }

    /** Material whose label was scanned. */
    public record Taken(String item, String lot, @Nullable String container) {}

    public static final Work NOTHING =
            new Work(Task.NOTHING, List.of(), null, null, List.of(), null, null, List.of(), List.of());

    public Work {
        units = List.copyOf(units);
        taken = List.copyOf(taken);
        carriers = List.copyOf(carriers);
        last = List.copyOf(last);
    }

    /** The carrier, equipment or consignee in hand, where the task has one. */
    String called() {
        return Objects.requireNonNull(name);
    }

    /** Whether any text is taken as it is, such as the name of a consignee. */
    public boolean wantsAnyText() {
        return task == Task.SHIPMENT && name == null;
    }

    /** Whether this is material in hand that wants a position, of this lot and container. */
    public boolean isAbout(String lot, @Nullable String container) {
        return task == Task.MATERIAL
                && taken.stream().anyMatch(one -> one.lot().equals(lot) && Objects.equals(one.container(), container));
    }

    static Work on(Task task) {
        return new Work(task, List.of(), null, null, List.of(), null, null, List.of(), List.of());
    }

    Work doing(@Nullable String other, @Nullable OffsetDateTime at) {
        return new Work(task, units, other, at, taken, name, position, carriers, last);
    }

    Work with(UnitName unit) {
        return new Work(task, and(units, unit), operation, since, taken, name, position, carriers, last);
    }

    Work with(Taken material) {
        return new Work(task, units, operation, since, and(taken, material), name, position, carriers, last);
    }

    Work withCarrier(String carrier) {
        return new Work(task, units, operation, since, taken, name, position, and(carriers, carrier), last);
    }

    Work named(@Nullable String other) {
        return new Work(task, units, operation, since, taken, other, position, carriers, last);
    }

    Work at(@Nullable String other) {
        return new Work(task, units, operation, since, taken, name, other, carriers, last);
    }

    public Work recorded(List<String> envelopes) {
        return new Work(task, units, operation, since, taken, name, position, carriers, envelopes);
    }

    /** Nothing in hand any more, but what was recorded last can still be undone. */
    Work over() {
        return NOTHING.recorded(last);
    }

    private static <T> List<T> and(List<T> some, T other) {
        List<T> all = new ArrayList<>(some);
        all.add(other);
        return all;
    }
}
