package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.position.Change.Charge;
import dev.sunthread.genealogy.position.Change.Discharge;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.genealogy.walk.Reason;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Reads the charges and discharges of one position. Where no discharge was recorded the change lies between the last
 * use before the next charge and the first use after it; a stretch with nothing charged counts for both its
 * neighbours; a discharge that names another lot proves that lot since the record before, and leaves nothing sure.
 */
final class Loadings {

    private static final TraceRef NO_LOT = TraceRef.lot(0);

    private final String position;
    private final Chronology<Charge> charges;
    private final Chronology<Discharge> discharges;
    private final Chronology<Change> changes;
    private final Chronology<Change> told;
    private final UseMoments uses;
    private final Changeovers changeovers;
    private final List<Doubt> doubts;

    Loadings(
            String position,
            Collection<Charge> charges,
            Collection<Discharge> discharges,
            UseMoments uses,
            List<Doubt> doubts) {
        this.doubts = doubts;
        this.position = position;
        this.uses = uses;
        this.discharges = new Chronology<>(discharges);
        this.charges = DistinctCharges.of(charges, this.discharges);
        this.changeovers = new Changeovers(this.charges, this.discharges, uses);
        this.changes = together(this.charges.all(), discharges);
        this.told = together(charges, discharges);
    }

    private static Chronology<Change> together(Collection<Charge> on, Collection<Discharge> off) {
        return new Chronology<>(Stream.<Change>concat(on.stream(), off.stream()).toList());
    }

    /** What changed while a step went on. */
    Meanwhile meanwhile() {
        return new Meanwhile(charges, changes, told);
    }

    /** One for each charge, and one for each discharge that names a lot of which no charge is known. */
    List<Loading> all() {
        Stream<Loading> charged = charges.all().stream().map(this::of);
        return Stream.concat(charged, discharges.all().stream().flatMap(this::unrecorded))
                .toList();
    }

    /** What uses show whose scanned lot none of these shows there; nothing if changes of the position aren't told. */
    Stream<Loading> shownBy(Collection<Use> uses, List<Loading> recorded) {
        Map<TraceRef, List<Loading>> byLot = recorded.stream().collect(Collectors.groupingBy(Loading::lot));
        return uses.stream()
                .filter(use -> use.scanned() != null && !isUntold())
                .filter(use -> byLot.getOrDefault(use.scanned(), List.of()).stream()
                        .noneMatch(loading -> loading.mayServe(use.at())))
                .map(use -> shownBy(use, Objects.requireNonNull(use.scanned()), Long.MIN_VALUE))
                .distinct();
    }

    /** What these uses show, for each of which no lot was scanned and no charge tells one; one load for each stretch. */
    Map<Loading, Untold> untold(Stream<Use> uses, Cover cover) {
        return isUntold()
                ? Map.of()
                : uses.collect(Collectors.toMap(
                        use -> shownBy(use, NO_LOT, untoldSince(use, cover)),
                        use -> new Untold(use.item(), use.at()),
                        Untold::with));
    }

    // what records show to be loaded as a step begins was there until then
    private static long untoldSince(Use use, Cover cover) {
        Use begin = new Use(Moment.at(use.at().early()), use.item(), use.scanned());
        return cover.surelyHeld(begin) ? use.at().early() : Long.MIN_VALUE;
    }

    /**
     * What came off without a name where no record tells what was on: a load of any item that was drawn of here.
     */
    Map<Loading, Untold> cameOffUnrecorded(Set<Long> items) {
        Map<Loading, Untold> loads = new HashMap<>();
        for (Discharge discharge : discharges.all()) {
            if (discharge.lot() == null && isOfNoRecordedLoad(discharge)) {
                long since = startOfStretch(changes.lastBefore(discharge), discharge);
                Moment there = new Moment(since, discharge.at().late());
                items.forEach(item -> loads.put(unrecorded(discharge, NO_LOT, item, since), new Untold(item, there)));
            }
        }
        return loads;
    }

    // what came off a moment ago came off once and is told twice
    private boolean isOfNoRecordedLoad(Discharge discharge) {
        return changes.lastBefore(discharge).stream()
                .allMatch(before -> before instanceof Discharge && discharge.toldBehind(before) > Moment.TOLD_TWICE);
    }

    private boolean isUntold() {
        return changes.all().isEmpty() && doubts.isEmpty();
    }

    /** What may have been loaded by what may have happened; one may follow another as charges do. */
    Stream<Loading> doubted() {
        return doubts.stream().filter(doubt -> doubt.lot() != null).map(this::doubted);
    }

    private Loading doubted(Doubt doubt) {
        TraceRef lot = Objects.requireNonNull(doubt.lot());
        Charge may = new Charge(lot, doubt.item(), doubt.at(), doubt.entry());
        boolean undated = doubt.isUndated();
        long since = doubt.comesOn()
                ? doubt.at().early()
                : undated ? Long.MIN_VALUE : startOfStretch(changes.lastBefore(may), may);
        return new Loading(
                lot,
                doubt.item(),
                since,
                Long.MAX_VALUE,
                Long.MIN_VALUE,
                undated ? Long.MAX_VALUE : mayBeTo(may),
                undated ? Moment.NEVER : left(may),
                reason("loaded", doubt.entry()).with("line", doubt.entry()),
                true);
    }

    private Loading shownBy(Use use, TraceRef scanned, long since) {
        Charge shown = new Charge(scanned, use.item(), use.at(), 0);
        return new Loading(
                scanned,
                use.item(),
                Math.max(since, startOfStretch(changes.lastBefore(shown), shown)),
                Long.MAX_VALUE,
                Long.MIN_VALUE,
                mayBeTo(shown),
                left(shown),
                reason("loaded", 0),
                true);
    }

