package dev.sunthread.genealogy.line;

import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What the names that stand in kept lines are names of, as far as anything is recorded under them. */
public interface LineNames {

    /** An entry of the ledger, and the kind of happening it tells: of a correction that of what it corrects, and no time. */
    record Entry(long number, String kind, @Nullable OffsetDateTime occurredAt) {}

    /** All that is called so. */
    Collection<TraceRef> of(TraceKind kind, String name);

    /**
     * Positions of this code, or of any if none is given; those of this station alone, if it has any of them. If it has not,
     * either may be wrong, and those of any code there count too.
     */
    Set<Long> positions(@Nullable String station, @Nullable String code);

    /** The items of this number; none if it is not known. */
    Set<Long> items(String number);

    /** The lots that a container is recorded to have been filled with. */
    Set<TraceRef> lotsIn(TraceRef container);

    Optional<Entry> entry(String id);

    /** What the clock of a station told; of any, if it is not read or not known. */
    Moment told(@Nullable String station, OffsetDateTime at);
}
