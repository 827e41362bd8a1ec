package dev.sunthread.web.run;

import dev.sunthread.kernel.verdict.Digit;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Unusable;
import dev.sunthread.web.chart.Chart;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One sweep of a test: its charts, and what is computed from it.
 *
 * @param conditions under what it was measured, in words
 * @param problem why nothing is computed; absent if it is
 */
public record TestCurve(
        String name,
        Phrase conditions,
        List<Chart> charts,
        List<Number> numbers,
        List<Fit> fits,
        List<Point> points,
        @Nullable Phrase method,
        List<Phrase> remarks,
        @Nullable Unusable problem) {

    /** A number with its unit. */
    public record Number(Phrase name, String value, String unit) {}

    /** The numbers of a model of one diode, with the name of what its fit makes small. */
    public record Fit(Phrase residual, List<Number> numbers) {}

    /** A point as it was measured. */
    public record Point(double volts, double amperes, double watts) {

        /** Volts, amperes and watts as people read them. */
        public List<String> shown() {
            return List.of(Digit.plain(volts), Digit.plain(amperes), Digit.plain(watts));
        }
    }
}
