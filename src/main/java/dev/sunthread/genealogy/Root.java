package dev.sunthread.genealogy;

import dev.sunthread.kernel.UnitId;

/** What a trace starts from, in the words of labels. */
public sealed interface Root {

    /** One lot, by the plant's number. */
    record OfLot(String number) implements Root {}

    /** Every lot that a receipt says consists of this supplier's lot. */
    record OfSupplierLot(String text) implements Root {}

    /** Whatever falls under a scope; asked forward only. */
    record OfScope(Scope scope) implements Root {}

    /** One unit. */
    record OfUnit(UnitId id) implements Root {}
}
