package dev.sunthread.kernel;

/**
 * Names one node of the genealogy by kind and internal number. Internal numbers hold in one database only and never
 * leave it; people and journals use serials and lot numbers.
 */
public record TraceRef(TraceKind kind, long id) implements Comparable<TraceRef> {

    public static TraceRef lot(long id) {
        return new TraceRef(TraceKind.LOT, id);
    }

    public static TraceRef container(long id) {
        return new TraceRef(TraceKind.CONTAINER, id);
    }

    public static TraceRef unit(long id) {
        return new TraceRef(TraceKind.UNIT, id);
    }

    /** The step that a ledger entry recorded. */
    public static TraceRef step(long entry) {
        return new TraceRef(TraceKind.STATION_STEP, entry);
    }

    public static TraceRef carrier(long id) {
        return new TraceRef(TraceKind.CARRIER, id);
    }

    @Override
    public int compareTo(TraceRef other) {
        int byKind = kind.compareTo(other.kind);
        return byKind != 0 ? byKind : Long.compare(id, other.id);
    }
}