    private Loading of(Charge charge) {
        boolean sure = isOrderKnown(charge) && nothingElseCameOff(charge);
        return new Loading(
                charge.lot(),
                charge.item(),
                mayBeFrom(charge),
                sure ? sureAfter(charge) : Long.MAX_VALUE,
                sure ? sureBefore(charge) : Long.MIN_VALUE,
                mayBeTo(charge),
                left(charge),
                reason("loaded", charge.entry()).with("from", charge.at()).with("to", recordedEnd(charge)),
                false);
    }

    private Stream<Loading> unrecorded(Discharge discharge) {
        TraceRef lot = discharge.lot();
        List<Change> before = changes.lastBefore(discharge);
        boolean wasCharged = before.size() == 1
                && before.get(0) instanceof Charge charge
                && charge.precedes(discharge)
                && charge.lot().equals(lot);
        if (lot == null || wasCharged) {
            return Stream.empty();
        }
        return Stream.of(unrecorded(discharge, lot, null, startOfStretch(before, discharge)));
    }

    private Loading unrecorded(Discharge discharge, TraceRef lot, @Nullable Long item, long since) {
        return new Loading(
                lot,
                item,
                since,
                Long.MAX_VALUE,
                Long.MIN_VALUE,
                changeovers.nextChargeAfter(discharge),
                changeovers.afterUsesInGap(discharge, discharge.at()),
                reason("discharged", discharge.entry()).with("to", discharge.at()),
                false);
    }

    private static long startOfStretch(List<Change> before, Change after) {
        return before.stream().noneMatch(change -> change.precedes(after))
                ? Long.MIN_VALUE
                : before.stream().mapToLong(change -> change.at().early()).reduce(Long.MAX_VALUE, Math::min);
    }

    private boolean isOrderKnown(Charge charge) {
        return changes.around(charge.at().early(), charge.at().late()).stream()
                .filter(other -> other != charge)
                .allMatch(other -> other.precedes(charge)
                        || charge.precedes(other)
                        || other instanceof Charge again && again.lot().equals(charge.lot()));
    }

    private boolean nothingElseCameOff(Charge charge) {
        return changes.firstAfter(charge).stream()
                .noneMatch(next -> next instanceof Discharge off && off.namesOtherThan(charge.lot()));
    }

    private long mayBeFrom(Charge charge) {
        List<Charge> before = charges.lastBefore(charge);
        if (before.stream().noneMatch(other -> other.precedes(charge))) {
            return Long.MIN_VALUE;
        }
        return before.stream()
                .mapToLong(other -> changeovers.startOfChange(other, charge))
                .reduce(charge.at().early(), Math::min);
    }

    private long sureAfter(Charge charge) {
        boolean changeWasRecorded =
                charges.lastBefore(charge).stream().allMatch(other -> changeovers.wasDischarged(other, charge));
        return changeWasRecorded ? charge.at().late() : uses.firstAfter(charge.at());
    }

    private long sureBefore(Charge charge) {
        long off = doubts.stream()
                .filter(doubt -> doubt.mayEnd(charge))
                .mapToLong(doubt -> doubt.at().early())
                .reduce(changeovers.firstDischargeAfter(charge).early(), Math::min);
        return charges.firstAfter(charge).stream()
                .filter(next -> !changeovers.wasDischarged(charge, next))
                .mapToLong(next -> changeovers.lastUseBefore(charge, next))
                .reduce(off, Math::min);
    }

    private long mayBeTo(Charge charge) {
        List<Charge> after = charges.firstAfter(charge);
        if (after.stream().noneMatch(charge::precedes)) {
            return Long.MAX_VALUE;
        }
        return after.stream()
                .mapToLong(next -> changeovers.endOfChange(charge, next))
                .reduce(charge.at().late(), Math::max);
    }

    private Moment left(Charge charge) {
        boolean after = charges.lastBefore(charge).stream().allMatch(other -> changeovers.wasDischarged(other, charge));
        Stream<Discharge> first = dischargesBeforeTheNext(charge)
                .filter(discharge -> charge.precedes(discharge) && isSurelyOf(discharge, charge, after));
        return Stream.concat(first, namingItBeforeTheNext(charge))
                .findFirst()
                .map(discharge -> changeovers.afterUsesInGap(discharge, discharge.at()))
                .orElseGet(() -> Moment.at(mayBeTo(charge)));
    }

    // whichever lot came off before it, with this one the position was empty
    private Stream<Discharge> namingItBeforeTheNext(Charge charge) {
        List<Charge> next = charges.firstAfter(charge);
        long last = next.stream().mapToLong(other -> other.at().late()).max().orElse(Long.MAX_VALUE);
        return discharges.around(charge.at().early(), last).stream()
                .filter(discharge -> charge.lot().equals(discharge.lot()))
                .filter(discharge -> charge.precedes(discharge) && next.stream().allMatch(discharge::precedes));
    }

    // a nameless discharge may also be the late record of the lot before, if that one's is missing
    private static boolean isSurelyOf(Discharge discharge, Charge charge, boolean nothingElseIsOpen) {
        return charge.lot().equals(discharge.lot()) || discharge.lot() == null && nothingElseIsOpen;
    }

    private Moment recordedEnd(Charge charge) {
        return dischargesBeforeTheNext(charge).findFirst().map(Discharge::at).orElse(Moment.NEVER);
    }

    private Reason reason(String key, long entry) {
        return Reason.of(key, entry).with("position", position);
    }

    private Stream<Discharge> dischargesBeforeTheNext(Charge charge) {
        List<Charge> next = charges.firstAfter(charge);
        return discharges.firstAfter(charge).stream()
                .filter(discharge -> next.stream().allMatch(discharge::precedes));
    }
}
