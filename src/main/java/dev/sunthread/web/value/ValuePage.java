package dev.sunthread.web.value;

import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.web.Paged;
import dev.sunthread.web.chart.Chart;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the page of a process value shows.
 *
 * @param chart the newest readings over time; absent if there are too few
 * @param limits what routes demand of it, in words
 * @param outside the scopes that trace what lies outside of the limits in force last
 */
public record ValuePage(
        String operation,
        String value,
        @Nullable Chart chart,
        List<Phrase> limits,
        List<Outside> outside,
        Paged<Reading> readings) {

    /** A value of a step on some units. */
    public record Reading(
            OffsetDateTime at, String station, BigDecimal value, String unit, String units, String entry) {}

    /** What lies on one side of a limit. */
    public record Outside(Phrase words, String scope) {}

    /** A value that steps of an operation have. */
    public record Known(String operation, String value, String unit, long steps, BigDecimal least, BigDecimal most) {}
}
