package dev.sunthread.genealogy.walk;

import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;

/**
 * Why an edge exists: the kind of reason, what its sentence names (station, position, lot label, times as
 * microseconds) and the ledger entry it rests on. The sentence can be made from it and the names of the two nodes.
 */
public record Reason(String key, Map<String, String> named, long entry) implements Comparable<Reason> {

    public Reason {
        named = Map.copyOf(named);
    }

    public static Reason of(String key, long entry) {
        return new Reason(key, Map.of(), entry);
    }

    /** The entry that keeps the line that this rests on; nothing if it rests on none. */
    public OptionalLong line() {
        String line = named.get("line");
        return key.equals("kept-line")
                ? OptionalLong.of(entry)
                : line == null ? OptionalLong.empty() : OptionalLong.of(Long.parseLong(line));
    }

    /** This reason with one more name or time in its sentence. */
    public Reason with(String name, Object value) {
        Map<String, String> more = new TreeMap<>(named);
        more.put(name, value.toString());
        return new Reason(key, more, entry);
    }

    /** This reason with one more moment, as microseconds; two of them if it is uncertain, none for an open end. */
    public Reason with(String name, Moment moment) {
        Reason early =
                moment.early() == Long.MIN_VALUE || moment.equals(Moment.NEVER) ? this : with(name, moment.early());
        boolean exact = moment.early() == moment.late() || moment.late() == Long.MAX_VALUE;
        return exact ? early : early.with(name + "AtLatest", moment.late());
    }

    /** By entry, then kind, then what is named; the order means nothing but is the same on every machine. */
    @Override
    public int compareTo(Reason other) {
        int byEntry = Long.compare(entry, other.entry);
        int byKey = byEntry != 0 ? byEntry : key.compareTo(other.key);
        return byKey != 0 ? byKey : spelled().compareTo(other.spelled());
    }

    private String spelled() {
        return new TreeMap<>(named).toString();
    }
}
