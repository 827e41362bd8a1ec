package dev.sunthread.genealogy.web;

import dev.sunthread.genealogy.Root;
import dev.sunthread.genealogy.TraceQuestion;
import dev.sunthread.genealogy.Way;
import dev.sunthread.kernel.UnitId;
import dev.sunthread.ledger.body.Unreadable;
import io.swagger.v3.oas.annotations.Parameter;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/** A question as parameters of an address. Exactly one of lot, supplier lot and serial says what the trace starts from. */
public record TraceRequest(
        @Parameter(description = "FORWARD: everything it may be in; BACKWARD: everything that may be in it") @Nullable
        Way way,

        @Parameter(description = "A lot, by the plant's number", example = "L-0417") @Nullable
        String lot,

        @Parameter(description = "Every lot received from this supplier's lot") @Nullable
        String supplierLot,

        @Parameter(description = "The item of the unit; with serial") @Nullable
        String item,

        @Parameter(description = "The unit's serial; case and leading zeros count") @Nullable
        String serial,

        @Parameter(description = "Who issued the serial; absent for this plant") @Nullable
        String issuer,

        @Parameter(
                description = "What is suspect, as JSON: see the reference of scopes",
                example = "{\"of\": \"cure-run\", \"run\": \"C-0031\"}")
        @Nullable
        String scope,

        @Parameter(description = "Whether everything reaches inside, also what acts on a unit alone by its route")
        @Nullable
        Boolean wider,

        @Parameter(description = "The ledger position up to which records count; absent for all of them") @Nullable
        Long cutoff,

        @Parameter(
                description = "A time, asked beside ever, now and at shipment; without offset in the plant's zone",
                example = "2026-03-02T10:15:04+01:00")
        @Nullable
        String at) {

    static final TraceRequest NONE = new TraceRequest(null, null, null, null, null, null, null, null, null, null);

    /** The same question as known at a position. */
    TraceRequest knownAt(long position) {
        return new TraceRequest(way, lot, supplierLot, item, serial, issuer, scope, wider, position, at);
    }

    /** Whether anything is said that a trace could start from. */
    boolean isAsked() {
        return given(lot) || given(supplierLot) || given(serial) || given(item) || given(scope);
    }

    /** The same at a ledger position, or with everything recorded now if it is absent. */
    TraceRequest knownAt(@Nullable Long position) {
        return new TraceRequest(way, lot, supplierLot, item, serial, issuer, scope, wider, position, at);
    }

    /** The question in the words of the genealogy. @throws Unreadable if it names no root, several, or no time */
    TraceQuestion question(ZoneId zone) {
        return new TraceQuestion(
                way == null ? Way.FORWARD : way,
                root(),
                cutoff,
                TimeText.read(at, "at", zone),
                Boolean.TRUE.equals(wider));
    }

    private Root root() {
        long roots = java.util.stream.Stream.of(lot, supplierLot, serial, scope)
                .filter(TraceRequest::given)
                .count();
        if (roots != 1) {
            throw Unreadable.at(
                    "lot",
                    roots == 0
                            ? "and supplierLot, scope and serial are all missing"
                            : "is not the only thing to start from",
                    "Give exactly one of lot, supplierLot, scope, or item with serial");
        }
        if (lot != null && given(lot)) {
            return new Root.OfLot(lot);
        }
        if (supplierLot != null && given(supplierLot)) {
            return new Root.OfSupplierLot(supplierLot);
        }
        if (scope != null && given(scope)) {
            return new Root.OfScope(ScopeText.read(scope));
        }
        if (item == null || serial == null || item.isEmpty()) {
            throw Unreadable.at("item", "is missing beside the serial", "Give the item that the serial is of");
        }
        return new Root.OfUnit(UnitId.of(given(issuer) ? issuer : null, item, serial));
    }

    private static boolean given(@Nullable String text) {
        return text != null && !text.isEmpty();
    }
}
