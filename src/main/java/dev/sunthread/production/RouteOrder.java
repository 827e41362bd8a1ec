package dev.sunthread.production;

import dev.sunthread.catalog.RouteStep;
import dev.sunthread.holds.Passes;
import dev.sunthread.holds.SoftRule;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** The order in which a route has its operations done, and how long after each other. */
@Component
class RouteOrder {

    private final Routes routes;
    private final OperationEnds ends;
    private final List<Waiver> waivers;
    private final Passes passes;

    RouteOrder(Routes routes, OperationEnds ends, List<Waiver> waivers, Passes passes) {
        this.routes = routes;
        this.ends = ends;
        this.waivers = waivers;
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
            upTo.forEach((unit, route) -> windows(
                    fact, worked, unit, route.get(route.size() - 1), done.getOrDefault(unit, Map.of()), start));
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
            List<String> left = route.stream()
                    .map(RouteStep::operation)
                    .filter(earlier -> !earlier.equals(operation) && !ofUnit.contains(earlier))
                    .toList();
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

    private Map<Long, Set<String>> signed(Collection<Long> units) {
        Map<Long, Set<String>> signed = new LinkedHashMap<>();
        waivers.forEach(waiver -> waiver.operationsNotDone(units)
                .forEach((unit, operations) -> signed.computeIfAbsent(unit, any -> new HashSet<>())
                        .addAll(operations)));
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

    private void windows(
            Fact<?> fact,
            Map<Long, UnitName> named,
            long unit,
            RouteStep step,
            Map<String, OffsetDateTime> done,
            OffsetDateTime start) {
        for (RouteStep.Window window : step.windows()) {
            OffsetDateTime end = done.get(window.after());
            if (end != null) {
                Duration since = Duration.between(end, start);
                String what = "Unit " + named.get(unit) + " began " + step.operation() + " " + words(since) + " after "
                        + window.after();
                operationBeginsAfterItsDwell(fact, unit, step.operation(), what, since, window.atLeast());
                operationBeginsWithinItsWindow(fact, unit, step.operation(), what, since, window.atMost());
            }
        }
    }

    private void operationBeginsAfterItsDwell(
            Fact<?> fact, long unit, String operation, String what, Duration since, @Nullable Duration atLeast) {
        if (atLeast != null && since.compareTo(atLeast) < 0) {
            passes.breaks(
                    fact,
                    SoftRule.OPERATION_BEGINS_AFTER_ITS_DWELL,
                    operation,
                    new Passes.Words(
                            what + ", where " + words(atLeast) + " have to pass",
                            "Wait until the time is over, then begin"),
                    List.of(TraceRef.unit(unit)));
        }
    }

    private void operationBeginsWithinItsWindow(
            Fact<?> fact, long unit, String operation, String what, Duration since, @Nullable Duration atMost) {
        if (atMost != null && since.compareTo(atMost) > 0) {
            passes.breaks(
                    fact,
                    SoftRule.OPERATION_BEGINS_WITHIN_ITS_WINDOW,
                    operation,
                    new Passes.Words(
                            what + ", where it is too late after " + words(atMost),
                            "Set the unit aside and ask quality"),
                    List.of(TraceRef.unit(unit)));
        }
    }

    private static String words(Duration time) {
        return time.toHours() + " h " + time.toMinutesPart() + " min " + time.toSecondsPart() + " s";
    }
}
