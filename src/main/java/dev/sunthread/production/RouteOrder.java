package dev.sunthread.production;

import dev.sunthread.catalog.RouteStep;
import dev.sunthread.holds.Passes;
import dev.sunthread.holds.SoftRule;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** The order in which a route has its operations done. */
@Component
class RouteOrder {

    private final UnitRoutes routes;
    private final OperationEnds ends;
    private final List<Waiver> waivers;
    private final RouteWindows windows;
    private final Passes passes;

    RouteOrder(UnitRoutes routes, OperationEnds ends, List<Waiver> waivers, RouteWindows windows, Passes passes) {
        this.routes = routes;
        this.ends = ends;
        this.waivers = waivers;
        this.windows = windows;
        this.passes = passes;
    }

    /** The earlier operations of each unit's route are recorded, and this one begins in its windows. */
    void operationFollowsTheEarlierOnes(
            Fact<?> fact, Map<Long, UnitName> worked, String operation, OffsetDateTime start) {
        Map<Long, List<RouteStep>> upTo = new LinkedHashMap<>();
        worked.forEach((unit, name) -> {
            List<RouteStep> route = routes.of(name, fact.occurredAt());
            route.stream()
                    .filter(step -> step.operation().equals(operation) && step.sequence() > 1)
                    .findFirst()
                    .ifPresent(step -> upTo.put(unit, route.subList(0, step.sequence())));
        });
        if (!upTo.isEmpty()) {
            Map<Long, Map<String, OffsetDateTime>> done = ends.by(upTo.keySet(), fact.occurredAt());
            check(fact, worked, upTo, done, operation);
            upTo.forEach((unit, route) -> windows.operationBeginsInItsWindows(
                    fact,
                    new RouteWindows.Begun(
                            unit, Objects.requireNonNull(worked.get(unit)), route.get(route.size() - 1), start),
                    done.getOrDefault(unit, Map.of())));
        }
    }

    /** Every operation of each unit's route is recorded before it goes on into another or leaves. */
    void routeIsDone(Fact<?> fact, Map<Long, UnitName> named) {
        Map<Long, List<RouteStep>> whole = new LinkedHashMap<>();
        named.forEach((unit, name) -> {
            List<RouteStep> route = routes.of(name, fact.occurredAt());
            if (!route.isEmpty()) {
                whole.put(unit, route);
            }
        });
        if (!whole.isEmpty()) {
            check(fact, named, whole, ends.by(whole.keySet(), fact.occurredAt()), null);
        }
    }

    private void check(
            Fact<?> fact,
            Map<Long, UnitName> named,
            Map<Long, List<RouteStep>> routes,
            Map<Long, Map<String, OffsetDateTime>> done,
            @Nullable String operation) {
        Map<Long, List<String>> missing = new LinkedHashMap<>();
        routes.forEach((unit, route) -> {
            Set<String> ofUnit = done.getOrDefault(unit, Map.of()).keySet();
            List<String> earlier = route.stream()
                    .map(RouteStep::operation)
                    .filter(one -> !one.equals(operation))
                    .toList();
            List<String> left = missing(earlier, ofUnit, fact.isAsked());
            if (!left.isEmpty()) {
                missing.put(unit, left);
            }
        });
        if (!missing.isEmpty()) {
            Map<Long, Set<String>> signed = signed(missing.keySet());
            missing.forEach((unit, left) -> {
                List<String> unsigned = new ArrayList<>(left);
                unsigned.removeAll(signed.getOrDefault(unit, Set.of()));
                earlierOperationsAreDoneBeforeTheNext(fact, named, unit, unsigned, operation);
            });
        }
    }

    /** Of what was told, only what is missing since the last one recorded: the rest was found when that was told. */
    private static List<String> missing(List<String> earlier, Set<String> done, boolean isAsked) {
        int last = -1;
        for (int i = 0; i < earlier.size() && !isAsked; i++) {
            last = done.contains(earlier.get(i)) ? i : last;
        }
        return earlier.subList(last + 1, earlier.size()).stream()
                .filter(one -> !done.contains(one))
                .toList();
    }

    private Map<Long, Set<String>> signed(Collection<Long> units) {
        Map<Long, Set<String>> signed = new LinkedHashMap<>();
        waivers.forEach(waiver -> waiver.operationsNotDone(units)
                .forEach((unit, operations) ->
                        signed.computeIfAbsent(unit, any -> new HashSet<>()).addAll(operations)));
        return signed;
    }

    private void earlierOperationsAreDoneBeforeTheNext(
            Fact<?> fact, Map<Long, UnitName> named, long unit, List<String> missing, @Nullable String operation) {
        if (!missing.isEmpty()) {
            passes.breaks(
                    fact,
                    SoftRule.EARLIER_OPERATIONS_ARE_DONE_BEFORE_THE_NEXT,
                    operation,
                    new Passes.Words(
                            "Unit " + named.get(unit) + " has no record of " + String.join(", ", missing)
                                    + ", which its route has before this",
                            "Do what is missing first; if it was done, record it; if it will not be done, have it signed"),
                    List.of(TraceRef.unit(unit)));
        }
    }
}
