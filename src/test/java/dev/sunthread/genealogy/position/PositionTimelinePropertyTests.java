package dev.sunthread.genealogy.position;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.position.Change.Charge;
import dev.sunthread.genealogy.position.Change.Discharge;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;
import org.jspecify.annotations.Nullable;

/**
 * What a missing or vaguer record may do to an answer. Losses that the other records of the position can't show are
 * left out here: a charge with no discharge known to lie between it and another (the other seems to go on), a
 * discharge that contradicts the charge before it or a use in the gap after it (the contradiction goes with it), and
 * either if its place among the others is open (the doubt goes with it).
 */
class PositionTimelinePropertyTests {

    private static final TraceRef A = TraceRef.lot(1);
    private static final TraceRef B = TraceRef.lot(2);

    @Provide
    Arbitrary<Valve> valves() {
        return Valves.any();
    }

    @Property(tries = 1_000)
    void aMissingCleanPointOnlyWidensAnAnswer(@ForAll("valves") Valve valve) {
        for (Moment cleaned : valve.cleanPoints) {
            valve.uses.forEach(use -> assertOnlyWidens(valve, use, Valves.without(valve, cleaned), use, null));
        }
    }

    @Property(tries = 1_000)
    void aMissingChargeBetweenDischargesOnlyWidensWhatOtherLotsAnswer(@ForAll("valves") Valve valve) {
        for (Charge charge : valve.charges) {
            if (isApartFromOtherCharges(charge, valve)) {
                Valve less = Valves.without(valve, charge);
                valve.uses.forEach(use -> assertOnlyWidens(valve, use, less, use, charge.lot()));
            }
        }
    }

    @Property(tries = 1_000)
    void aMissingDischargeThatContradictsNothingOnlyWidensAnAnswer(@ForAll("valves") Valve valve) {
        for (Discharge discharge : valve.discharges) {
            if (isPlaceKnown(discharge, valve.charges)
                    && agreesWithTheChargeBefore(discharge, valve)
                    && noUseIsInTheGapAfter(discharge, valve)) {
                Valve less = Valves.without(valve, discharge);
                valve.uses.forEach(use -> assertOnlyWidens(valve, use, less, use, null));
            }
        }
    }

    /** Once a lot was left out: the item of a charge is not known, so that it is not the one before told again. */
    @Example
    void aNamelessDischargeBeforeOneThatNamesItsLotOnlyWidensAnAnswer() {
        aMissingDischargeThatContradictsNothingOnlyWidensAnAnswer(new Valve()
                .on(A, Valve.ADHESIVE, Moment.at(0))
                .on(A, null, Moment.at(1))
                .off(null, 2)
                .off(A, 3)
                .on(B, null, Moment.at(4))
                .cleaned(4)
                .used(5));
    }

    @Property(tries = 1_000)
    void aWorseClockOnlyWidensAnAnswer(@ForAll("valves") Valve valve, @ForAll @LongRange(min = 1, max = 4) long more) {
        Valve worse = Valves.withClockWorseBy(more, valve);
        valve.uses.forEach(use -> assertOnlyWidens(valve, use, worse, use.widened(more), null));
    }

    @Property(tries = 1_000)
    void anEarlierLotDisappearsOnlyBecauseOfACleanPoint(@ForAll("valves") Valve valve) {
        valve.cleanPoints.clear();
        for (Moment first : valve.uses) {
            for (Moment later : valve.uses) {
                if (first.late() <= later.late()) {
                    assertThat(lots(valve, later)).containsAll(lots(valve, first));
                }
            }
        }
    }

    @Property(tries = 1_000)
    void atMostOneLotIsInferredAsCertain(@ForAll("valves") Valve valve) {
        for (Moment use : valve.uses) {
            assertThat(valve.at(use, null).values().stream().filter(Certainty.CERTAIN::equals))
                    .hasSizeLessThan(2);
        }
    }

    @Property(tries = 1_000)
    void theOrderOfTheRecordsChangesNothing(@ForAll("valves") Valve valve, @ForAll Random random) {
        Valve shuffled = Valves.withClockWorseBy(0, valve);
        Stream.of(shuffled.charges, shuffled.discharges, shuffled.cleanPoints, shuffled.uses)
                .forEach(records -> Collections.shuffle(records, random));
        valve.uses.forEach(use -> assertThat(shuffled.at(use, null)).isEqualTo(valve.at(use, null)));
    }

    private static boolean isApartFromOtherCharges(Charge charge, Valve valve) {
        return isPlaceKnown(charge, valve.discharges)
                && valve.charges.stream()
                        .filter(other -> other != charge)
                        .allMatch(other -> valve.discharges.stream()
                                .anyMatch(discharge -> discharge.surelyLiesBetween(charge, other)
                                        || discharge.surelyLiesBetween(other, charge)));
    }

    private static boolean isPlaceKnown(Change change, List<? extends Change> others) {
        return others.stream().allMatch(other -> other.precedes(change) || change.precedes(other));
    }

    private static boolean agreesWithTheChargeBefore(Discharge discharge, Valve valve) {
        if (discharge.lot() == null) {
            return true;
        }
        List<Change> all = Stream.<Change>concat(valve.charges.stream(), valve.discharges.stream())
                .toList();
        List<Change> before = new Chronology<>(all).lastBefore(discharge);
        return before.size() == 1
                && before.get(0).precedes(discharge)
                && before.get(0) instanceof Charge charge
                && charge.lot().equals(discharge.lot());
    }

    private static boolean noUseIsInTheGapAfter(Discharge discharge, Valve valve) {
        long end = valve.charges.stream()
                .filter(discharge::precedes)
                .mapToLong(charge -> charge.at().late())
                .min()
                .orElse(Long.MAX_VALUE);
        return valve.uses.stream().noneMatch(use -> use.late() >= discharge.at().early() && use.early() <= end);
    }

    private static void assertOnlyWidens(Valve full, Moment use, Valve less, Moment then, @Nullable TraceRef except) {
        Map<TraceRef, Certainty> wide = less.at(then, null);
        full.at(use, null).forEach((lot, certainty) -> {
            if (!lot.equals(except)) {
                assertThat(wide).containsKey(lot);
                assertThat(wide.get(lot)).isGreaterThanOrEqualTo(certainty);
            }
        });
    }

    private static Set<TraceRef> lots(Valve valve, Moment use) {
        return valve.at(use, null).keySet();
    }
}
