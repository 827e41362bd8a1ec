package dev.sunthread.production;

import dev.sunthread.catalog.Demand;
import dev.sunthread.catalog.Demands;
import dev.sunthread.catalog.Items;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** The cures and tests that routes demand of units before they go on. */
@Component
class Prerequisites {

    private final Map<Demand.Way, Prerequisite> byWay = new EnumMap<>(Demand.Way.class);
    private final List<Waiver> waivers;
    private final OperationEnds ends;
    private final Demands demands;
    private final Items items;

    /** @throws IllegalStateException if nothing knows of a way of demand, which would pass unseen */
    Prerequisites(
            List<Prerequisite> prerequisites, List<Waiver> waivers, OperationEnds ends, Demands demands, Items items) {
        prerequisites.forEach(prerequisite -> byWay.put(prerequisite.way(), prerequisite));
        if (byWay.size() < Demand.Way.values().length) {
            throw new IllegalStateException("only " + byWay.keySet() + " of what routes demand can be looked up");
        }
        this.waivers = waivers;
        this.ends = ends;
        this.demands = demands;
        this.items = items;
    }

    /** What operations before this one demand is done before it. */
    void operationFollowsWhatIsDemanded(Fact<?> fact, Map<Long, UnitName> named, String operation) {
        unitsHaveWhatIsDemanded(fact, named, item -> demands.before(item, operation, fact.occurredAt()));
    }

    /**
     * What all operations demand is done before a unit goes into another. Told that it did, only what the last operation
     * demands is asked: the rest was, when the next operation was told.
     */
    void joinedUnitHasWhatIsDemanded(Fact<?> fact, long unit, UnitName name) {
        unitsHaveWhatIsDemanded(
                fact,
                Map.of(unit, name),
                item -> fact.isAsked()
                        ? demands.ofAll(item, fact.occurredAt())
                        : demands.ofLast(item, fact.occurredAt()));
    }

    /** What all operations demand is done before a unit is shipped. */
    void shippedUnitsHaveWhatIsDemanded(Fact<?> fact, Map<Long, UnitName> named) {
        unitsHaveWhatIsDemanded(fact, named, item -> demands.ofAll(item, fact.occurredAt()));
    }

    private void unitsHaveWhatIsDemanded(
            Fact<?> fact, Map<Long, UnitName> named, Function<Long, List<Demand>> demanded) {
        named.keySet().stream()
                .collect(Collectors.groupingBy(unit -> item(named, unit), LinkedHashMap::new, Collectors.toList()))
                .forEach((number, units) -> demanded.apply(
                                items.find(number).orElseThrow().id())
                        .forEach(demand -> missing(demand, units, fact.occurredAt())
                                .forEach(unit -> demandIsMetBeforeTheNextOperation(fact, demand, named, unit))));
    }

    /** What a unit lacked of this when it went on at a time, by what is known now; the recipe or specification is named. */
    Optional<Unmet> lacked(UnitWentOn.Next next, UnitName name, Demand.Way way, long definition) {
        long item = items.find(name.item()).orElseThrow().id();
        String operation = next.operation();
        List<Demand> demanded =
                operation == null ? demands.ofAll(item, next.at()) : demands.before(item, operation, next.at());
        return demanded.stream()
                .filter(demand -> demand.way() == way && demand.definition() == definition)
                .filter(demand ->
                        !missing(demand, List.of(next.unit()), next.at()).isEmpty())
                .findFirst()
                .map(demand -> unmet(demand, name, next.unit(), next.at()));
    }

    private static String item(Map<Long, UnitName> named, long unit) {
        return Objects.requireNonNull(named.get(unit)).item();
    }

    private List<Long> missing(Demand demand, Collection<Long> units, OffsetDateTime at) {
        Prerequisite prerequisite = Objects.requireNonNull(byWay.get(demand.way()));
        Set<Long> missing = new HashSet<>(units);
        missing.removeAll(prerequisite.met(demand, since(demand, units, at), at));
        if (!missing.isEmpty()) {
            waivers.forEach(waiver -> missing.removeAll(waiver.waived(demand, missing)));
        }
        return units.stream().filter(missing::contains).toList();
    }

    /** Since when the step that demands it began on each unit; ever, where no such step is recorded. */
    private Map<Long, OffsetDateTime> since(Demand demand, Collection<Long> units, OffsetDateTime at) {
        Map<Long, OffsetDateTime> begun = ends.begun(demand.operation(), units, at);
        return units.stream()
                .collect(Collectors.toMap(
                        unit -> unit,
                        unit -> begun.getOrDefault(unit, OffsetDateTime.MIN),
                        (one, same) -> one,
                        LinkedHashMap::new));
    }

    private void demandIsMetBeforeTheNextOperation(Fact<?> fact, Demand demand, Map<Long, UnitName> named, long unit) {
        Unmet unmet = unmet(demand, Objects.requireNonNull(named.get(unit)), unit, fact.occurredAt());
        fact.breaks(unmet.rule(), unmet.sentence(), unmet.remedy(), TraceRef.unit(unit));
    }

    /** A demand that is not met, as its rule says it. */
    record Unmet(String rule, String sentence, String remedy) {}

    private Unmet unmet(Demand demand, UnitName name, long unit, OffsetDateTime at) {
        boolean cure = demand.way() == Demand.Way.CURE;
        Optional<String> shortfall = since(demand, List.of(unit), at).entrySet().stream()
                .findFirst()
                .flatMap(one -> Objects.requireNonNull(byWay.get(demand.way())).shortfall(demand, one, at));
        return new Unmet(
                cure
                        ? "demanded-cure-is-done-before-the-next-operation"
                        : "demanded-test-is-passed-before-the-next-operation",
                "Unit " + name
                        + (cure ? " has no cure by recipe " : " has no last result that passed of test ")
                        + demand.code() + ", which operation " + demand.operation() + " demands"
                        + shortfall.map(why -> ": " + why).orElse(""),
                shortfall.isEmpty()
                        ? "Do it first; if it was done, record it; if it will not be done, have the deviation signed"
                        : "Record what was measured if there is a record of it, or do it again; if it will not be done,"
                                + " have the deviation signed");
    }
}
