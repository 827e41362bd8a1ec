package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.position.Change.Charge;
import dev.sunthread.genealogy.position.Change.Discharge;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import java.util.List;
import java.util.stream.Stream;

/**
 * What changed at a position while a step went on, in the order in which the one clock of the position told it. A label
 * that was scanned once in such a step tells neither which of its units came before the change nor which behind it.
 *
 * @param changes what changed what was loaded
 * @param told the same with charges of the lot that was on already, which may be of another container
 */
record Meanwhile(Chronology<Charge> charges, Chronology<Change> changes, Chronology<Change> told) {

    /** Whether the lot may not have been the one that was loaded from the start of the step to its end. */
    boolean mayHaveLeft(TraceRef lot, Moment step) {
        List<Change> during = during(step);
        return !during.isEmpty() && !isMoreOf(lot, during, step)
                || isChangedAtTheStart(lot, step)
                || isChangedAtTheEnd(lot, step);
    }

    /** Whether what is loaded changed while the step went on, and for some of that time no record tells what it was. */
    boolean ranOut(Moment step) {
        List<Change> during = during(step);
        return !during.isEmpty()
                && (wasEmptyBefore(step)
                        || during.stream().filter(Discharge.class::isInstance).anyMatch(off -> isLast(off, during)));
    }

    private boolean wasEmptyBefore(Moment step) {
        List<Change> before = changes.lastBefore(new Charge(TraceRef.lot(0), null, step, 0)).stream()
                .filter(change -> change.at().startsAndEndsBefore(step) || isAtTheStart(change, step))
                .toList();
        return before.stream().noneMatch(Charge.class::isInstance);
    }

    /** Whether another container may have come on, of the same lot or not. */
    boolean isChanged(Moment step) {
        return !during(step, told).isEmpty();
    }

    private List<Change> during(Moment step) {
        return during(step, changes);
    }

    private static List<Change> during(Moment step, Chronology<Change> all) {
        return all.around(step.early(), step.late()).stream()
                .filter(change -> !change.at().startsAndEndsBefore(step) && !step.startsAndEndsBefore(change.at()))
                .filter(change -> !isAtTheStart(change, step) && !isAtTheEnd(change, step))
                .filter(change -> !change.at().equals(step))
                .toList();
    }

    // another container of the lot came in place of the one before
    private boolean isMoreOf(TraceRef lot, List<Change> during, Moment step) {
        return wasOnBefore(lot, step)
                && during.stream().allMatch(change -> change.lot() == null || lot.equals(change.lot()))
                && during.stream().filter(Discharge.class::isInstance).noneMatch(off -> isLast(off, during));
    }

    private boolean wasOnBefore(TraceRef lot, Moment step) {
        List<Charge> before = charges.lastBefore(new Charge(lot, null, step, 0)).stream()
                .filter(charge -> charge.at().startsAndEndsBefore(step) || isAtTheStart(charge, step))
                .toList();
        return !before.isEmpty()
                && before.stream().allMatch(charge -> charge.lot().equals(lot));
    }

    private boolean isChangedAtTheStart(TraceRef lot, Moment step) {
        List<Change> start =
                at(step).filter(change -> isAtTheStart(change, step)).toList();
        boolean isPutOn = start.stream()
                .anyMatch(change -> change instanceof Charge on && on.lot().equals(lot));
        return start.stream()
                .anyMatch(change -> change instanceof Charge on && !on.lot().equals(lot)
                        || change instanceof Discharge off && lot.equals(off.lot()) && !isPutOn);
    }

    private boolean isChangedAtTheEnd(TraceRef lot, Moment step) {
        return at(step).filter(change -> isAtTheEnd(change, step))
                .anyMatch(change -> !(change instanceof Charge on && lot.equals(on.lot()) && wasOnBefore(lot, step)));
    }

    private Stream<Change> at(Moment step) {
        return changes.around(step.early(), step.late()).stream();
    }

    private static boolean isLast(Change change, List<Change> during) {
        return during.stream().noneMatch(other -> other instanceof Charge && change.precedes(other));
    }

    private static boolean isAtTheStart(Change change, Moment step) {
        return change.at().early() == step.early() && change.at().late() < step.late();
    }

    private static boolean isAtTheEnd(Change change, Moment step) {
        return change.at().late() == step.late() && change.at().early() > step.early();
    }
}
