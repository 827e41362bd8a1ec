package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.position.Change.Charge;
import dev.sunthread.genealogy.position.Change.Discharge;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.jspecify.annotations.Nullable;

/** Small random positions with few instants, and copies of a position that lack one record or have a worse clock. */
final class Valves {

    private static final List<TraceRef> LOTS = List.of(TraceRef.lot(1), TraceRef.lot(2), TraceRef.lot(3));

    private Valves() {}

    static Arbitrary<Valve> any() {
        Arbitrary<List<Charge>> charges = Combinators.combine(
                        lots(), items(), moments(), Arbitraries.longs().between(0, 99))
                .as(Charge::new)
                .list()
                .ofMaxSize(4);
        Arbitrary<List<Discharge>> discharges = Combinators.combine(
                        lots().injectNull(0.4), moments(), Arbitraries.longs().between(0, 99))
                .as(Discharge::new)
                .list()
                .ofMaxSize(4);
        Arbitrary<List<Moment>> uses = Combinators.combine(
                        moments(), Arbitraries.longs().between(0, 1))
                .as((at, more) -> new Moment(at.early(), at.late() + more))
                .list()
                .ofMinSize(1)
                .ofMaxSize(5);
        return Combinators.combine(charges, discharges, moments().list().ofMaxSize(2), uses)
                .as(Valves::holding)
                .withoutEdgeCases();
    }

    static Valve without(Valve valve, Object record) {
        return holding(
                valve.charges.stream().filter(charge -> charge != record).toList(),
                valve.discharges.stream()
                        .filter(discharge -> discharge != record)
                        .toList(),
                valve.cleanPoints.stream().filter(cleaned -> cleaned != record).toList(),
                valve.uses);
    }

    static Valve withClockWorseBy(long uncertainty, Valve valve) {
        Valve worse = new Valve();
        valve.charges.forEach(
                on -> worse.charges.add(new Charge(on.lot(), on.item(), on.at().widened(uncertainty), on.entry())));
        valve.discharges.forEach(
                off -> worse.discharges.add(new Discharge(off.lot(), off.at().widened(uncertainty), off.entry())));
        valve.cleanPoints.forEach(cleaned -> worse.cleanPoints.add(cleaned.widened(uncertainty)));
        valve.uses.forEach(use -> worse.uses.add(use.widened(uncertainty)));
        return worse;
    }

    private static Valve holding(
            List<Charge> charges, List<Discharge> discharges, List<Moment> cleanPoints, List<Moment> uses) {
        Valve valve = new Valve();
        valve.charges.addAll(charges);
        valve.discharges.addAll(discharges);
        valve.cleanPoints.addAll(cleanPoints);
        valve.uses.addAll(uses);
        return valve;
    }

    private static Arbitrary<TraceRef> lots() {
        return Arbitraries.of(LOTS);
    }

    private static Arbitrary<@Nullable Long> items() {
        return Arbitraries.of(Valve.ADHESIVE, Valve.ADHESIVE, Valve.ADHESIVE, Valve.PRIMER)
                .injectNull(0.1);
    }

    private static Arbitrary<Moment> moments() {
        return Combinators.combine(Arbitraries.longs().between(0, 14), Arbitraries.of(0, 0, 0, 1, 2))
                .as((at, more) -> new Moment(at, at + more));
    }
}
