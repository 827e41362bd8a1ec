package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.position.Change.Charge;
import dev.sunthread.genealogy.position.Change.Discharge;
import dev.sunthread.genealogy.walk.Moment;

/**
 * When what was loaded at a position can have changed. With a discharge recorded between two charges the position was
 * empty from it to the next charge; without one the change lies in the closed window from the last use before the next
 * charge to the first use after it.
 */
record Changeovers(Chronology<Charge> charges, Chronology<Discharge> discharges, UseMoments uses) {

    long startOfChange(Charge from, Charge to) {
        long gap = discharges.mayLieBetween(from, to).stream()
                .mapToLong(discharge -> discharge.at().early())
                .reduce(Long.MAX_VALUE, Math::min);
        return wasDischarged(from, to) ? gap : Math.min(gap, lastUseBefore(from, to));
    }

    long lastUseBefore(Charge from, Charge to) {
        return Math.max(from.at().early(), uses.lastBefore(to.at()));
    }

    boolean wasDischarged(Charge from, Charge to) {
        return discharges.mayLieBetween(from, to).stream().anyMatch(discharge -> discharge.surelyLiesBetween(from, to));
    }

    Moment firstDischargeAfter(Charge charge) {
        return discharges.firstAfter(charge).stream()
                .map(Discharge::at)
                .reduce((one, other) ->
                        new Moment(Math.min(one.early(), other.early()), Math.min(one.late(), other.late())))
                .orElse(Moment.NEVER);
    }

    long endOfChange(Charge from, Charge to) {
        long used = Math.min(uses.firstAfter(to.at()), firstDischargeAfter(to).late());
        return wasDischarged(from, to) ? to.at().late() : Math.max(used, to.at().late());
    }

    // a use in the gap proves that something was loaded there, and that may have been the lot before
    Moment afterUsesInGap(Discharge discharge, Moment left) {
        long end = nextChargeAfter(discharge);
        long used = Math.min(end, uses.lastBegunBy(end));
        return used > left.late() ? Moment.at(used) : left;
    }

    long nextChargeAfter(Discharge discharge) {
        return charges.firstAfter(discharge).stream()
                .filter(discharge::precedes)
                .mapToLong(next -> next.at().late())
                .reduce(Long.MAX_VALUE, Math::min);
    }
}
