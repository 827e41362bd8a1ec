package dev.sunthread.production;

import dev.sunthread.catalog.RouteStep;
import dev.sunthread.holds.Passes;
import dev.sunthread.holds.SoftRule;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;

/** How long after earlier operations of a unit the next may begin: its dwell, and the time from dispensing to joining. */
@Component
class RouteWindows {

    /** An operation that began on a unit. */
    record Begun(long unit, UnitName name, RouteStep step, OffsetDateTime start) {

        String words(Duration since, String after) {
            return "Unit " + name + " began " + step.operation() + " " + RouteWindows.words(since) + " after " + after;
        }
    }

    private final Passes passes;

    RouteWindows(Passes passes) {
        this.passes = passes;
    }

    /** @param ends when each operation recorded of the unit last ended */
    void operationBeginsInItsWindows(Fact<?> fact, Begun begun, Map<String, OffsetDateTime> ends) {
        for (RouteStep.Window window : begun.step().windows()) {
            OffsetDateTime end = ends.get(window.after());
            if (end != null) {
                Duration since = Duration.between(end, begun.start());
                operationBeginsAfterItsDwell(fact, begun, window, since);
                operationBeginsWithinItsWindow(fact, begun, window, since);
            }
        }
    }

    private void operationBeginsAfterItsDwell(Fact<?> fact, Begun begun, RouteStep.Window window, Duration since) {
        Duration atLeast = window.atLeast();
        if (atLeast != null && since.compareTo(atLeast) < 0) {
            breaks(
                    fact,
                    SoftRule.OPERATION_BEGINS_AFTER_ITS_DWELL,
                    begun,
                    new Passes.Words(
                            begun.words(since, window.after()) + ", where " + words(atLeast) + " have to pass",
                            "Wait until the time is over, then begin"));
        }
    }

    private void operationBeginsWithinItsWindow(Fact<?> fact, Begun begun, RouteStep.Window window, Duration since) {
        Duration atMost = window.atMost();
        if (atMost != null && since.compareTo(atMost) > 0) {
            breaks(
                    fact,
                    SoftRule.OPERATION_BEGINS_WITHIN_ITS_WINDOW,
                    begun,
                    new Passes.Words(
                            begun.words(since, window.after()) + ", where it is too late after " + words(atMost),
                            "Set the unit aside and ask quality"));
        }
    }

    private void breaks(Fact<?> fact, SoftRule rule, Begun begun, Passes.Words words) {
        passes.breaks(fact, rule, begun.step().operation(), words, List.of(TraceRef.unit(begun.unit())));
    }

    private static String words(Duration time) {
        String sign = time.isNegative() ? "-" : "";
        Duration length = time.abs();
        return sign + length.toHours() + " h " + length.toMinutesPart() + " min " + length.toSecondsPart() + " s";
    }
}
