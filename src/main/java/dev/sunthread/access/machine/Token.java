package dev.sunthread.access.machine;

import dev.sunthread.access.Caller;
import dev.sunthread.access.Right;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The token of a machine, without its secret.
 *
 * @param mark what the ledger calls the machine
 * @param purpose what it is for, in words
 * @param station the station it stands at; none for an interface of the whole plant
 */
public record Token(
        long id,
        String mark,
        String purpose,
        @Nullable String station,
        String rightNames,
        OffsetDateTime madeAt,
        String madeBy,
        @Nullable OffsetDateTime validUntil,
        @Nullable OffsetDateTime revokedAt,
        @Nullable OffsetDateTime lastUsedAt) {

    public Set<Right> rights() {
        Set<Right> rights = EnumSet.noneOf(Right.class);
        Arrays.stream(rightNames.split(" ")).map(Right::valueOf).forEach(rights::add);
        return rights;
    }

    Caller caller() {
        return new Caller(mark, purpose, Set.of(), rights(), Caller.Means.TOKEN, station);
    }

    boolean isValid(OffsetDateTime now) {
        return revokedAt == null && (validUntil == null || validUntil.isAfter(now));
    }
}
