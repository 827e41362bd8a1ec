package dev.sunthread.genealogy.position;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/**
 * Changes of one sort at one position by time. Finding what lies around a moment takes a binary search and a look at
 * the few changes that overlap it.
 */
final class Chronology<C extends Change> {

    private final List<C> changes;
    private final long[] latestSoFar;

    Chronology(Collection<C> changes) {
        this.changes = changes.stream().sorted(order()).toList();
        this.latestSoFar = new long[this.changes.size()];
        long latest = Long.MIN_VALUE;
        for (int i = 0; i < latestSoFar.length; i++) {
            latest = Math.max(latest, this.changes.get(i).at().late());
            latestSoFar[i] = latest;
        }
    }

    List<C> all() {
        return changes;
    }

    /** All changes that may lie between the two, and perhaps a few more. */
    List<C> around(long early, long late) {
        int first = Bisection.first(changes.size(), i -> latestSoFar[i] >= early);
        int end = Bisection.first(changes.size(), i -> changes.get(i).at().early() > late);
        return first < end ? changes.subList(first, end) : List.of();
    }

    List<C> mayLieBetween(Change first, Change last) {
        return around(first.at().early(), last.at().late()).stream()
                .filter(change -> change != first && change != last && change.mayLieBetween(first, last))
                .toList();
    }

    /** What may be the last change before this one: all that no other is known to separate from it. */
    List<C> lastBefore(Change change) {
        long from = Long.MIN_VALUE;
        for (int i = firstNotBefore(change) - 1; i >= 0; i--) {
            if (changes.get(i).precedes(change)) {
                from = changes.get(i).at().early();
                break;
            }
        }
        List<C> before = new ArrayList<>(around(from, change.at().late()));
        before.removeIf(other -> other == change || change.precedes(other));
        return before.stream()
                .filter(one -> before.stream().noneMatch(other -> other.surelyLiesBetween(one, change)))
                .toList();
    }

    /** What may be the first change after this one: all that no other is known to separate from it. */
    List<C> firstAfter(Change change) {
        long to = Long.MAX_VALUE;
        for (int i = firstNotBefore(change); i < changes.size(); i++) {
            if (change.precedes(changes.get(i))) {
                to = changes.get(i).at().late();
                break;
            }
        }
        List<C> after = new ArrayList<>(around(change.at().early(), to));
        after.removeIf(other -> other == change || other.precedes(change));
        return after.stream()
                .filter(one -> after.stream().noneMatch(other -> other.surelyLiesBetween(change, one)))
                .toList();
    }

    private int firstNotBefore(Change change) {
        return Bisection.first(
                changes.size(), i -> changes.get(i).at().early() >= change.at().early());
    }

    private static Comparator<Change> order() {
        return Comparator.<Change>comparingLong(change -> change.at().early())
                .thenComparingLong(change -> change.at().late())
                .thenComparingLong(Change::entry);
    }
}
