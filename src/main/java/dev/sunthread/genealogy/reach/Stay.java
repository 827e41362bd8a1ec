package dev.sunthread.genealogy.reach;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.records.Installation;
import dev.sunthread.genealogy.records.Removal;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.genealogy.walk.Reason;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import org.jspecify.annotations.Nullable;

/** A child in a place of a parent from one moment to another, as the records tell it. */
record Stay(
        TraceRef child,
        TraceRef parent,
        @Nullable String position,
        Certainty certainty,
        Moment begin,
        Moment end,
        Reason reason) {

    static Stay of(Installation installation, Moment end) {
        Reason reason = worded("installed", installation.position(), installation.entry());
        return new Stay(
                installation.child(),
                installation.parent(),
                installation.position(),
                Certainty.CERTAIN,
                installation.at(),
                end,
                reason.with("from", installation.at()).with("to", end));
    }

    /** The stay that a removal proves although no installation before it is recorded. */
    static Stay before(Removal removal, Moment earliest) {
        long latest = Math.max(earliest.early(), removal.at().justBefore().late());
        Reason reason = worded(Edge.REMOVED, removal.position(), removal.entry());
        return new Stay(
                removal.child(),
                removal.parent(),
                removal.position(),
                Certainty.POSSIBLE,
                new Moment(earliest.early(), latest),
                removal.at(),
                reason.with("to", removal.at()));
    }

    /**
     * Whether the other can't be true for all of this: one unit in two places, or two bodies in one position, at a
     * moment that both surely cover; or a unit that was put in again, so that it was out. Pieces of one lot may
     * be in many places, and pieces of several lots in one position.
     */
    boolean isContradictedBy(Stay other) {
        return surelyOverlaps(other) && (isOneUnitInTwoPlaces(other) || isOnePlaceForTwo(other)) || isPutInAgain(other);
    }

    Edge edge() {
        return child.kind() == TraceKind.UNIT
                ? Edge.installed(child, parent, certainty, begin, end, reason)
                : Edge.atOnce(child, parent, certainty, begin, reason).until(end);
    }

    private boolean isOneUnitInTwoPlaces(Stay other) {
        return isOfOneBody(other) && !mayBeInOnePlaceWith(other);
    }

    // within a moment it was scanned twice; a removal recorded before the other tells that this was over by then
    private boolean isPutInAgain(Stay other) {
        return isOfOneBody(other)
                && mayBeInOnePlaceWith(other)
                && other.certainty == Certainty.CERTAIN
                && other.begin.late() > begin.widened(Moment.TOLD_TWICE).late()
                && end.late() > other.begin.early();
    }

    private boolean isOfOneBody(Stay other) {
        return child.equals(other.child) && isBody();
    }

    /** Whether a unit or a carrier, which can be in one place only; pieces of a lot can be in many. */
    boolean isBody() {
        return child.kind() != TraceKind.LOT;
    }

    private boolean mayBeInOnePlaceWith(Stay other) {
        return parent.equals(other.parent)
                && (position == null || other.position == null || position.equals(other.position));
    }

    private boolean isOnePlaceForTwo(Stay other) {
        boolean samePlace = parent.equals(other.parent) && position != null && position.equals(other.position);
        return samePlace && (isBody() || other.isBody()) && !child.equals(other.child);
    }

    // it was in the other place when it came there, and just before it left
    private boolean surelyOverlaps(Stay other) {
        return Math.max(begin.late(), other.begin.late()) < Math.min(end.early(), other.end.early())
                || surelyCovers(other.begin)
                || surelyCovers(other.end)
                || other.surelyCovers(begin)
                || other.surelyCovers(end);
    }

    private boolean surelyCovers(Moment moment) {
        return begin.surelyBefore(moment) && moment.surelyBefore(end);
    }

    private static Reason worded(String key, @Nullable String position, long entry) {
        Reason reason = Reason.of(key, entry);
        return position == null ? reason : reason.with("position", position);
    }
}
