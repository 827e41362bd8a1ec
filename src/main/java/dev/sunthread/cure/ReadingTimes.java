package dev.sunthread.cure;

import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Collections;

/** Says where sensors were read at times that are not of the run; what lies outside of it does not count. */
final class ReadingTimes {

    private ReadingTimes() {}

    static void lieWithinTheRun(Fact<CureRunKind.Body> fact, long run) {
        Duration took = Duration.between(fact.body().startedAt(), fact.occurredAt());
        BigDecimal end = BigDecimal.valueOf(took.toMillis(), 3);
        fact.body().profile().stream()
                .filter(series -> !series.seconds().isEmpty())
                .filter(series -> first(series).signum() < 0 || last(series).compareTo(end) > 0)
                .forEach(series -> fact.shows(
                        "readings-lie-within-their-run",
                        "Cure run " + fact.body().run() + " took " + plain(end) + " s, but sensor " + series.sensor()
                                + " was read from " + plain(first(series)) + " to " + plain(last(series))
                                + " s after its start",
                        "What lies outside does not count; find out whether the times of the run or those of the logger"
                                + " are right, and correct the run",
                        new TraceRef(TraceKind.CURE_RUN, run)));
    }

    private static BigDecimal first(Series series) {
        return Collections.min(series.seconds());
    }

    private static BigDecimal last(Series series) {
        return Collections.max(series.seconds());
    }

    private static String plain(BigDecimal seconds) {
        return seconds.signum() == 0 ? "0" : seconds.stripTrailingZeros().toPlainString();
    }
}
