package dev.sunthread.web.run;

import dev.sunthread.web.chart.Chart;
import java.util.List;

/**
 * One sweep of a test: its charts, and what is computed from it.
 *
 * @param conditions under what it was measured, in words
 * @param problem why nothing is computed; empty if it is
 */
public record TestCurve(
        String name,
        String conditions,
        List<Chart> charts,
        List<Number> numbers,
        List<Point> points,
        String method,
        List<String> remarks,
        String problem) {

    /** A number with its unit. */
    public record Number(String name, String value, String unit) {}

    /** A point as it was measured. */
    public record Point(double volts, double amperes, double watts) {}
}
