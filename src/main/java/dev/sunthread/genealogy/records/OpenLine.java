package dev.sunthread.genealogy.records;

import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A kept line that no person has settled, as far as it could be read. One whose kind is unread is there once for each kind
 * that it may be of.
 *
 * @param kind what kind of happening it tells, of a correction that of what it corrects; null if it can be of none
 * @param start from when it says it went on; since ever if that is unread
 * @param end when it says it happened; without end if that is unread
 * @param takesBack the entry that it voids or corrects
 * @param operation the operation of a step
 * @param place the position of a parent or carrier that it names
 * @param parts what it names and where, positions of stations apart
 * @param positions the positions of stations that it names, or may have been about if it broke off before that
 * @param uses what a step or making that it tells, or may tell, took of a lot that can't be read
 */
public record OpenLine(
        long entry,
        @Nullable String kind,
        Moment start,
        Moment end,
        @Nullable Long takesBack,
        @Nullable String operation,
        @Nullable String place,
        List<Part> parts,
        Set<Spot> positions,
        Set<Use> uses) {

    /** A thing that a line names, and the field that names it; a field begins with {@code ?.} if its place is unread. */
    public record Part(String field, String within, TraceRef node) {

        public boolean isOf(TraceKind... kinds) {
            return List.of(kinds).contains(node.kind());
        }
    }

    /** A position of a station that a line names. */
    public record Spot(String within, long position) {

        /** Whether it is told of the same thing as the part, or may be. */
        public boolean mayBeOf(Part part) {
            return within.equals(part.within())
                    || within.startsWith("?")
                    || part.within().startsWith("?");
        }
    }

    /** A use of one of these items, of which no lot and no container could be read; of any item if there are none. */
    public record Use(String within, Set<Long> items) {}

    public TraceRef node() {
        return new TraceRef(TraceKind.KEPT_LINE, entry);
    }

    /** From its early start to its late end. */
    public Moment at() {
        return new Moment(Math.min(start.early(), end.early()), end.late());
    }

    public boolean isOfKind(String... kinds) {
        return kind != null && List.of(kinds).contains(kind);
    }
}
